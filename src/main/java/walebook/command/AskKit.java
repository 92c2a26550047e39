package walebook.command;

import java.util.HashMap;
import java.util.List;
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
import walebook.book.open.SqliteFiles;
import walebook.kit.Kit;
import walebook.lesson.LessonPack;
import walebook.lesson.ReadPack;
import walebook.quantity.Unit;
import walebook.record.Lesson;
import walebook.record.Student;
import walebook.tables.SharedTables;

/** Works out the kit that a command asks for: of a pack, or of a class's lesson. */
final class AskKit {
  /** The flag that lets the book remember the prices typed. */
  static final String KEEP = "keep-prices";

  /** What the number of those kept is called in the answer for programs. */
  static final String KEPT = "pricesKept";

  static final Option MARGIN = Option.of("margin", "LENGTH", "command.option.margin");

  /** What a kit can be asked for by. */
  static final List<Option> OPTIONS =
      List.of(
          Option.of("book", "FILE", "command.option.kit-book"),
          Job.CLASS,
          Option.of("students", "NUMBER", "command.option.students"),
          Option.of("spare", "PERCENT", "command.option.spare"),
          MARGIN,
          Option.many("cloth", "SLOT=NAME", "command.option.cloth-of-slot"),
          Option.many("width", "SLOT=LENGTH", "command.option.cloth-width"),
          Option.many("wash", "SLOT=PERCENT", "command.option.wash"),
          Option.many("price", "WHAT=NUMBER", "command.option.price"),
          Option.flag(KEEP, "command.option.keep-prices"));

  private AskKit() {}

  /**
   * A kit and the pack it is of.
   *
   * @param kept how many of the prices typed the book remembers or forgets from now on
   */
  record Worked(Kit kit, LessonPack pack, int kept) {}

  /** The kit of a pack; of a book are its class and its cloths, where one is given. */
  static Worked of(Typed typed, Terminal terminal, LessonPack pack) {
    String file = typed.text("book");
    if (file == null) {
      if (!typed.all("cloth").isEmpty()) {
        throw Refused.field("book", "field.needed", "", "");
      }
      KitReckoned reckoned = KitReckoned.standard(pack.plan());
      KitTyped asked = asked(typed, students(typed, null));
      if (typed.has(KEEP)) {
        throw Refused.field("book", "field.needed", "", "");
      }
      return new Worked(work(pack, reckoned, Map.of(), asked), pack, 0);
    }
    try (Book book =
        Refused.unless(
            new SqliteFiles().open(AtBook.path("book", file), terminal.clock()), Exit.NO_BOOK)) {
      Map<String, UUID> cloths = LessonJobs.cloths(typed, book, pack);
      return work(typed, book, pack, reckoned(typed, book, pack), cloths);
    }
  }

  /** The kit of a class's lesson, its cloths those of the plan unless others are named. */
  static Worked of(Typed typed, Book book, Lesson lesson) {
    LessonPack pack = Refused.unless(new ReadTaught(book, new ReadPack()).pack(lesson.packId()));
    Map<String, UUID> cloths = new HashMap<>(PlannedCloths.of(book, lesson, pack));
    cloths.putAll(LessonJobs.cloths(typed, book, pack));
    KitReckoned reckoned = KitReckoned.dealt(book, lesson, pack);
    return work(typed, book, pack, reckoned, cloths);
  }

  /** Says below the answer how many prices the book remembers or forgets from now on. */
  static void sayKept(Typed typed, Terminal terminal, Worked worked) {
    if (typed.has(KEEP) && !typed.has("json")) {
      terminal.out().println(terminal.say("command.say.prices-kept", worked.kept()));
    }
  }

  /** From the class's list, unless a number of students was typed and no class with it. */
  private static KitReckoned reckoned(Typed typed, Book book, LessonPack pack) {
    if (typed.text("students") != null && typed.text("class") == null) {
      return KitReckoned.standard(pack.plan());
    }
    List<Student> students = book.enrolments().studentsOf(Pick.schoolClass(typed, book).id());
    return KitReckoned.roster(pack.plan(), students);
  }

  private static String students(Typed typed, @Nullable Book book) {
    String students = typed.text("students");
    if (students != null) {
      return students;
    }
    if (book == null) {
      throw Refused.field("students", "field.needed", "", "");
    }
    return String.valueOf(book.enrolments().studentsOf(Pick.schoolClass(typed, book).id()).size());
  }

  /** At the prices that the book remembers; it remembers those typed where that is asked for. */
  private static Worked work(
      Typed typed, Book book, LessonPack pack, KitReckoned reckoned, Map<String, UUID> cloths) {
    KitPriceBook prices = new KitPriceBook(book, pack, cloths);
    KitTyped asked = asked(typed, students(typed, book));
    Kit kit = work(pack, reckoned, KitCloth.in(book, cloths), prices.with(asked));
    return new Worked(kit, pack, typed.has(KEEP) ? prices.keep(asked) : 0);
  }

  private static KitTyped asked(Typed typed, String students) {
    return new KitTyped(
        students,
        typed.text("spare", KitTyped.USUAL_SPARE),
        typed.text("margin", ""),
        typed.all("width"),
        typed.all("wash"),
        typed.all("price"));
  }

  private static Kit work(
      LessonPack pack, KitReckoned reckoned, Map<String, KitCloth> known, KitTyped asked) {
    return Refused.unless(
        WorkOutKit.of(pack, reckoned, known, asked, SharedTables.read(), Unit.MM, 1));
  }
}
