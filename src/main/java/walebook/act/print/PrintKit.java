package walebook.act.print;

import java.util.Map;
import java.util.UUID;
import walebook.act.lesson.KitCloth;
import walebook.act.lesson.KitTyped;
import walebook.act.lesson.PlannedCloths;
import walebook.act.lesson.ReadTaught;
import walebook.act.lesson.WorkOutKit;
import walebook.book.Book;
import walebook.kit.Kit;
import walebook.lesson.LessonPack;
import walebook.lesson.ReadPack;
import walebook.paper.KitPaper;
import walebook.paper.PaperSize;
import walebook.problem.Answer;
import walebook.quantity.Unit;
import walebook.record.Lesson;
import walebook.record.SchoolClass;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Prints the kit of a lesson as a list to shop by, with its cutting plans. */
public final class PrintKit {
  private static final long SEED = 1;

  private final Words words;

  public PrintKit(Words words) {
    this.words = words;
  }

  /**
   * Prints a kit that is worked out.
   *
   * @param pack it is for, of which the room's needs are taken
   * @param when the class and the day; may be empty
   * @param unit lengths of cloth are shown in
   */
  public Answer<Printed> print(
      Kit kit, LessonPack pack, String when, Unit unit, PaperSize size, PrintFile file) {
    KitPaper paper = new KitPaper(kit, when, pack.needs().forTheRoom(), unit);
    return file.write(words, pages -> pages.kit(size, paper));
  }

  /** Prints the kit of a lesson for who is in its class now, with the cloths of its plan. */
  public Answer<Printed> ofLesson(
      Book book, Lesson lesson, SharedTables tables, PaperSize size, PrintFile file) {
    Unit unit = book.info().lengthUnit();
    return new ReadTaught(book, new ReadPack())
        .pack(lesson.packId())
        .flatMap(
            pack -> {
              Map<String, UUID> cloths = PlannedCloths.of(book, lesson, pack);
              int students = book.enrolments().studentsOf(lesson.classId()).size();
              return WorkOutKit.of(
                      pack, KitCloth.in(book, cloths), KitTyped.usual(students), tables, unit, SEED)
                  .flatMap(kit -> print(kit, pack, when(book, lesson), unit, size, file));
            });
  }

  /** The class of a lesson and its day, in words. */
  public String when(Book book, Lesson lesson) {
    SchoolClass of = book.classes().find(lesson.classId());
    return words.say("act.print.when", of == null ? "" : of.name(), lesson.taughtOn().toString());
  }
}
