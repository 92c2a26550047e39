package walebook.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import walebook.act.piece.FaultCauses;
import walebook.act.piece.FaultText;
import walebook.act.piece.FindCauses;
import walebook.act.piece.LoadPieceRoom;
import walebook.act.piece.PieceRoom;
import walebook.act.piece.SayNext;
import walebook.act.piece.SewNext;
import walebook.book.Book;
import walebook.problem.Place;
import walebook.record.Keyed;
import walebook.record.TestPiece;
import walebook.seam.LikelyCause;
import walebook.seam.NextTry;
import walebook.tables.SharedTables;
import walebook.working.Message;

/** What may be behind the faults of a piece, and what to sew next. */
final class CauseJobs {
  private CauseJobs() {}

  static List<Job> all() {
    return List.of(
        Job.shows(
                "piece causes",
                "command.piece.causes",
                AtBook.open(CauseJobs::causes),
                Job.BOOK,
                Option.of("fault", "FAULT", "command.option.fault"))
            .operand("CODE", "command.operand.code"));
  }

  private static Exit causes(Typed typed, Terminal terminal, Book book) {
    TestPiece piece = PieceJobs.byCode(book, "code", typed.operand(0));
    SharedTables tables = SharedTables.read();
    PieceRoom room = LoadPieceRoom.of(book, tables, piece.whose().classId(), piece);
    List<FaultText.Said> said = said(piece, typed.text("fault"), tables);
    List<FaultCauses> found =
        new FindCauses(room, tables)
            .of(
                piece.cloth(),
                piece.setting(),
                said.stream().map(FaultText.Said::seen).toList(),
                book.pieces().chainOf(piece.id()));
    if (typed.has("json")) {
      ArrayNode all = Json.array();
      found.forEach(
          each -> {
            ObjectNode one = all.addObject();
            json(one, each, piece, room, terminal);
            ArrayNode assumed = one.putArray("assumed");
            assumed(each, said, terminal).forEach(assumed::add);
          });
      terminal.out().println(Json.write(all));
    } else if (found.isEmpty()) {
      terminal.out().println(terminal.say("command.say.no-fault"));
    } else {
      found.forEach(each -> text(each, assumed(each, said, terminal), piece, room, terminal));
    }
    return Exit.DONE;
  }

  /** The faults noted on the piece, or the one that is asked about whether it is noted or not. */
  private static List<FaultText.Said> said(
      TestPiece piece, @Nullable String fault, SharedTables tables) {
    return fault == null
        ? piece.seen().faults().stream().map(each -> new FaultText.Said(each, true, true)).toList()
        : Refused.unless(FaultText.readSaid(fault, tables.faults(), Place.field("fault")));
  }

  /** What was taken for granted of a fault, since it may rule causes in or out. */
  private static List<String> assumed(
      FaultCauses fault, List<FaultText.Said> said, Terminal terminal) {
    List<String> assumed = new ArrayList<>();
    for (FaultText.Said each : said) {
      if (each.seen().equals(fault.seen())) {
        if (!each.placeSaid()) {
          String where = choice(each.seen().place(), terminal);
          assumed.add(terminal.say("command.say.assumed-place", where, each.seen().place().key()));
        }
        if (!each.timeSaid()) {
          String when = choice(each.seen().when(), terminal);
          assumed.add(terminal.say("command.say.assumed-time", when, each.seen().when().key()));
        }
      }
    }
    return assumed.stream().distinct().toList();
  }

  private static String choice(Keyed each, Terminal terminal) {
    return terminal.words().say("common.choice." + each.key());
  }

  private static void text(
      FaultCauses fault, List<String> assumed, TestPiece piece, PieceRoom room, Terminal terminal) {
    terminal.out().println(terminal.say("command.say.causes", fault.fault().name()));
    assumed.forEach(each -> terminal.out().println("  " + each));
    int place = 1;
    for (LikelyCause each : fault.causes()) {
      terminal.out().println("  " + place++ + ". " + each.cause().says());
      for (Message reason : each.reasons()) {
        terminal.out().println("     " + terminal.words().say(reason));
      }
      for (Message passed : each.passedOver()) {
        terminal.out().println("     " + terminal.words().say(passed));
      }
      NextTry next = each.next();
      if (next != null) {
        terminal.out().println("     → " + SayNext.says(terminal.words(), next, room));
        terminal.out().println("       " + SayNext.command(piece.code(), next));
      }
    }
    terminal.out().println(terminal.say("command.say.causes-guide"));
  }

  private static void json(
      ObjectNode into, FaultCauses fault, TestPiece piece, PieceRoom room, Terminal terminal) {
    into.put("fault", fault.fault().key());
    into.put("name", fault.fault().name());
    into.put("source", fault.fault().source());
    ArrayNode causes = into.putArray("causes");
    for (LikelyCause each : fault.causes()) {
      ObjectNode cause = causes.addObject();
      cause.put("cause", each.cause().says());
      cause.put("standing", each.standing().name().toLowerCase(Locale.ROOT).replace('_', '-'));
      ArrayNode reasons = cause.putArray("reasons");
      each.reasons().forEach(reason -> reasons.add(terminal.words().say(reason)));
      ArrayNode passed = cause.putArray("passedOver");
      each.passedOver().forEach(why -> passed.add(terminal.words().say(why)));
      next(cause.putObject("next"), each.next(), piece, room, terminal);
    }
  }

  private static void next(
      ObjectNode into, @Nullable NextTry next, TestPiece piece, PieceRoom room, Terminal terminal) {
    if (next != null) {
      into.put("says", SayNext.says(terminal.words(), next, room));
      into.put("field", SewNext.field(next.remedy().factor()).key());
      into.put("from", next.from());
      into.put("to", SewNext.typed(next));
      into.put("command", SayNext.command(piece.code(), next));
    }
  }
}
