package walebook.seam;

import java.util.ArrayList;
import java.util.List;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Show;

/** Collects what is wrong with the numbers given to a calculation on seams. */
final class Needs {
  private final List<Problem> found = new ArrayList<>();

  /** The value must be finite and over nought. */
  Needs positive(String field, double value, String wanted) {
    return check(Double.isFinite(value) && value > 0, "number.not-positive", field, value, wanted);
  }

  /** The value must be finite and not negative. */
  Needs notNegative(String field, double value, String wanted) {
    return check(Double.isFinite(value) && value >= 0, "number.negative", field, value, wanted);
  }

  /** A count must be within its bounds, both allowed. */
  Needs between(String field, double value, double from, double to) {
    String wanted = Show.upTo(from, 2) + " – " + Show.upTo(to, 2);
    return check(value >= from && value <= to, "number.out-of-range", field, value, wanted);
  }

  private Needs check(boolean good, String code, String field, double value, String wanted) {
    if (!good) {
      found.add(Problem.refuse(code, Place.field(field), Show.upTo(value, 3), wanted));
    }
    return this;
  }

  Needs also(List<Problem> problems) {
    found.addAll(problems);
    return this;
  }

  boolean failed() {
    return !found.isEmpty();
  }

  List<Problem> problems() {
    return List.copyOf(found);
  }
}
