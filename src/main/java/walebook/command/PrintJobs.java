package walebook.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.print.ChooseGrid;
import walebook.act.print.Naming;
import walebook.act.print.PrintCards;
import walebook.act.print.PrintFile;
import walebook.act.print.PrintGarment;
import walebook.act.print.PrintHandOut;
import walebook.act.print.PrintKit;
import walebook.act.print.PrintLabels;
import walebook.act.print.PrintMarks;
import walebook.act.print.PrintPlan;
import walebook.act.print.PrintScope;
import walebook.act.print.PrintTermRecord;
import walebook.act.print.PrintWallGrid;
import walebook.act.print.Printed;
import walebook.book.Book;
import walebook.paper.LabelGrid;
import walebook.paper.PaperProgress;
import walebook.paper.PaperSize;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.quantity.ReadNumber;
import walebook.quantity.Unit;
import walebook.record.Keyed;
import walebook.record.Lesson;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.tables.SharedTables;

/** Paper for the room, as PDF. */
final class PrintJobs {
  private static final Option PAPER = Option.of("paper", "SIZE", "command.option.paper");
  private static final Option NAMES = Option.of("names", "HOW", "command.option.names");
  private static final Option OUT = Option.needed("out", "FILE", "command.option.out");
  private static final Option REPLACE = Option.flag("replace", "command.option.replace");
  private static final Option LOGGED = Option.flag("logged", "command.option.logged");
  private static final List<Option> GRID =
      List.of(
          Option.of("grid", "GRID", "command.option.grid"),
          Option.of("columns", "NUMBER", "command.option.grid-columns"),
          Option.of("rows", "NUMBER", "command.option.grid-rows"),
          Option.of("left", "LENGTH", "command.option.grid-left"),
          Option.of("top", "LENGTH", "command.option.grid-top"),
          Option.of("gap-across", "LENGTH", "command.option.gap-across"),
          Option.of("gap-down", "LENGTH", "command.option.gap-down"));

  private PrintJobs() {}

  static List<Job> all() {
    return List.of(
        job("print labels", "command.print.labels", PrintJobs::labels, labelOptions()),
        job("print cards", "command.print.cards", PrintJobs::cards, List.of()),
        job("print grid", "command.print.grid", PrintJobs::grid, List.of()),
        job("print plan", "command.print.plan", PrintJobs::plan, List.of()),
        job("print record", "command.print.record", PrintJobs::record, List.of()),
        job("print marks", "command.print.marks", PrintJobs::marks, List.of()),
        Job.shows(
            "print hand-out",
            "command.print.hand-out",
            AtBook.open(PrintJobs::handOut),
            Job.BOOK,
            Job.CLASS,
            Job.LESSON,
            PAPER,
            OUT,
            REPLACE),
        Job.shows("print kit", "command.print.kit", PrintJobs::kit, kitOptions()),
        Job.shows(
            "print garment",
            "command.print.garment",
            AtBook.open(PrintJobs::garment),
            Job.BOOK,
            Option.needed("garment", "NAME", "command.option.garment"),
            Option.flag("girths", "command.option.girths"),
            PAPER,
            OUT,
            REPLACE));
  }

  private static Job job(String words, String saysKey, AtBook work, List<Option> more) {
    List<Option> options =
        new ArrayList<>(List.of(Job.BOOK, Job.CLASS, Job.LESSON, Job.STUDENT, NAMES, PAPER));
    options.addAll(more);
    options.add(OUT);
    options.add(REPLACE);
    return Job.shows(words, saysKey, AtBook.open(work), options.toArray(Option[]::new));
  }

  private static List<Option> labelOptions() {
    List<Option> options = new ArrayList<>(GRID);
    options.add(Option.of("start", "NUMBER", "command.option.start"));
    options.add(LOGGED);
    return options;
  }

  private static Exit labels(Typed typed, Terminal terminal, Book book) {
    LabelGrid grid = Refused.unless(ChooseGrid.of(typed.given(GRID), paper(typed)));
    int start = Refused.unless(ReadNumber.whole(typed.text("start", "1"), Place.field("start")));
    PrintLabels print = new PrintLabels(book, terminal.words(), SharedTables.read());
    PrintScope scope = scope(typed, book, true);
    boolean logged = typed.has("logged");
    return say(typed, terminal, print.print(scope, grid, start, logged, file(typed)));
  }

  private static Exit cards(Typed typed, Terminal terminal, Book book) {
    PrintCards print = new PrintCards(book, terminal.words(), SharedTables.read());
    return say(typed, terminal, print.print(scope(typed, book, true), paper(typed), file(typed)));
  }

  private static Exit grid(Typed typed, Terminal terminal, Book book) {
    PrintWallGrid print = new PrintWallGrid(book, terminal.words(), SharedTables.read());
    return say(typed, terminal, print.print(scope(typed, book, true), paper(typed), file(typed)));
  }

  private static Exit plan(Typed typed, Terminal terminal, Book book) {
    PrintPlan print = new PrintPlan(book, terminal.words(), SharedTables.read());
    return say(typed, terminal, print.print(scope(typed, book, true), paper(typed), file(typed)));
  }

  private static Exit record(Typed typed, Terminal terminal, Book book) {
    PrintTermRecord print = new PrintTermRecord(book, terminal.words(), SharedTables.read());
    return say(typed, terminal, print.print(scope(typed, book, false), paper(typed), file(typed)));
  }

  private static Exit marks(Typed typed, Terminal terminal, Book book) {
    PrintMarks print = new PrintMarks(book, terminal.words(), terminal.clock().getZone());
    return say(typed, terminal, print.print(scope(typed, book, false), paper(typed), file(typed)));
  }

  private static Exit handOut(Typed typed, Terminal terminal, Book book) {
    Lesson lesson = neededLesson(typed, book);
    PrintHandOut print = new PrintHandOut(terminal.words());
    return say(typed, terminal, print.print(book, lesson, paper(typed), file(typed)));
  }

  private static Option[] kitOptions() {
    List<Option> options = new ArrayList<>(AskKit.OPTIONS);
    options.addAll(
        List.of(
            Job.LESSON, Option.of("pack", "PACK", "command.option.kit-pack"), PAPER, OUT, REPLACE));
    return options.toArray(new Option[0]);
  }

  /** Of a pack, whether in a book or not; else of a class's lesson. */
  private static Exit kit(Typed typed, Terminal terminal) {
    String pack = typed.text("pack");
    if (pack != null) {
      return kit(typed, terminal, AskKit.of(typed, terminal, Pick.pack(pack)), null);
    }
    if (typed.text("book") == null) {
      throw Refused.field("book", "print.kit-of-what", "", "");
    }
    return AtBook.open(
            (again, to, book) -> {
              Lesson lesson = neededLesson(again, book);
              PrintKit.Head head = new PrintKit(to.words()).head(book, lesson);
              return kit(again, to, AskKit.of(again, book, lesson), head);
            })
        .run(typed, terminal);
  }

  private static Exit kit(
      Typed typed, Terminal terminal, AskKit.Worked worked, PrintKit.@Nullable Head head) {
    PrintKit print = new PrintKit(terminal.words());
    Exit said =
        say(
            typed,
            terminal,
            print.print(worked.kit(), worked.pack(), head, Unit.CM, paper(typed), file(typed)));
    AskKit.sayKept(typed, terminal, worked);
    return said;
  }

  private static Exit garment(Typed typed, Terminal terminal, Book book) {
    UUID id = Pick.garment(typed, book).id();
    PrintGarment print = new PrintGarment(book, terminal.words(), SharedTables.read());
    return say(typed, terminal, print.print(id, typed.has("girths"), paper(typed), file(typed)));
  }

  /** Without a lesson's name the last one is meant where pieces of one lesson are printed. */
  private static PrintScope scope(Typed typed, Book book, boolean lastLesson) {
    SchoolClass in = Pick.schoolClass(typed, book);
    Lesson lesson =
        lastLesson ? lesson(typed, book, in) : Pick.lesson(typed.text("lesson"), book, in);
    Student student = Pick.student(typed.text("student"), book, in);
    return new PrintScope(
        in.id(),
        lesson == null ? null : lesson.id(),
        student == null ? null : student.id(),
        choice(typed, "names", Naming.NAME, Naming.values()));
  }

  private static @Nullable Lesson lesson(Typed typed, Book book, SchoolClass in) {
    Lesson named = Pick.lesson(typed.text("lesson"), book, in);
    List<Lesson> all = book.lessons().of(in.id());
    return named != null || all.isEmpty() ? named : all.get(all.size() - 1);
  }

  private static Lesson neededLesson(Typed typed, Book book) {
    Lesson lesson = lesson(typed, book, Pick.schoolClass(typed, book));
    if (lesson == null) {
      throw Refused.field("lesson", "print.no-lesson", "", "");
    }
    return lesson;
  }

  private static PaperSize paper(Typed typed) {
    return choice(typed, "paper", PaperSize.A4, PaperSize.values());
  }

  private static <T extends Keyed> T choice(Typed typed, String option, T usual, T[] all) {
    String text = typed.text(option, usual.key()).strip().toLowerCase(Locale.ROOT);
    for (T each : all) {
      if (each.key().equals(text)) {
        return each;
      }
    }
    String known = Stream.of(all).map(Keyed::key).collect(Collectors.joining(", "));
    throw Refused.field(option, "choice.unknown", text, known);
  }

  private static PrintFile file(Typed typed) {
    Path path = AtBook.path("out", typed.text("out", ""));
    return new PrintFile(path, typed.has("replace"), PaperProgress.UNHEARD);
  }

  private static Exit say(Typed typed, Terminal terminal, Answer<Printed> answer) {
    Printed printed = Refused.unless(answer);
    answer.problems().forEach(each -> terminal.err().println(terminal.words().say(each)));
    ObjectNode json = Json.object();
    json.put("file", printed.file().toString());
    json.put("pages", printed.pages());
    terminal
        .out()
        .println(
            typed.has("json")
                ? Json.write(json)
                : terminal.say("command.say.printed", printed.file(), printed.pages()));
    return Exit.DONE;
  }
}
