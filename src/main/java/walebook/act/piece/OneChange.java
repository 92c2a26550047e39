package walebook.act.piece;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.problem.Problem;
import walebook.record.Machine;
import walebook.record.Parent;
import walebook.record.TestPiece;

/**
 * What differs between a piece and the one it tries again. One change is what teaches: none or
 * several are asked about.
 *
 * @param parent the piece before with what was changed; null when there is none
 */
public record OneChange(@Nullable Parent parent, List<Problem> asks) {
  static final OneChange NONE = new OneChange(null, List.of());

  /** The piece before is not in the book any more, as when it was taken back meanwhile. */
  static final OneChange GONE =
      new OneChange(null, List.of(Problem.ask("change.gone", LogTestPiece.whole(), "", "")));

  public OneChange {
    asks = List.copyOf(asks);
  }

  /** What differs between a piece and a form that tries it again. */
  public static OneChange between(TestPiece parent, PieceEntry entry, PieceRoom room) {
    List<PieceField> fields = fields(StartPiece.typed(entry, parent, room), entry, room);
    List<String> changed = fields.stream().map(PieceField::key).toList();
    List<Problem> asks = new ArrayList<>();
    if (changed.isEmpty()) {
      asks.add(Problem.ask("change.none", LogTestPiece.whole(), "", ""));
    } else if (changed.size() > 1) {
      asks.add(Problem.ask("change.several", LogTestPiece.whole(), String.join(", ", changed), ""));
    }
    return new OneChange(
        Parent.of(
            parent.id(),
            changed.stream().filter(key -> !key.equals(PieceField.OTHER_CHANGE.key())).toList(),
            entry.at(PieceField.OTHER_CHANGE)),
        asks);
  }

  /**
   * The settings in which two forms differ, without those that only follow from another: sewn sizes
   * from the dial and the machine, and what a stitch can't be sewn without.
   */
  public static List<PieceField> fields(PieceEntry before, PieceEntry now, PieceRoom room) {
    List<PieceField> changed = new ArrayList<>();
    for (PieceField field : PieceField.values()) {
      if (field.isSetting()
          && differs(before, now, field)
          && !isFollowing(field, before, now, room)) {
        changed.add(field);
      }
    }
    return changed;
  }

  private static boolean isFollowing(
      PieceField field, PieceEntry before, PieceEntry now, PieceRoom room) {
    boolean stitch = differs(before, now, PieceField.STITCH);
    return switch (field) {
      case SEWN_LENGTH, SEWN_WIDTH -> true;
      case DIAL_WIDTH, DIFFERENTIAL_FEED ->
          stitch && (before.at(field).isEmpty() || now.at(field).isEmpty());
      case MACHINE -> {
        Machine machine = SewNext.machine(before.at(PieceField.MACHINE), room);
        yield stitch
            && machine != null
            && !SewNext.stitches(machine, room).contains(now.at(PieceField.STITCH));
      }
      default -> false;
    };
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
