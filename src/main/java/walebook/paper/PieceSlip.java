package walebook.paper;

import java.util.List;
import walebook.record.Grain;
import walebook.record.PieceCode;

/**
 * What stands on the label of a piece and at the head of its card.
 *
 * @param code the piece's code, kept from the plan to the log
 * @param who the student as they are to be called
 * @param what settings and cloth in words, one or a few lines, the most important first
 * @param brief the same, shorter, for a low label
 * @param machine which machine; a blank to be filled in where it is not yet known
 * @param grain which way the seam runs
 * @param grainSays the same in a word
 * @param control the piece that everybody sews
 */
public record PieceSlip(
    String code,
    String who,
    List<String> what,
    List<String> brief,
    String machine,
    Grain grain,
    String grainSays,
    boolean control) {
  public PieceSlip {
    what = List.copyOf(what);
    brief = List.copyOf(brief);
    if (!PieceCode.isCode(code)) {
      throw new IllegalArgumentException("code is not a piece's code: " + code);
    }
  }

  String spoken() {
    return PieceCode.spoken(code);
  }
}
