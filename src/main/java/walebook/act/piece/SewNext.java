package walebook.act.piece;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.record.Machine;
import walebook.seam.Factor;
import walebook.seam.NextTry;
import walebook.seam.StitchType;

/** Puts the one change of a next attempt into the form that sews a piece again. */
public final class SewNext {
  private SewNext() {}

  /** The field in which a factor is set; what no setting holds is changed by hand. */
  public static PieceField field(Factor factor) {
    return switch (factor) {
      case STITCH -> PieceField.STITCH;
      case WIDTH -> PieceField.DIAL_WIDTH;
      case LENGTH -> PieceField.DIAL_LENGTH;
      case NEEDLE_POINT -> PieceField.NEEDLE_POINT;
      case NEEDLE_SIZE -> PieceField.NEEDLE_NM;
      case THREAD -> PieceField.THREAD;
      case TENSION_TOP -> PieceField.TENSION;
      case PRESSURE -> PieceField.PRESSURE;
      case DIFFERENTIAL_FEED -> PieceField.DIFFERENTIAL_FEED;
      case STABILISER -> PieceField.STABILISER;
      case CLOTH -> PieceField.CLOTH;
      default -> PieceField.OTHER_CHANGE;
    };
  }

  /** What is typed in that field: the new setting, or the remedy's words for a change by hand. */
  public static String typed(NextTry next) {
    return field(next.remedy().factor()) == PieceField.OTHER_CHANGE
        ? next.remedy().says()
        : next.to();
  }

  /**
   * The same entry with the change in it. A stitch brings with it what it can't be sewn without: a
   * machine that has it, a width where the one before had none.
   *
   * @return the entry as it was when the person who sews is to choose the new setting
   */
  public static PieceEntry change(PieceEntry again, NextTry next, PieceRoom room) {
    String text = typed(next);
    if (text.isEmpty()) {
      return again;
    }
    PieceEntry changed = again.with(field(next.remedy().factor()), text);
    if (next.remedy().factor() != Factor.STITCH) {
      return changed;
    }
    Machine machine = machine(again.at(PieceField.MACHINE), room);
    if (machine != null && !stitches(machine, room).contains(text)) {
      for (Machine each : room.machines()) {
        if (stitches(each, room).contains(text)) {
          changed = changed.with(PieceField.MACHINE, String.valueOf(each.number()));
          break;
        }
      }
    }
    return next.withWidth().isEmpty()
        ? changed
        : changed.with(PieceField.DIAL_WIDTH, next.withWidth());
  }

  /** The machine of the room with this number, or null. */
  static @Nullable Machine machine(String number, PieceRoom room) {
    return room.machines().stream()
        .filter(each -> String.valueOf(each.number()).equals(number))
        .findFirst()
        .orElse(null);
  }

  /** What a machine sews: what its card says, else what its kind usually can. */
  static List<String> stitches(Machine machine, PieceRoom room) {
    return machine.stitches().isEmpty()
        ? room.stitches().stream()
            .filter(each -> each.machines().contains(machine.kind().key()))
            .map(StitchType::key)
            .toList()
        : machine.stitches();
  }
}
