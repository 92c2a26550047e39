package walebook.command;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.history.PieceTimeline;
import walebook.act.history.SayChange;
import walebook.act.history.StepBack;
import walebook.act.history.UseBin;
import walebook.book.Book;
import walebook.problem.Answer;
import walebook.record.By;
import walebook.record.Change;
import walebook.record.Cloth;
import walebook.record.PieceCode;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** What was changed, back and forth through it, and the bin. */
final class HistoryJobs {
  private static final Option BY = Option.of("by", "NAME", "command.option.done-by");
  private static final Option LIMIT = Option.of("limit", "NUMBER", "command.option.limit");
  private static final String USUAL_LIMIT = "50";

  private HistoryJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows("book undo", "command.book.undo", AtBook.open(HistoryJobs::undo), Job.BOOK, BY),
        Job.shows("book redo", "command.book.redo", AtBook.open(HistoryJobs::redo), Job.BOOK, BY),
        Job.shows(
            "book history",
            "command.book.history",
            AtBook.open(HistoryJobs::history),
            Job.BOOK,
            Option.of("piece", "CODE", "command.option.history-piece"),
            LIMIT),
        Job.shows(
                "piece history",
                "command.piece.history",
                AtBook.open(
                    (typed, terminal, book) -> piece(typed, terminal, book, typed.operand(0))),
                Job.BOOK)
            .operand("CODE", "command.operand.code"),
        Job.shows("bin list", "command.bin.list", AtBook.open(HistoryJobs::list), Job.BOOK),
        Job.shows(
                "bin put",
                "command.bin.put",
                AtBook.open(HistoryJobs::put),
                Job.BOOK,
                BY,
                Option.of("kind", "KIND", "command.option.bin-kind"))
            .operand("THING", "command.operand.bin-thing"),
        Job.shows(
                "bin restore",
                "command.bin.restore",
                AtBook.open(HistoryJobs::restore),
                Job.BOOK,
                BY)
            .operand("NUMBER", "command.operand.bin-number"),
        Job.shows(
            "bin empty",
            "command.bin.empty",
            AtBook.open(HistoryJobs::empty),
            Job.BOOK,
            BY,
            Option.flag("for-good", "command.option.for-good")));
  }

  private static By by(Typed typed) {
    return By.named(typed.text("by", ""));
  }

  private static SayChange say(Terminal terminal, Book book) {
    return new SayChange(book, terminal.words(), false);
  }

  private static Exit undo(Typed typed, Terminal terminal, Book book) {
    StepBack back = new StepBack(book, say(terminal, book));
    StepBack.Offer offer = back.undo(null);
    if (offer == null) {
      throw Refused.field("step", "undo.none", "", "");
    }
    return turned(typed, terminal, back.undo(offer, by(typed)), "command.say.undid");
  }

  private static Exit redo(Typed typed, Terminal terminal, Book book) {
    StepBack back = new StepBack(book, say(terminal, book));
    StepBack.Offer offer = back.redo(null);
    if (offer == null) {
      throw Refused.field("step", "undo.none-to-redo", "", "");
    }
    return turned(typed, terminal, back.redo(offer, by(typed)), "command.say.redid");
  }

  private static Exit turned(
      Typed typed, Terminal terminal, Answer<StepBack.Offer> answer, String key) {
    StepBack.Offer offer = Refused.unless(answer);
    ObjectNode json = Json.object();
    json.put("step", offer.stepId().toString());
    json.put("what", offer.says());
    terminal
        .out()
        .println(typed.has("json") ? Json.write(json) : terminal.words().say(key, offer.says()));
    return Exit.DONE;
  }

  private static Exit history(Typed typed, Terminal terminal, Book book) {
    String code = typed.text("piece");
    if (code != null) {
      return piece(typed, terminal, book, code);
    }
    String limit = typed.text("limit", USUAL_LIMIT);
    if (!limit.matches("[0-9]{1,6}")) {
      throw Refused.field("limit", "number.not-whole", limit, USUAL_LIMIT);
    }
    SayChange say = say(terminal, book);
    List<PieceTimeline.Event> events =
        book.history().latest(Integer.parseInt(limit)).stream()
            .map(each -> event(each, say))
            .toList();
    show(typed, terminal, events);
    return Exit.DONE;
  }

  private static PieceTimeline.Event event(Change change, SayChange say) {
    return new PieceTimeline.Event(change.doneAt(), say.who(change), say.change(change), List.of());
  }

  private static Exit piece(Typed typed, Terminal terminal, Book book, String operand) {
    PieceTimeline timeline = new PieceTimeline(book, SharedTables.read(), terminal.words(), false);
    String code = PieceCode.read(operand);
    UUID id = code == null ? null : timeline.find(code);
    if (id == null) {
      throw Refused.field("code", code == null ? "code.not-a-code" : "code.unknown", operand, "");
    }
    show(typed, terminal, timeline.of(id));
    return Exit.DONE;
  }

  private static void show(Typed typed, Terminal terminal, List<PieceTimeline.Event> events) {
    if (typed.has("json")) {
      ArrayNode all = Json.array();
      events.forEach(each -> json(all.addObject(), each));
      terminal.out().println(Json.write(all));
      return;
    }
    Words words = terminal.words();
    Table table =
        new Table(
            List.of(
                words.say("command.column.when"),
                words.say("command.column.who"),
                words.say("command.column.what")));
    for (PieceTimeline.Event each : events) {
      String fields =
          each.fields().stream()
              .map(
                  field ->
                      words.say("act.next.from-to", label(field, words), from(field), to(field)))
              .collect(Collectors.joining("; "));
      table.row(
          List.of(
              when(each.at(), terminal),
              each.who(),
              fields.isEmpty() ? each.what() : each.what() + " – " + fields));
    }
    terminal.out().println(table);
  }

  private static String label(PieceTimeline.Field field, Words words) {
    return words.say("desk.pieces.field." + field.field().key());
  }

  private static String from(PieceTimeline.Field field) {
    return field.from().isEmpty() ? "–" : field.from();
  }

  private static String to(PieceTimeline.Field field) {
    return field.to().isEmpty() ? "–" : field.to();
  }

  private static void json(ObjectNode node, PieceTimeline.Event event) {
    node.put("at", event.at().toString());
    node.put("who", event.who());
    node.put("what", event.what());
    ArrayNode fields = node.putArray("fields");
    for (PieceTimeline.Field each : event.fields()) {
      ObjectNode field = fields.addObject();
      field.put("field", each.field().key());
      field.put("from", each.from());
      field.put("to", each.to());
    }
  }

  private static String when(Instant at, Terminal terminal) {
    return DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT)
        .withZone(terminal.clock().getZone())
        .format(at.truncatedTo(ChronoUnit.MINUTES));
  }

  private static Exit list(Typed typed, Terminal terminal, Book book) {
    List<UseBin.Item> items = new UseBin(book, say(terminal, book)).all();
    if (typed.has("json")) {
      ArrayNode all = Json.array();
      for (UseBin.Item each : items) {
        ObjectNode node = all.addObject();
        node.put("id", each.id().toString());
        node.put("what", each.what());
        node.put("who", each.who());
        node.put("at", each.putAt().toString());
      }
      terminal.out().println(Json.write(all));
      return Exit.DONE;
    }
    if (items.isEmpty()) {
      terminal.out().println(terminal.say("command.say.bin-empty"));
      return Exit.DONE;
    }
    Words words = terminal.words();
    Table table =
        new Table(
            List.of(
                words.say("command.column.number"),
                words.say("command.column.what"),
                words.say("command.column.who"),
                words.say("command.column.when")));
    for (int i = 0; i < items.size(); i++) {
      UseBin.Item each = items.get(i);
      table.row(
          List.of(String.valueOf(i + 1), each.what(), each.who(), when(each.putAt(), terminal)));
    }
    terminal.out().println(table);
    return Exit.DONE;
  }

  private static Exit put(Typed typed, Terminal terminal, Book book) {
    String kind = typed.text("kind", "piece");
    String thing = typed.operand(0);
    String entity = HistoryThings.entity(kind);
    UUID id = thing(kind, thing, book);
    if (id == null) {
      throw Refused.field("THING", "choice.unknown", thing, "");
    }
    Refused.unless(new UseBin(book, say(terminal, book)).put(entity, id, by(typed)));
    return list(typed, terminal, book);
  }

  private static @Nullable UUID thing(String kind, String typed, Book book) {
    if (kind.equals("piece")) {
      return PieceJobs.byCode(book, "code", typed).id();
    }
    if (kind.equals("cloth")) {
      Cloth cloth = Pick.cloth(typed, book);
      return cloth == null ? null : cloth.id();
    }
    return HistoryThings.id(kind, typed, book);
  }

  private static Exit restore(Typed typed, Terminal terminal, Book book) {
    UseBin bin = new UseBin(book, say(terminal, book));
    List<UseBin.Item> items = bin.all();
    String number = typed.operand(0);
    int at = number.matches("[0-9]{1,6}") ? Integer.parseInt(number) : 0;
    if (at < 1 || at > items.size()) {
      throw Refused.field("NUMBER", "number.outside", number, "1 – " + items.size());
    }
    Refused.unless(bin.restore(items.get(at - 1).id(), by(typed)));
    return list(typed, terminal, book);
  }

  private static Exit empty(Typed typed, Terminal terminal, Book book) {
    if (!typed.has("for-good")) {
      throw Refused.field("for-good", "bin.for-good", "", "");
    }
    new UseBin(book, say(terminal, book)).empty(by(typed));
    return list(typed, terminal, book);
  }
}
