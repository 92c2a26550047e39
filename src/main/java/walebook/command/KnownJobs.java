package walebook.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.classroom.AskControl;
import walebook.act.classroom.AskGrowth;
import walebook.act.classroom.AskKnown;
import walebook.act.classroom.CompareFair;
import walebook.act.classroom.SettingWords;
import walebook.book.Book;
import walebook.book.open.SqliteFiles;
import walebook.compare.ControlFindings;
import walebook.compare.FairComparison;
import walebook.compare.FairQuestion;
import walebook.compare.FromControl;
import walebook.compare.Outcome;
import walebook.compare.known.Attempts;
import walebook.compare.known.Growth;
import walebook.compare.known.GrowthFindings;
import walebook.compare.known.KnownFindings;
import walebook.compare.known.KnownSoFar;
import walebook.record.Cloth;
import walebook.record.Lesson;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.statistics.Proportion;
import walebook.working.Message;

/** What controls, classes, terms and books together say, and how one student grows. */
final class KnownJobs {
  private KnownJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
            "control",
            "command.control",
            AtBook.open(KnownJobs::control),
            Job.BOOK,
            Job.CLASS,
            Job.LESSON,
            FairJobs.CLOTH,
            FairJobs.BY,
            FairJobs.OUTCOME,
            Option.flag("within-machine", "command.option.within-machine"),
            FairJobs.ALIASES),
        Job.shows(
            "known",
            "command.known",
            AtBook.open(KnownJobs::known),
            Job.BOOK,
            Option.many("also", "FILE", "command.option.also"),
            FairJobs.CLOTH,
            Option.of("stitch", "NAME", "command.option.stitch-name"),
            FairJobs.BY,
            FairJobs.OUTCOME,
            FairJobs.MATTERS,
            Option.flag("p-values", "command.option.p-values"),
            FairJobs.ALIASES),
        Job.shows(
            "growth",
            "command.growth",
            AtBook.open(KnownJobs::growth),
            Job.BOOK,
            Job.CLASS,
            Option.needed("student", "NAME", "command.option.student")));
  }

  private static Exit control(Typed typed, Terminal terminal, Book book) {
    SchoolClass in = Pick.schoolClass(typed, book);
    Lesson lesson = Pick.lesson(typed.text("lesson"), book, in);
    Cloth cloth = Pick.cloth(typed.text("cloth"), book);
    FairQuestion question = FairJobs.question(typed, Outcome.SEAM_SHARE);
    if (question.outcome().isRate()) {
      String values =
          Arrays.stream(Outcome.values())
              .filter(each -> !each.isRate())
              .map(Outcome::key)
              .collect(Collectors.joining(", "));
      throw Refused.field("compared-in", "control.rate", question.outcome().key(), values);
    }
    FromControl found =
        new AskControl(book)
            .ask(
                new CompareFair.Which(
                    List.of(in.id()),
                    lesson == null ? null : lesson.id(),
                    cloth == null ? null : cloth.id(),
                    typed.has("aliases")),
                question);
    SettingWords settings = new SettingWords(terminal.words());
    ControlFindings findings =
        new ControlFindings(
            found, levels -> settings.setting(found.factors(), levels), question.confidence());
    List<String> says = worded(terminal, findings.all());
    if (typed.has("json")) {
      terminal.out().println(Json.write(json(found, findings, says)));
      return Exit.DONE;
    }
    terminal.out().println(ShowFair.title(terminal.words(), found.outcome(), found.same()));
    terminal.out().println();
    terminal.out().println(String.join(System.lineSeparator(), says));
    return Exit.DONE;
  }

  private static List<String> worded(Terminal terminal, List<Message> says) {
    return says.stream().map(terminal.words()::say).toList();
  }

  private static ObjectNode json(FromControl found, ControlFindings findings, List<String> says) {
    ObjectNode json = Json.object();
    json.put("outcome", found.outcome().key());
    json.put("withinMachine", found.withinMachine());
    FromControl.Counted counted = found.counted();
    json.put("logged", counted.logged());
    json.put("read", counted.read());
    json.put("controlPieces", counted.controls());
    json.put("withoutValue", counted.noValue());
    json.put("withoutClothStretch", counted.noStretch());
    json.put("piecesWithoutControl", counted.noControl());
    json.put("setAside", counted.setAside());
    ArrayNode factors = json.putArray("factors");
    found.factors().forEach(each -> factors.add(each.key()));
    ArrayNode own = json.putArray("controls");
    for (FromControl.Own each : found.own()) {
      ObjectNode node = own.addObject();
      node.put("student", each.who());
      node.put("mean", each.mean());
      node.put("pieces", each.pieces());
    }
    ArrayNode rows = json.putArray("rows");
    for (FromControl.Row row : found.rows()) {
      ObjectNode node = rows.addObject();
      ArrayNode levels = node.putArray("levels");
      row.levels().forEach(levels::add);
      node.put("students", row.students());
      node.put("meanOverStudents", row.perStudent() == null ? null : row.perStudent().mean());
      FairJson.limits(node, "mean", findings.interval(row), 1);
      ArrayNode dots = node.putArray("dots");
      for (FromControl.Apart each : row.apart()) {
        ObjectNode dot = dots.addObject();
        dot.put("code", each.piece().code());
        dot.put("student", each.piece().who());
        dot.put("value", each.piece().value());
        dot.put("atLeast", each.piece().atLeast());
        dot.put("control", each.control());
        dot.put("difference", each.difference());
      }
    }
    ArrayNode without = json.putArray("withoutControl");
    found.without().forEach(without::add);
    ArrayNode sentences = json.putArray("says");
    says.forEach(sentences::add);
    return json;
  }

  private static Exit known(Typed typed, Terminal terminal, Book book) {
    List<Book> books = new ArrayList<>(List.of(book));
    try {
      for (String file : typed.all("also")) {
        books.add(
            Refused.unless(
                new SqliteFiles().open(AtBook.path("also", file), terminal.clock()), Exit.NO_BOOK));
      }
      Cloth cloth = Pick.cloth(typed.text("cloth"), book);
      FairQuestion question = FairJobs.question(typed, Outcome.HELD);
      AskKnown act = new AskKnown(books);
      AskKnown.Which which =
          new AskKnown.Which(
              cloth == null ? null : cloth.name(),
              stitch(typed.text("stitch"), act.stitches(null)),
              typed.has("aliases"));
      KnownSoFar found =
          typed.has("json") ? act.askForPieces(which, question) : act.ask(which, question);
      print(typed, terminal, found);
    } finally {
      books.subList(1, books.size()).forEach(Book::close);
    }
    return Exit.DONE;
  }

  /** What was typed, refused where pieces are logged and none of them is of such a stitch. */
  private static @Nullable String stitch(@Nullable String typed, List<String> sewn) {
    if (typed != null && !sewn.isEmpty() && sewn.stream().noneMatch(typed::equalsIgnoreCase)) {
      throw Refused.field("stitch", "choice.unknown", typed, String.join(", ", sewn));
    }
    return typed;
  }

  private static void print(Typed typed, Terminal terminal, KnownSoFar found) {
    SettingWords settings = new SettingWords(terminal.words());
    FairComparison together = found.together();
    List<String> says =
        worded(
            terminal,
            KnownFindings.of(
                found,
                levels -> settings.setting(together.factors(), levels),
                grain -> terminal.say("act.class.grain." + grain.key())));
    if (typed.has("json")) {
      terminal.out().println(Json.write(json(found, says, typed.has("p-values"))));
      return;
    }
    terminal.out().println(String.join(System.lineSeparator(), says));
    if (!found.classes().isEmpty()) {
      terminal.out().println();
      terminal.out().println(table(terminal, found));
    }
  }

  /** A column stands only where the outcome has such a number for one of the classes. */
  private static Table table(Terminal terminal, KnownSoFar found) {
    boolean means = found.classes().stream().anyMatch(each -> each.mean() != null);
    boolean halves = found.classes().stream().anyMatch(each -> each.median() != null);
    boolean shares = found.classes().stream().anyMatch(each -> each.held() != null);
    List<String> header =
        new ArrayList<>(
            List.of(
                terminal.say("command.column.term"),
                terminal.say("command.column.class"),
                terminal.say("command.column.pieces"),
                terminal.say("command.column.students")));
    if (means) {
      header.add(terminal.say("command.column.raw-mean"));
    }
    if (halves) {
      header.add(terminal.say("command.column.half-by"));
    }
    if (shares) {
      header.add(terminal.say("command.column.held"));
    }
    Table table = new Table(header);
    for (KnownSoFar.ClassLine each : found.classes()) {
      List<String> cells =
          new ArrayList<>(
              List.of(
                  each.term(),
                  each.className(),
                  String.valueOf(each.pieces()),
                  String.valueOf(each.students())));
      if (means) {
        cells.add(ShowFair.number(mean(each)));
      }
      if (halves) {
        cells.add(ShowFair.number(each.median()));
      }
      if (shares) {
        cells.add(held(each.held()));
      }
      table.row(cells);
    }
    return table;
  }

  private static String held(@Nullable Proportion held) {
    return held == null ? "–" : String.format(Locale.ROOT, "%d/%d", held.count(), held.n());
  }

  private static @Nullable Double mean(KnownSoFar.ClassLine line) {
    return line.mean() == null ? null : Double.valueOf(line.mean().mean());
  }

  private static ObjectNode json(KnownSoFar found, List<String> says, boolean pValues) {
    ObjectNode json = Json.object();
    ArrayNode classes = json.putArray("classes");
    for (KnownSoFar.ClassLine each : found.classes()) {
      ObjectNode node = classes.addObject();
      node.put("book", each.book());
      node.put("class", each.className());
      node.put("term", each.term());
      Json.date(node, "starts", each.starts());
      node.put("pieces", each.pieces());
      node.put("students", each.students());
      node.put("setAside", each.setAside());
      node.put("mean", mean(each));
      node.put("median", each.median());
      node.put("held", each.held() == null ? null : each.held().count());
      node.put("pulled", each.held() == null ? null : each.held().n());
    }
    json.set("together", new FairJson(pValues).comparison(found.together()));
    ArrayNode sentences = json.putArray("says");
    says.forEach(sentences::add);
    return json;
  }

  private static Exit growth(Typed typed, Terminal terminal, Book book) {
    SchoolClass in = Pick.schoolClass(typed, book);
    Student student = Pick.student(typed.text("student"), book, in);
    if (student == null) {
      throw Refused.field("student", "field.needed", "", "");
    }
    Growth found = new AskGrowth(book).ask(student.id());
    List<String> says = worded(terminal, GrowthFindings.of(found));
    if (!typed.has("json")) {
      terminal.out().println(String.join(System.lineSeparator(), says));
      return Exit.DONE;
    }
    ObjectNode json = Json.object();
    ArrayNode periods = json.putArray("periods");
    for (Growth.Period each : found.periods()) {
      ObjectNode node = periods.addObject();
      node.put("period", each.name());
      node.put("tries", each.tries().size());
      node.put("pieces", each.pieces());
      node.put("firstTimeRight", each.firstTimeRight().count());
      node.put("halfGoodByPiece", each.half());
      ArrayNode tries = node.putArray("untilGood");
      for (Attempts one : each.tries()) {
        ObjectNode attempt = tries.addObject();
        Json.date(attempt, "began", one.began());
        attempt.put("pieces", one.untilGood());
        attempt.put("good", one.good());
      }
    }
    json.put("notJudged", found.notJudged());
    ArrayNode sentences = json.putArray("says");
    says.forEach(sentences::add);
    terminal.out().println(Json.write(json));
    return Exit.DONE;
  }
}
