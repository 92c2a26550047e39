package walebook.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.decide.AnswerGarment;
import walebook.act.decide.KeepGarment;
import walebook.act.decide.TypedGarment;
import walebook.book.Book;
import walebook.drawing.VerdictMark;
import walebook.garment.Advice;
import walebook.garment.Check;
import walebook.garment.GarmentAnswers;
import walebook.garment.TwoChoices;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.record.GarmentSheet;
import walebook.record.Student;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Garment sheets: the list, the answers of one, and the same beside another choice. */
final class GarmentJobs {
  private static final Option GARMENT = Option.needed("garment", "NAME", "command.option.garment");

  /** Named as the sheet's own fields. */
  private static final List<Option> CHOICE =
      List.of(
          Option.of("grain-round", "GRAIN", "command.field.grain-round"),
          Option.of("machine-kind", "KIND", "command.field.machine-kind"),
          Option.of("stitch", "TYPE", "command.field.own-stitch"),
          Option.of("dial-width", "NUMBER", "command.field.garment-width"),
          Option.of("dial-length", "NUMBER", "command.field.garment-length"),
          Option.of("sewn", "NUMBER", "command.field.sewn"),
          Option.of("trimmed", "YES|NO", "command.field.trimmed"));

  private GarmentJobs() {}

  static List<Job> all() {
    List<Option> choice =
        new ArrayList<>(
            List.of(Job.BOOK, GARMENT, Option.of("cloth", "NAME", "command.field.cloth")));
    choice.addAll(CHOICE);
    return List.of(
        Job.shows("garment list", "command.garment.list", AtBook.open(GarmentJobs::list), Job.BOOK),
        Job.shows(
            "garment check",
            "command.garment.check",
            AtBook.open(GarmentJobs::check),
            Job.BOOK,
            GARMENT),
        Job.shows(
            "garment compare",
            "command.garment.compare",
            AtBook.open(GarmentJobs::compare),
            choice.toArray(new Option[0])));
  }

  private static Exit list(Typed typed, Terminal terminal, Book book) {
    Map<UUID, String> people = new HashMap<>();
    for (Student each : book.students().all()) {
      people.put(each.id(), each.name());
    }
    Map<UUID, String> cloths = new HashMap<>();
    for (Cloth each : book.cloths().all()) {
      cloths.put(each.id(), each.name());
    }
    Table table =
        new Table(
            List.of(
                terminal.say("command.column.garment"),
                terminal.say("command.column.kind"),
                terminal.say("command.column.whose"),
                terminal.say("command.column.cloth")));
    ArrayNode json = Json.array();
    for (GarmentSheet each : book.garments().all()) {
      String whose = name(people, each.studentId());
      String cloth = name(cloths, each.clothId());
      table.row(List.of(each.name(), each.kind(), whose, cloth));
      ObjectNode node = json.addObject();
      node.put("name", each.name());
      node.put("kind", each.kind());
      node.put("whose", whose);
      node.put("cloth", cloth);
      Json.key(node, "grainRound", each.grainRound());
    }
    terminal.out().println(typed.has("json") ? Json.write(json) : table.toString());
    return Exit.DONE;
  }

  private static String name(Map<UUID, String> names, @Nullable UUID id) {
    String name = id == null ? null : names.get(id);
    return name == null ? "–" : name;
  }

  private static Exit check(Typed typed, Terminal terminal, Book book) {
    GarmentSheet sheet = Pick.garment(typed, book);
    GarmentAnswers answers =
        new AnswerGarment(book, SharedTables.read())
            .answer(sheet, book.garments().bodyOf(sheet.id()));
    if (typed.has("json")) {
      terminal.out().println(Json.write(json(answers, terminal.words())));
      return Exit.DONE;
    }
    Table table =
        new Table(
            List.of(
                terminal.say("command.column.check"),
                terminal.say("command.column.verdict"),
                terminal.say("command.column.answer")));
    for (Check each : answers.checks()) {
      table.row(
          List.of(
              terminal.words().say(each.about()),
              verdict(each, terminal),
              terminal.words().say(each.working().says())));
    }
    table.row(List.of(terminal.say("command.garment.whole"), verdict(answers, terminal), ""));
    terminal.out().println(table);
    advice(answers, terminal);
    return Exit.DONE;
  }

  private static void advice(GarmentAnswers answers, Terminal terminal) {
    if (!answers.advice().isEmpty()) {
      terminal.out().println(terminal.say("command.garment.to-do"));
    }
    int nth = 1;
    for (Advice each : answers.advice()) {
      terminal.out().println("  " + nth++ + ". " + terminal.words().say(each.says()));
    }
    answers
        .cautions()
        .forEach(each -> terminal.out().println("! " + terminal.words().say(each.says())));
  }

  private static Exit compare(Typed typed, Terminal terminal, Book book) {
    SharedTables tables = SharedTables.read();
    GarmentSheet sheet = Pick.garment(typed, book);
    Map<String, Double> body = book.garments().bodyOf(sheet.id());
    Map<String, String> fields = TypedGarment.of(sheet, body, Unit.MM);
    fields.putAll(typed.given(CHOICE));
    Cloth cloth = Pick.cloth(typed.text("cloth"), book);
    if (cloth != null) {
      fields.put("cloth", cloth.id().toString());
    }
    GarmentSheet other =
        Refused.unless(
            new KeepGarment(book, tables, terminal.clock()).read(sheet, null, fields, Unit.MM));
    AnswerGarment answer = new AnswerGarment(book, tables);
    TwoChoices both = new TwoChoices(answer.answer(sheet, body), answer.answer(other, body));
    terminal
        .out()
        .println(
            typed.has("json")
                ? Json.write(json(both, terminal.words()))
                : table(both, terminal).toString());
    return Exit.DONE;
  }

  private static Table table(TwoChoices both, Terminal terminal) {
    Table table =
        new Table(
            List.of(
                terminal.say("command.column.check"),
                terminal.say("command.column.sheet"),
                terminal.say("command.column.other"),
                terminal.say("command.column.differs")));
    for (TwoChoices.Pair pair : both.pairs()) {
      table.row(
          List.of(
              terminal.words().say(pair.about()),
              verdict(pair.one(), terminal),
              verdict(pair.other(), terminal),
              terminal.say(pair.differs().sayKey())));
    }
    table.row(
        List.of(
            terminal.say("command.garment.whole"),
            verdict(both.one(), terminal),
            verdict(both.other(), terminal),
            ""));
    return table;
  }

  private static String verdict(@Nullable Check check, Terminal terminal) {
    return check == null
        ? "–"
        : terminal.say(VerdictMark.key(check.verdict(), check.isReckonedOnly()));
  }

  private static String verdict(GarmentAnswers answers, Terminal terminal) {
    return terminal.say(VerdictMark.key(answers.verdict(), answers.isReckonedOnly()));
  }

  private static ObjectNode json(TwoChoices both, Words words) {
    ObjectNode json = Json.object();
    json.set("sheet", json(both.one(), words));
    json.set("other", json(both.other(), words));
    ArrayNode pairs = json.putArray("pairs");
    for (TwoChoices.Pair pair : both.pairs()) {
      ObjectNode node = pairs.addObject();
      node.put("check", words.say(pair.about()));
      node.put("differs", key(pair.differs()));
    }
    return json;
  }

  private static ObjectNode json(GarmentAnswers answers, Words words) {
    ObjectNode json = Json.object();
    json.put("verdict", key(answers.verdict()));
    ArrayNode checks = json.putArray("checks");
    for (Check each : answers.checks()) {
      ObjectNode node = checks.addObject();
      node.put("check", words.say(each.about()));
      node.put("verdict", key(each.verdict()));
      node.put("weakest", each.weakest() == null ? null : each.weakest().kind().key());
      node.set("working", WorkingJson.of(each.working(), words));
    }
    ArrayNode advice = json.putArray("advice");
    answers.advice().forEach(each -> advice.add(words.say(each.says())));
    ArrayNode cautions = json.putArray("cautions");
    answers.cautions().forEach(each -> cautions.add(words.say(each.says())));
    return json;
  }

  private static String key(Enum<?> of) {
    return of.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
