package walebook.command;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.AskAlike;
import walebook.act.classroom.CompareFair;
import walebook.act.classroom.SettingWords;
import walebook.book.Book;
import walebook.compare.CompareBySetting;
import walebook.compare.Factor;
import walebook.compare.FactorTables;
import walebook.compare.FairQuestion;
import walebook.compare.Outcome;
import walebook.compare.alike.MeasureAlike;
import walebook.problem.Place;
import walebook.quantity.ReadNumber;
import walebook.record.Cloth;
import walebook.record.Keyed;
import walebook.record.Lesson;
import walebook.record.SchoolClass;

/** Comparisons that allow for who sewed what, and whether a class measures alike. */
final class FairJobs {
  static final Option CLOTH = Option.of("cloth", "NAME", "command.field.cloth");
  static final Option OUTCOME = Option.of("outcome", "OUTCOME", "command.option.outcome");
  static final Option MATTERS = Option.of("matters", "NUMBER", "command.option.matters");
  static final Option BY = Option.many("by", "FACTOR", "command.option.by");
  static final Option ALIASES = Option.flag("aliases", "command.option.aliases");

  private FairJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
            "alike",
            "command.alike",
            AtBook.open(FairJobs::alike),
            Job.BOOK,
            Job.CLASS,
            Job.LESSON,
            CLOTH,
            ALIASES));
  }

  /** The fair comparison of one class, asked by {@code --outcome}. */
  static Exit compare(Typed typed, Terminal terminal, Book book) {
    SchoolClass in = Pick.schoolClass(typed, book);
    Lesson lesson = Pick.lesson(typed.text("lesson"), book, in);
    Cloth cloth = Pick.cloth(typed.text("cloth"), book);
    CompareFair.Which which =
        new CompareFair.Which(
            List.of(in.id()),
            lesson == null ? null : lesson.id(),
            cloth == null ? null : cloth.id(),
            typed.has("aliases"));
    FairQuestion question = question(typed, Outcome.HELD);
    CompareFair act = new CompareFair(book);
    CompareFair.Found found = act.compare(which, question);
    FactorTables tables = typed.has("tables") ? act.tables(which, question) : null;
    print(typed, terminal, found, tables);
    return Exit.DONE;
  }

  static void print(
      Typed typed, Terminal terminal, CompareFair.Found found, @Nullable FactorTables tables) {
    ShowFair show =
        new ShowFair(terminal.words(), new SettingWords(terminal.words()), typed.has("p-values"));
    terminal
        .out()
        .println(
            typed.has("json") ? Json.write(show.json(found, tables)) : show.text(found, tables));
  }

  /** What is asked; in this outcome where none is named. */
  static FairQuestion question(Typed typed, Outcome usual) {
    Outcome outcome = outcome(typed.text("outcome", usual.key()));
    return FairQuestion.of(outcome, factors(typed.all("by")))
        .withinMachines(typed.has("within-machine"))
        .mattering(matters(typed));
  }

  static Outcome outcome(String key) {
    Outcome found = Keyed.find(Outcome.class, key);
    if (found == null) {
      throw Refused.field("compared-in", "choice.unknown", key, keys(Outcome.values()));
    }
    return found;
  }

  private static String keys(Keyed[] all) {
    List<String> keys = new ArrayList<>();
    for (Keyed each : all) {
      keys.add(each.key());
    }
    return String.join(", ", keys);
  }

  private static @Nullable Double matters(Typed typed) {
    String text = typed.text("matters");
    if (text == null) {
      return null;
    }
    double read = Refused.unless(ReadNumber.plain(text, Place.field("matters")));
    if (!(read > 0)) {
      throw Refused.field("matters", "number.too-small", text, "0.1");
    }
    return read;
  }

  /** Factors by their keys; the usual ones when none is named. */
  static List<Factor> factors(List<String> keys) {
    if (keys.isEmpty()) {
      return CompareBySetting.USUAL;
    }
    List<Factor> factors = new ArrayList<>();
    for (String key : keys) {
      Factor factor = Keyed.find(Factor.class, key);
      if (factor == null) {
        throw Refused.field("by", "choice.unknown", key, keys(Factor.values()));
      }
      factors.add(factor);
    }
    return factors;
  }

  private static Exit alike(Typed typed, Terminal terminal, Book book) {
    SchoolClass in = Pick.schoolClass(typed, book);
    Lesson lesson = Pick.lesson(typed.text("lesson"), book, in);
    Cloth cloth = Pick.cloth(typed.text("cloth"), book);
    MeasureAlike found =
        new AskAlike(book)
            .ask(
                in.id(),
                lesson == null ? null : lesson.id(),
                cloth == null ? null : cloth.id(),
                typed.has("aliases"));
    ShowAlike show = new ShowAlike(terminal.words(), book);
    terminal.out().println(typed.has("json") ? Json.write(show.json(found)) : show.text(found));
    return Exit.DONE;
  }
}
