package walebook.act.print;

import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.lesson.KitCloth;
import walebook.act.lesson.KitPriceBook;
import walebook.act.lesson.KitReckoned;
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
import walebook.record.Keyed;
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
   * @param of the lesson it is for; null for a pack that is not taken up
   * @param usual the unit lengths are typed in
   */
  public Answer<Printed> print(
      Kit kit, LessonPack pack, @Nullable Head of, Unit usual, PaperSize size, PrintFile file) {
    KitPaper paper =
        new KitPaper(
            kit,
            of == null ? kit.title() : of.title(),
            of == null ? "" : of.when(),
            pack.needs().forTheRoom(),
            WorkOutKit.shownIn(usual));
    return file.write(words, pages -> pages.kit(size, paper));
  }

  /**
   * The same on paper chosen in a form.
   *
   * @param paper key of its size
   */
  public Answer<Printed> print(
      Kit kit, LessonPack pack, @Nullable Head of, Unit usual, String paper, PrintFile file) {
    return print(kit, pack, of, usual, Keyed.of(PaperSize.class, paper), file);
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
                      pack,
                      KitReckoned.dealt(book, lesson, pack),
                      KitCloth.in(book, cloths),
                      new KitPriceBook(book, pack, cloths).with(KitTyped.usual(students)),
                      tables,
                      unit,
                      SEED)
                  .flatMap(kit -> print(kit, pack, head(book, lesson), unit, size, file));
            });
  }

  /** What stands over the kit of a lesson: its title, its class and its day. */
  public record Head(String title, String when) {}

  /** The head of a lesson's kit. */
  public Head head(Book book, Lesson lesson) {
    SchoolClass of = book.classes().find(lesson.classId());
    String name = of == null ? "" : of.name();
    String when = words.say("act.print.when", name, lesson.taughtOn().toString());
    return new Head(lesson.title(), when);
  }
}
