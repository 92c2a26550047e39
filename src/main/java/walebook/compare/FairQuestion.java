package walebook.compare;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a fair comparison is asked.
 *
 * @param factors what to tell pieces apart by
 * @param withinMachine true to allow for the machine too: only pieces of one student on one machine
 *     are then compared with each other
 * @param matters the difference that matters to the tutor, in the outcome's unit (points of
 *     percent, grades, or percent of pieces held); null when none was set
 * @param confidence of all that is said, strictly between 0 and 1
 */
public record FairQuestion(
    Outcome outcome,
    List<Factor> factors,
    boolean withinMachine,
    @Nullable Double matters,
    double confidence) {
  /** What is said is wrong no more than one time in twenty. */
  public static final double USUAL_CONFIDENCE = 0.95;

  public FairQuestion {
    factors = List.copyOf(factors);
    if (matters != null && !(matters > 0 && Double.isFinite(matters))) {
      throw new IllegalArgumentException("matters must be above 0: " + matters);
    }
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException("confidence must lie between 0 and 1: " + confidence);
    }
  }

  public static FairQuestion of(Outcome outcome, List<Factor> factors) {
    return new FairQuestion(outcome, factors, false, null, USUAL_CONFIDENCE);
  }

  public FairQuestion mattering(@Nullable Double difference) {
    return new FairQuestion(outcome, factors, withinMachine, difference, confidence);
  }

  public FairQuestion withinMachines(boolean within) {
    return new FairQuestion(outcome, factors, within, matters, confidence);
  }

  public FairQuestion by(List<Factor> others) {
    return new FairQuestion(outcome, others, withinMachine, matters, confidence);
  }
}
