package walebook.command;

import tools.jackson.databind.node.ObjectNode;
import walebook.act.piece.FindByCode;
import walebook.book.Book;
import walebook.compare.Names;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.TestPiece;

/** Says what a label belongs to: a piece that was sewn, or one that is planned. */
final class FindPiece {
  private FindPiece() {}

  static Exit run(Typed typed, Terminal terminal, Book book) {
    FindByCode.Found found = Refused.unless(new FindByCode(book).find(typed.operand(0)));
    Names names = Names.of(book, false);
    if (found instanceof FindByCode.Found.Sewn sewn) {
      sewn(typed, terminal, sewn.piece(), names);
    } else {
      planned(typed, terminal, ((FindByCode.Found.Planned) found).piece(), names);
    }
    return Exit.DONE;
  }

  private static void sewn(Typed typed, Terminal terminal, TestPiece piece, Names names) {
    if (typed.has("json")) {
      ObjectNode json = PieceJson.of(piece, names);
      json.put("logged", true);
      terminal.out().println(Json.write(json));
      return;
    }
    terminal
        .out()
        .println(
            terminal.say(
                "command.piece.found-sewn",
                PieceCode.spoken(piece.code()),
                names.of(piece.whose().studentId()),
                piece.whose().sewnOn()));
  }

  private static void planned(Typed typed, Terminal terminal, PlannedPiece piece, Names names) {
    if (typed.has("json")) {
      ObjectNode json = Json.object();
      json.put("code", piece.code());
      json.put("logged", false);
      json.put("student", names.of(piece.studentId()));
      json.put("cell", piece.cell());
      json.put("place", piece.place());
      terminal.out().println(Json.write(json));
      return;
    }
    terminal
        .out()
        .println(
            terminal.say(
                "command.piece.found-planned",
                PieceCode.spoken(piece.code()),
                names.of(piece.studentId()),
                piece.place()));
  }
}
