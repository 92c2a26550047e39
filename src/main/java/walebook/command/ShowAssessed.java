package walebook.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.assess.LookOver;
import walebook.book.Book;
import walebook.compare.assessed.AssessedClass;
import walebook.compare.assessed.AssessedPiece;
import walebook.compare.assessed.Coverage;
import walebook.compare.assessed.MarkWords;
import walebook.compare.assessed.TimeLeft;
import walebook.record.Criterion;
import walebook.record.CriterionTag;
import walebook.record.Feedback;
import walebook.record.Help;
import walebook.record.Keyed;
import walebook.record.Marking;
import walebook.record.PieceCheck;
import walebook.record.PieceCode;
import walebook.record.TestPiece;
import walebook.words.Words;

/** What an assessor asks about, as text or JSON. */
final class ShowAssessed {
  private static final String NONE = "–";

  private ShowAssessed() {}

  static void criteria(
      Typed typed, Terminal terminal, AssessedClass assessed, Book book, UUID classId) {
    Map<UUID, Long> lessons =
        book.assessments().tagsOf(classId).stream()
            .filter(each -> each.lessonId() != null)
            .collect(Collectors.groupingBy(CriterionTag::criterionId, Collectors.counting()));
    ArrayNode json = Json.array();
    Table table =
        new Table(
            List.of(
                terminal.say("command.column.criterion"),
                terminal.say("command.column.asks"),
                terminal.say("command.column.looks-at"),
                terminal.say("command.column.lessons"),
                terminal.say("command.column.pieces")));
    for (Criterion each : assessed.criteria()) {
      long pieces =
          assessed.pieces().stream().filter(piece -> piece.criteria().contains(each.id())).count();
      long tagged = lessons.getOrDefault(each.id(), 0L);
      table.row(
          List.of(
              each.code(),
              each.says(),
              MarkWords.of(each).stream()
                  .map(terminal.words()::say)
                  .collect(Collectors.joining(", ")),
              String.valueOf(tagged),
              String.valueOf(pieces)));
      ObjectNode node = json.addObject();
      node.put("code", each.code());
      node.put("says", each.says());
      ArrayNode marks = node.putArray("marks");
      each.inOrder().forEach(marking -> marks.add(marking.key()));
      node.put("lessons", tagged);
      node.put("pieces", pieces);
    }
    String text =
        assessed.criteria().isEmpty() ? terminal.say("command.say.no-criteria") : table.toString();
    terminal.out().println(typed.has("json") ? Json.write(json) : text);
  }

  static void missing(Typed typed, Terminal terminal, AssessedClass assessed, LocalDate today) {
    List<Coverage.Gap> gaps = assessed.coverage().missing();
    TimeLeft left = assessed.timeLeft(today);
    String sentence = terminal.words().say(left.says(gaps.size()));
    if (typed.has("json")) {
      ObjectNode json = Json.object();
      json.put("warning", left.isWarning());
      json.put("says", sentence);
      Json.date(json, "endsOn", assessed.term() == null ? null : assessed.term().endsOn());
      json.put("lessonsToCome", left.lessons());
      ArrayNode all = json.putArray("missing");
      for (Coverage.Gap each : gaps) {
        ObjectNode node = all.addObject();
        node.put("student", each.student().name());
        node.put("alias", each.student().alias());
        node.put("criterion", each.criterion().code());
        Json.key(node, "standing", each.cell().standing());
        node.put("pieces", each.cell().evidence());
      }
      terminal.out().println(Json.write(json));
      return;
    }
    terminal.out().println(sentence);
    if (gaps.isEmpty()) {
      String key =
          assessed.criteria().isEmpty() ? "command.say.no-criteria" : "command.say.nothing-missing";
      terminal.out().println(terminal.say(key));
      return;
    }
    Table table =
        new Table(
            List.of(
                terminal.say("command.column.student"),
                terminal.say("command.column.criterion"),
                terminal.say("command.column.asks"),
                terminal.say("command.column.standing")));
    for (Coverage.Gap each : gaps) {
      table.row(
          List.of(
              each.student().name(),
              each.criterion().code(),
              each.criterion().says(),
              terminal.words().say(each.cell().says())));
    }
    terminal.out().println(table);
  }

  static void marks(Typed typed, Terminal terminal, AssessedClass assessed, Book book) {
    Map<UUID, String> names = new HashMap<>();
    book.students().all().forEach(each -> names.put(each.id(), each.name()));
    if (typed.has("json")) {
      ArrayNode all = Json.array();
      for (AssessedPiece each : assessed.pieces()) {
        ObjectNode node = all.addObject();
        node.put("code", each.code());
        node.put("student", names.get(each.studentId()));
        Json.date(node, "sewnOn", each.sewnOn());
        node.put("criteria", assessed.codesOf(each));
        check(node, "self", each.self());
        check(node, "tutor", each.tutor());
        Json.key(node, "standing", each.standing());
        node.put("comments", each.comments());
      }
      terminal.out().println(Json.write(all));
      return;
    }
    if (assessed.pieces().isEmpty()) {
      terminal.out().println(terminal.say("command.say.no-marks"));
      return;
    }
    Words words = terminal.words();
    List<String> head = new ArrayList<>();
    head.add(words.say("command.column.student"));
    head.add(words.say("command.column.code"));
    head.add(words.say("command.column.criteria"));
    head.addAll(markHeads(words));
    head.add(words.say("command.column.standing"));
    Table table = new Table(head);
    for (AssessedPiece each : assessed.pieces()) {
      List<String> row = new ArrayList<>();
      row.add(names.getOrDefault(each.studentId(), ""));
      row.add(PieceCode.spoken(each.code()));
      row.add(assessed.codesOf(each));
      row.addAll(beside(each.self(), each.tutor(), words));
      row.add(words.say(each.standing().says()));
      table.row(row);
    }
    terminal.out().println(table);
  }

  private static List<String> markHeads(Words words) {
    return List.of(
        words.say("command.column.choice"),
        words.say("command.column.technique"),
        words.say("command.column.performance"),
        words.say("command.column.finish"),
        words.say("command.column.reasoning"),
        words.say("command.column.help-given"));
  }

  private static List<String> beside(
      @Nullable PieceCheck self, @Nullable PieceCheck tutor, Words words) {
    List<String> cells = new ArrayList<>();
    for (Marking each : Marking.values()) {
      cells.add(mark(self, each) + " | " + mark(tutor, each));
    }
    cells.add(help(self, words) + " | " + help(tutor, words));
    return cells;
  }

  private static String mark(@Nullable PieceCheck check, Marking marking) {
    Integer mark = check == null ? null : check.mark(marking);
    return mark == null ? NONE : mark.toString();
  }

  private static String help(@Nullable PieceCheck check, Words words) {
    Help help = check == null ? null : check.help();
    return help == null ? NONE : words.say(MarkWords.of(help));
  }

  private static void check(ObjectNode node, String name, @Nullable PieceCheck check) {
    if (check == null) {
      node.putNull(name);
      return;
    }
    ObjectNode json = node.putObject(name);
    for (Marking each : Marking.values()) {
      json.put(each.key(), check.mark(each));
    }
    json.put("help", Keyed.keyOf(check.help()));
    Json.date(json, "on", check.checkedOn());
  }

  static void piece(Typed typed, Terminal terminal, TestPiece piece, @Nullable LookOver over) {
    if (over == null) {
      return;
    }
    String speaks =
        over.criteria().stream()
            .filter(each -> over.own().contains(each.id()) || over.ofLesson().contains(each.id()))
            .map(Criterion::code)
            .collect(Collectors.joining(", "));
    if (typed.has("json")) {
      ObjectNode json = Json.object();
      json.put("code", piece.code());
      json.put("criteria", speaks);
      check(json, "self", over.self());
      check(json, "tutor", over.tutor());
      ArrayNode said = json.putArray("feedback");
      for (Feedback each : over.feedback()) {
        ObjectNode node = said.addObject();
        Json.date(node, "on", each.givenOn());
        node.put("by", each.madeBy());
        node.put("says", each.says());
      }
      ArrayNode bank = json.putArray("bank");
      over.bank().forEach(bank::add);
      terminal.out().println(Json.write(json));
      return;
    }
    Words words = terminal.words();
    terminal.out().println(words.say("command.say.assessed-piece", PieceCode.spoken(piece.code())));
    terminal.out().println(words.say("command.say.speaks-for", speaks.isEmpty() ? NONE : speaks));
    Table table =
        new Table(
            Stream.concat(Stream.of(words.say("command.column.who")), markHeads(words).stream())
                .toList());
    table.row(row(words.say(MarkWords.of(walebook.record.CheckedBy.SELF)), over.self(), words));
    table.row(row(words.say(MarkWords.of(walebook.record.CheckedBy.TUTOR)), over.tutor(), words));
    terminal.out().println(table);
    for (Feedback each : over.feedback()) {
      terminal.out().println(each.givenOn() + "  " + each.says());
    }
    if (!over.bank().isEmpty()) {
      terminal.out().println(words.say("command.say.bank"));
      over.bank().forEach(each -> terminal.out().println("  " + each));
    }
  }

  private static List<String> row(String who, @Nullable PieceCheck check, Words words) {
    List<String> cells = new ArrayList<>();
    cells.add(who);
    for (Marking each : Marking.values()) {
      cells.add(mark(check, each));
    }
    cells.add(help(check, words));
    return cells;
  }
}
