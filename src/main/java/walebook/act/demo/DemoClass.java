package walebook.act.demo;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.record.Note;
import walebook.seam.StitchType;
import walebook.tables.SharedTables;

/** Fills an empty book with the invented class, all in one step. */
public final class DemoClass {
  private DemoClass() {}

  /** The same seed fills in the same numbers; only keys differ. */
  public static void fill(Book book, long seed) {
    Map<String, StitchType> stitches =
        SharedTables.read().stitchTypes().stream()
            .collect(Collectors.toMap(StitchType::key, Function.identity()));
    book.inOneStep(
        () -> {
          Chance chance = new Chance(seed);
          DemoRoom room = DemoRoom.save(book);
          DemoLessons lessons = new DemoLessons(book, room, chance);
          List<DemoLessons.Taught> taught = lessons.save();
          DemoReadings readings = new DemoReadings(book, room, chance);
          taught.forEach(readings::save);
          readings.saveWashes();
          new DemoPieces(book, room, lessons, stitches, chance).save(taught);
          new DemoGarments(book, room).save();
          new DemoMarks(book, room, taught, seed).save();
          note(book, taught);
          return taught.size();
        });
  }

  private static void note(Book book, List<DemoLessons.Taught> taught) {
    DemoLessons.Taught third = taught.get(2);
    book.notes()
        .add(
            new Note(
                Ids.next(),
                Note.About.LESSON,
                third.lesson().id(),
                DemoStudent.TUTOR,
                "Some pull harder than others: compare the hands before the cloths.",
                third.evening().stamp(100)));
  }
}
