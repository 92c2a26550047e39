package walebook.act.piece;

import java.util.ArrayList;
import java.util.List;
import walebook.problem.Problem;
import walebook.record.TestPiece;

/**
 * What differs between a piece and the one it tries again. One change is what teaches: none or
 * several are asked about.
 *
 * @param changed keys of the fields that differ, joined by a blank
 */
record OneChange(String changed, List<Problem> asks) {
  static final OneChange NONE = new OneChange("", List.of());

  OneChange {
    asks = List.copyOf(asks);
  }

  static OneChange between(TestPiece parent, PieceEntry entry, PieceRoom room) {
    PieceEntry before = StartPiece.typed(entry, parent, room);
    List<String> changed = new ArrayList<>();
    for (PieceField field : PieceField.values()) {
      if (field.isSetting() && !isFollowing(field) && differs(before, entry, field)) {
        changed.add(field.key());
      }
    }
    String keys = String.join(" ", changed);
    List<Problem> asks = new ArrayList<>();
    if (changed.isEmpty()) {
      asks.add(Problem.ask("change.none", LogTestPiece.whole(), "", ""));
    } else if (changed.size() > 1) {
      asks.add(Problem.ask("change.several", LogTestPiece.whole(), String.join(", ", changed), ""));
    }
    return new OneChange(keys, asks);
  }

  /** Sewn sizes follow from the dial and the machine: no change of their own. */
  private static boolean isFollowing(PieceField field) {
    return field == PieceField.SEWN_LENGTH || field == PieceField.SEWN_WIDTH;
  }

  private static boolean differs(PieceEntry before, PieceEntry now, PieceField field) {
    String was = before.at(field).replace(',', '.');
    String is = now.at(field).replace(',', '.');
    if (was.equals(is)) {
      return false;
    }
    try {
      return Double.parseDouble(was) != Double.parseDouble(is);
    } catch (NumberFormatException e) {
      return true;
    }
  }
}
