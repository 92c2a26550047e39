package walebook.cloth;

import java.util.List;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** How a cloth's two stretches compare: the ratio course-wise to wale-wise, and its band. */
public final class StretchBalance {
  private StretchBalance() {}

  /**
   * Works out the balance.
   *
   * @param waleWise stretch along the wales, per cent, not negative
   * @param courseWise stretch along the courses, per cent, not negative
   * @param bands the reference table
   * @return the working; without a value when the cloth does not stretch wale-wise
   */
  public static Answer<Working> of(double waleWise, double courseWise, List<BalanceBand> bands) {
    if (!notNegative(waleWise) || !notNegative(courseWise)) {
      String field = notNegative(waleWise) ? "course" : "wale";
      double found = notNegative(waleWise) ? courseWise : waleWise;
      return Answer.bad(
          Problem.refuse("percent.negative", Place.field(field), Show.percent(found), "50 %"));
    }
    double larger = Math.max(waleWise, courseWise);
    double share = larger == 0 ? 100 : 100 * Math.min(waleWise, courseWise) / larger;
    BalanceBand band = BalanceBand.holding(bands, larger, share);
    WorkingBuilder board = Working.named("balance", Message.of("cloth.balance.title"));
    if (waleWise > 0) {
      double ratio = courseWise / waleWise;
      board
          .result(Measured.of(ratio, Unit.RATIO))
          .step(
              Message.of("cloth.balance.step-ratio"),
              "course-wise S ÷ wale-wise S",
              "%s ÷ %s = %s".formatted(n(courseWise), n(waleWise), n(ratio)));
    }
    if (larger > 0) {
      board.step(
          Message.of("cloth.balance.step-share"),
          "100 × smaller ÷ larger",
          "100 × %s ÷ %s = %s"
              .formatted(n(Math.min(waleWise, courseWise)), n(larger), Show.percent(share)));
    }
    return Answer.good(
        board
            .assume(Message.of("cloth.assume.same-pull"))
            .source(Source.Kind.DEFINITION, "ratio of the two stretches")
            .source(Source.Kind.COMMON_PRACTICE, band.source())
            .says(
                Message.of(
                    further(waleWise, courseWise),
                    Show.percent(waleWise),
                    Show.percent(courseWise),
                    band.name())));
  }

  private static String further(double waleWise, double courseWise) {
    if (waleWise == courseWise) {
      return "cloth.balance.says-even";
    }
    return courseWise > waleWise ? "cloth.balance.says-course" : "cloth.balance.says-wale";
  }

  private static boolean notNegative(double percent) {
    return Double.isFinite(percent) && percent >= 0;
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }
}
