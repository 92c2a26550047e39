package walebook.act.piece;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import walebook.record.MachineKind;
import walebook.record.Method;
import walebook.record.Pull;
import walebook.record.SeamEnd;
import walebook.seam.StitchType;

/** Which fields a piece's method, machine and stitch make sense of: only those are asked for. */
public final class Asked {
  private static final Set<PieceField> ALWAYS =
      EnumSet.of(
          PieceField.CLOTH,
          PieceField.GRAIN,
          PieceField.LAYERS,
          PieceField.METHOD,
          PieceField.MACHINE,
          PieceField.STITCH,
          PieceField.DIAL_LENGTH,
          PieceField.NEEDLE_POINT,
          PieceField.NEEDLE_NM,
          PieceField.THREAD,
          PieceField.PRESSURE,
          PieceField.TENSION,
          PieceField.STABILISER,
          PieceField.SEWN_LENGTH,
          PieceField.GAUGE,
          PieceField.EDGE_BEFORE,
          PieceField.EDGE_SEWN,
          PieceField.EDGE_PRESSED,
          PieceField.END,
          PieceField.END_LENGTH,
          PieceField.RELEASED,
          PieceField.NEED,
          PieceField.REST,
          PieceField.FOLD,
          PieceField.PULL,
          PieceField.HOLD,
          PieceField.MEASURED_BY,
          PieceField.SEWN_ON,
          PieceField.MEASURED_ON,
          PieceField.GRADE,
          PieceField.FAULTS,
          PieceField.OUTCOME,
          PieceField.REMARK,
          PieceField.MINUTES);

  private Asked() {}

  /**
   * The fields to show.
   *
   * @param stitch null while none is chosen
   * @param end null while the pull is not noted
   * @param readings how many pulls are asked for
   * @param again whether it tries another piece again
   */
  public static Set<PieceField> of(
      Method method,
      MachineKind kind,
      @Nullable StitchType stitch,
      @Nullable SeamEnd end,
      @Nullable Pull pull,
      int readings,
      boolean again) {
    Set<PieceField> asked = EnumSet.copyOf(ALWAYS);
    if (stitch == null || stitch.hasWidth()) {
      asked.add(PieceField.DIAL_WIDTH);
      asked.add(PieceField.SEWN_WIDTH);
    }
    if (kind != MachineKind.SEWING) {
      asked.add(PieceField.DIFFERENTIAL_FEED);
    }
    if (method == Method.HEM) {
      asked.add(PieceField.HEM_METHOD);
    }
    if (end == SeamEnd.GAVE) {
      asked.add(PieceField.BROKE);
    }
    if (pull == Pull.LOAD) {
      asked.add(PieceField.LOAD);
    }
    if (again) {
      asked.add(PieceField.OTHER_CHANGE);
    }
    if (readings >= 2) {
      asked.add(PieceField.END_2);
      asked.add(PieceField.END_LENGTH_2);
    }
    if (readings >= 3) {
      asked.add(PieceField.END_3);
      asked.add(PieceField.END_LENGTH_3);
    }
    return asked;
  }
}
