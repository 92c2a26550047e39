package walebook.compare.assessed;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import walebook.record.Criterion;
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
  /** All that is looked at passes. */
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

  /** How a piece stands by all marks of the tutor's check of it; null when there is none. */
  public static Standing of(@Nullable PieceCheck tutor) {
    return of(tutor, Criterion.ALL);
  }

  /**
   * The same by some of the marks. A failed piece well explained passes where record and reasoning
   * are among them.
   */
  public static Standing of(@Nullable PieceCheck tutor, Set<Marking> looksAt) {
    if (tutor == null) {
      return UNCHECKED;
    }
    if (tutor.passes(looksAt)) {
      return MET;
    }
    if (looksAt.contains(Marking.REASONING) && tutor.reasoningPasses()) {
      return REASONED;
    }
    return tutor.isBelow(looksAt) ? BELOW : UNCHECKED;
  }
}
