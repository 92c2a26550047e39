package walebook.command;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.cloth.LogWash;
import walebook.act.cloth.WashSummary;
import walebook.book.Book;
import walebook.quantity.Show;
import walebook.record.Cloth;
import walebook.record.ClothWash;
import walebook.working.Working;

/** What washing does to cloths. */
final class WashJobs {
  private static final Option CLOTH = Option.needed("cloth", "NAME", "command.field.cloth");

  private static final List<Option> WASH =
      List.of(
          Option.needed("grain", "GRAIN", "command.wash.grain"),
          Option.needed("before", "LENGTH", "command.wash.before"),
          Option.needed("after", "LENGTH", "command.wash.after"),
          Option.of("wash", "WORDS", "command.wash.how"),
          Option.of("washed-on", "DATE", "command.wash.on"));

  private WashJobs() {}

  static List<Job> all() {
    List<Option> log = new ArrayList<>(List.of(Job.BOOK, CLOTH, Job.SURE));
    log.addAll(WASH);
    return List.of(
        Job.shows(
            "cloth wash",
            "command.cloth.wash",
            AtBook.open(WashJobs::log),
            log.toArray(new Option[0])),
        Job.shows(
            "cloth washes", "command.cloth.washes", AtBook.open(WashJobs::list), Job.BOOK, CLOTH));
  }

  private static Cloth cloth(Typed typed, Book book) {
    Cloth cloth = Pick.cloth(typed.text("cloth", ""), book);
    if (cloth == null) {
      throw Refused.field("cloth", "field.needed", "", "");
    }
    return cloth;
  }

  private static Exit log(Typed typed, Terminal terminal, Book book) {
    Cloth cloth = cloth(typed, book);
    ClothWash wash =
        Refused.unless(
                new LogWash(book, terminal.clock())
                    .save(cloth.id(), typed.given(WASH), typed.has("sure")))
            .get(0);
    Working working = LogWash.working(wash).value();
    if (typed.has("json")) {
      ObjectNode json = json(wash);
      json.put("cloth", cloth.name());
      json.set("working", WorkingJson.of(working, terminal.words()));
      terminal.out().println(Json.write(json));
    } else {
      terminal.out().println(terminal.say("command.say.wash", cloth.name(), wash.grain().key()));
      terminal.out().println(WorkingText.of(working, terminal.words()));
    }
    return Exit.DONE;
  }

  private static Exit list(Typed typed, Terminal terminal, Book book) {
    Cloth cloth = cloth(typed, book);
    List<ClothWash> washes = book.clothLog().washesOf(cloth.id());
    List<WashSummary> means = WashSummary.of(washes);
    if (typed.has("json")) {
      ObjectNode json = Json.object();
      json.put("cloth", cloth.name());
      ArrayNode rows = json.putArray("washes");
      washes.forEach(each -> rows.add(json(each)));
      ArrayNode summed = json.putArray("means");
      for (WashSummary each : means) {
        ObjectNode node = summed.addObject();
        Json.key(node, "grain", each.grain());
        node.put("washes", each.n());
        node.put("changePercent", each.percent());
        node.put("giveOrTake", each.giveOrTake());
      }
      terminal.out().println(Json.write(json));
      return Exit.DONE;
    }
    if (washes.isEmpty()) {
      terminal.out().println(terminal.say("command.say.no-washes", cloth.name()));
      return Exit.DONE;
    }
    Table table =
        new Table(
            List.of(
                terminal.say("command.column.date"),
                terminal.say("command.column.grain"),
                terminal.say("command.column.before"),
                terminal.say("command.column.after"),
                terminal.say("command.column.change"),
                terminal.say("command.column.wash"),
                terminal.say("command.column.key")));
    for (ClothWash each : washes) {
      table.row(
          List.of(
              each.washedOn().toString(),
              each.grain().key(),
              Show.upTo(each.beforeMm(), 2),
              Show.upTo(each.afterMm(), 2),
              Show.fixed(each.changePercent(), 1),
              each.wash(),
              each.id().toString()));
    }
    terminal.out().println(table);
    for (WashSummary each : means) {
      terminal
          .out()
          .println(
              terminal.say(
                  "command.say.wash-mean",
                  each.grain().key(),
                  Show.percent(each.percent()),
                  Show.fixed(each.giveOrTake(), 1)));
    }
    return Exit.DONE;
  }

  private static ObjectNode json(ClothWash wash) {
    ObjectNode json = Json.object();
    json.put("key", wash.id().toString());
    Json.key(json, "grain", wash.grain());
    json.put("beforeMm", wash.beforeMm());
    json.put("afterMm", wash.afterMm());
    json.put("changePercent", wash.changePercent());
    json.put("wash", wash.wash());
    Json.date(json, "washedOn", wash.washedOn());
    return json;
  }
}
