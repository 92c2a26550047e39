package walebook.act.bring;

import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.bring.match.BringField;
import walebook.act.bring.match.BringWhat;
import walebook.act.cloth.LogClothReading;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.ClothReading;
import walebook.record.Stamp;
import walebook.record.Student;

/** Readings of cloths, one a row. */
final class ReadingKind implements LogKind<ClothReading> {
  /** A key that no record has. */
  private static final UUID NONE = new UUID(0, 0);

  private final Book book;
  private final UUID classId;
  private final LogTable table;
  private final ChoiceText choices;
  private final LogClothReading form;

  ReadingKind(Book book, Clock clock, UUID classId, LogTable table, ChoiceText choices) {
    this.book = book;
    this.classId = classId;
    this.table = table;
    this.choices = choices;
    this.form = new LogClothReading(book, clock);
  }

  @Override
  public String about(CellReader cells) {
    return cells.text(BringField.CLOTH);
  }

  @Override
  public String column(String formField) {
    return formField.equals("edge") ? BringField.READ_AT : formField;
  }

  @Override
  public Answer<ClothReading> read(CellReader cells) {
    Map<String, String> typed = new HashMap<>();
    for (BringField each : BringField.of(BringWhat.READINGS)) {
      String field = each.key().equals(BringField.READ_AT) ? "edge" : each.key();
      typed.put(field, choices.key(each.key(), cells.text(each.key())));
    }
    UUID cloth = table.cloth(cells, BringField.CLOTH);
    LogClothReading.Whose whose =
        new LogClothReading.Whose(
            cloth == null ? Ids.next() : cloth, classId, lesson(cells), measuredBy(cells));
    return form.read(whose, typed);
  }

  private @Nullable UUID lesson(CellReader cells) {
    String title = cells.text(BringField.LESSON);
    UUID lesson = title.isEmpty() ? null : table.lessons().find(title, cells.text("measured-on"));
    if (lesson == null && !title.isEmpty()) {
      Place place = cells.place(BringField.LESSON);
      Problem none = Problem.ask("bring.no-lesson", place, title, "");
      cells.problems().add(table.lessons().notFound(title, place, none));
    }
    return lesson;
  }

  private @Nullable UUID measuredBy(CellReader cells) {
    String name = cells.text(BringField.MEASURED_BY);
    Student student = name.isEmpty() ? null : table.student(name);
    if (student == null && !name.isEmpty()) {
      cells
          .problems()
          .add(Problem.refuse("bring.no-student", cells.place(BringField.MEASURED_BY), name, ""));
    }
    return student == null ? null : student.id();
  }

  @Override
  public List<ClothReading> there() {
    return book.clothLog().allReadings();
  }

  @Override
  public Object likeness(ClothReading found) {
    return new ClothReading(
        NONE,
        found.clothId(),
        found.classId(),
        found.lessonId(),
        found.measuredBy(),
        found.grain(),
        found.gaugeMm(),
        found.stretchedMm(),
        found.releasedMm(),
        found.how(),
        found.edge(),
        found.cycle(),
        found.measuredOn(),
        table.covered(found.remark()),
        Stamp.fresh(java.time.Instant.EPOCH));
  }

  @Override
  public void save(ClothReading found) {
    book.clothLog().add(found);
  }
}
