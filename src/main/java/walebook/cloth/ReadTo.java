package walebook.cloth;

import java.util.List;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Show;

/** Whether what a rule or scale reads to can be right. */
public final class ReadTo {
  private ReadTo() {}

  /** A refusal when the value is negative or not finite, else nothing. */
  public static List<Problem> check(String field, double value) {
    return Double.isFinite(value) && value >= 0
        ? List.of()
        : List.of(Problem.refuse("reading.read-to", Place.field(field), Show.upTo(value, 3), "1"));
  }
}
