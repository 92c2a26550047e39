package walebook.compare.assessed;

import org.jspecify.annotations.Nullable;
import walebook.record.Keyed;
import walebook.record.Marking;
import walebook.record.PieceCheck;

/** How far a piece has come by the tutor's check, or a student with a criterion; lowest first. */
public enum Standing implements Keyed {
  /** No piece speaks for the criterion. */
  NOTHING("nothing", "compare.standing.nothing"),
  /** Checked, and something is below the pass. */
  BELOW("below", "compare.standing.below"),
  /** Not looked over by the tutor, or not to the end. */
  UNCHECKED("unchecked", "compare.standing.unchecked"),
  /** Record and reasoning pass, whatever became of the piece. */
  REASONED("reasoned", "compare.standing.reasoned"),
  /** Everything passes. */
  MET("met", "compare.standing.met");

  private final String key;
  private final String says;

  Standing(String key, String says) {
    this.key = key;
    this.says = says;
  }

  @Override
  public String key() {
    return key;
  }

  /** Key of the words for it. */
  public String says() {
    return says;
  }

  /** True when nothing is missing any more. */
  public boolean isCovered() {
    return this == MET || this == REASONED;
  }

  /** How a piece stands by the tutor's check of it; null when there is none. */
  public static Standing of(@Nullable PieceCheck tutor) {
    if (tutor == null) {
      return UNCHECKED;
    }
    if (tutor.passes()) {
      return MET;
    }
    if (tutor.reasoningPasses()) {
      return REASONED;
    }
    boolean below = tutor.marks().values().stream().anyMatch(mark -> mark < Marking.PASS);
    return below ? BELOW : UNCHECKED;
  }
}
