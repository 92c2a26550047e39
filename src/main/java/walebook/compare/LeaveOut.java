package walebook.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;

/**
 * Lines without the values that the tutor set aside; a piece's other values stay.
 *
 * @param lines as many as went in
 * @param setAside how many values were left out
 */
public record LeaveOut(List<ResultLine> lines, int setAside) {
  public LeaveOut {
    lines = List.copyOf(lines);
  }

  /** Leaves values out; what is marked without being there counts for nothing. */
  public static LeaveOut of(List<ResultLine> pieces, Map<MarkedValue, Set<UUID>> setAside) {
    List<ResultLine> lines = new ArrayList<>();
    int out = 0;
    for (ResultLine piece : pieces) {
      boolean seam = is(setAside, MarkedValue.SEAM_STRETCH, piece) && piece.end() != null;
      boolean edge = is(setAside, MarkedValue.EDGE_CHANGE, piece) && piece.edgeChange() != null;
      boolean grade = is(setAside, MarkedValue.GRADE, piece) && piece.grade() != null;
      out += (seam ? 1 : 0) + (edge ? 1 : 0) + (grade ? 1 : 0);
      lines.add(seam || edge || grade ? without(piece, seam, edge, grade) : piece);
    }
    return new LeaveOut(lines, out);
  }

  private static boolean is(
      Map<MarkedValue, Set<UUID>> setAside, MarkedValue value, ResultLine piece) {
    return setAside.getOrDefault(value, Set.of()).contains(piece.pieceId());
  }

  private static ResultLine without(ResultLine piece, boolean seam, boolean edge, boolean grade) {
    return new ResultLine(
        piece.pieceId(),
        piece.code(),
        piece.classId(),
        piece.studentId(),
        piece.sewnOn(),
        piece.setTo(),
        kept(seam, piece.end()),
        kept(seam, piece.seamStretch()),
        kept(edge, piece.edgeChange()),
        kept(grade, piece.grade()),
        piece.sewingMinutes(),
        piece.worstFault());
  }

  private static <T> @Nullable T kept(boolean out, @Nullable T value) {
    return out ? null : value;
  }
}
