package walebook.cloth;

import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Verdict;
import walebook.working.Working;

/** Whether a measured value reaches a need, with a guard band for what measuring cannot tell. */
public final class Decision {
  private Decision() {}

  /**
   * Met when value − U ≥ need, not met when value + U &lt; need, else too close to call.
   *
   * @param expanded U, not negative: 2 u or half the t-interval
   */
  public static Verdict verdict(double value, double expanded, double need) {
    if (value - expanded >= need) {
      return Verdict.MET;
    }
    return value + expanded < need ? Verdict.NOT_MET : Verdict.TOO_CLOSE;
  }

  /** The rule that {@link #verdict} goes by, in letters. */
  public static String rule() {
    return "met: S − U ≥ need; not met: S + U < need; else too close";
  }

  /** The rule in numbers: {@code 52.0 − 1.0 = 51.0 %, 52.0 + 1.0 = 53.0 %, need 50.0 %}. */
  public static String inNumbers(double value, double expanded, double need) {
    return "%s − %s = %s, %s + %s = %s, need %s"
        .formatted(
            f(value),
            f(expanded),
            Show.percent(value - expanded),
            f(value),
            f(expanded),
            Show.percent(value + expanded),
            Show.percent(need));
  }

  /**
   * Decides on a percentage.
   *
   * @param valuePercent measured
   * @param expandedPoints U in percentage points, not negative
   * @param needPercent what is asked for
   */
  public static Answer<Working> of(double valuePercent, double expandedPoints, double needPercent) {
    if (!(expandedPoints >= 0) || Double.isInfinite(expandedPoints)) {
      return Answer.bad(
          Problem.refuse(
              "decision.uncertainty", Place.field("uncertainty"), f(expandedPoints), "1.5"));
    }
    Verdict verdict = verdict(valuePercent, expandedPoints, needPercent);
    return Answer.good(
        Working.named("enough-stretch", Message.of("cloth.decision.title"))
            .step(
                Message.of("cloth.decision.step"),
                rule(),
                inNumbers(valuePercent, expandedPoints, needPercent))
            .result(Measured.of(valuePercent, Unit.PERCENT, expandedPoints / 2))
            .verdict(verdict)
            .assume(Message.of("cloth.assume.guard-band"))
            .source(Source.Kind.STANDARD, "JCGM 106, 8.3: guarded acceptance and rejection")
            .says(
                Message.of(
                    sentence(verdict),
                    Show.percent(valuePercent),
                    f(expandedPoints),
                    Show.percent(needPercent))));
  }

  private static String sentence(Verdict verdict) {
    return switch (verdict) {
      case MET -> "cloth.decision.says-met";
      case NOT_MET -> "cloth.decision.says-not-met";
      case TOO_CLOSE, NOT_KNOWN -> "cloth.decision.says-too-close";
    };
  }

  private static String f(double value) {
    return Show.fixed(value, 1);
  }
}
