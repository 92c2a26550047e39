package walebook.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Show;
import walebook.working.Working;

/** Collects what is wrong with the numbers given to a calculation on garments. */
final class GarmentNeeds {
  private final List<Problem> found = new ArrayList<>();

  /** A girth must be over nought and not look like another unit. */
  GarmentNeeds girth(String field, double mm) {
    found.addAll(GirthCheck.of(field, mm));
    return this;
  }

  /** The value must be finite and over nought. */
  GarmentNeeds positive(String field, double value, String wanted) {
    return check(Double.isFinite(value) && value > 0, "number.not-positive", field, value, wanted);
  }

  /** The value must be finite and not negative. */
  GarmentNeeds notNegative(String field, double value, String wanted) {
    return check(Double.isFinite(value) && value >= 0, "number.negative", field, value, wanted);
  }

  /** A number must be within its bounds, both allowed. */
  GarmentNeeds between(String field, double value, double from, double to) {
    String wanted = Show.upTo(from, 2) + " – " + Show.upTo(to, 2);
    return check(value >= from && value <= to, "number.out-of-range", field, value, wanted);
  }

  /** As between; a number that looks like per cent is asked about as such. */
  GarmentNeeds share(String field, double value, double from, double to) {
    if (value >= 100 * from && value <= 100 * to) {
      String meant = "%s (%s)".formatted(Show.upTo(value / 100, 4), Show.percent(value));
      found.add(Problem.refuse("ratio.percent", Place.field(field), Show.upTo(value, 3), meant));
      return this;
    }
    return between(field, value, from, to);
  }

  /** Something else that is wrong or to be asked about. */
  GarmentNeeds also(boolean wrong, Problem problem) {
    if (wrong) {
      found.add(problem);
    }
    return this;
  }

  private GarmentNeeds check(boolean good, String code, String field, double value, String wanted) {
    if (!good) {
      found.add(Problem.refuse(code, Place.field(field), Show.upTo(value, 3), wanted));
    }
    return this;
  }

  boolean failed() {
    return found.stream().anyMatch(Problem::refuses);
  }

  List<Problem> problems() {
    return List.copyOf(found);
  }

  /** Works on when nothing refuses; what is only asked about comes beside the answer. */
  Answer<Working> then(Supplier<Working> work) {
    if (failed()) {
      return Answer.bad(found);
    }
    return new Answer.Good<>(work.get(), found);
  }
}
