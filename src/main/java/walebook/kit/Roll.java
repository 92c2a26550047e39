package walebook.kit;

import java.util.ArrayList;
import java.util.List;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Show;

/**
 * A cloth as it is bought by the length.
 *
 * @param usableMm width between the selvedges as it is bought, mm
 * @param marginMm to be kept between two pieces, mm, not negative
 * @param alongChangePercent what washing does to its length: minus is shrinkage
 * @param acrossChangePercent what washing does to its width
 * @param stepMm lengths are sold in steps of this, mm
 */
public record Roll(
    double usableMm,
    double marginMm,
    double alongChangePercent,
    double acrossChangePercent,
    double stepMm) {

  /** A cloth that is washed already or does not change, sold by the 10 cm. */
  public static Roll of(double usableMm) {
    return new Roll(usableMm, 0, 0, 0, 100);
  }

  /** What is left of the width after the wash, mm. */
  public double washedMm() {
    return usableMm * (1 + acrossChangePercent / 100);
  }

  /** True when washing is known to change it. */
  public boolean changes() {
    return alongChangePercent != 0 || acrossChangePercent != 0;
  }

  List<Problem> problems() {
    List<Problem> found = new ArrayList<>();
    if (!(Double.isFinite(usableMm) && usableMm > 0)) {
      found.add(refuse("number.not-positive", "cloth-width", Show.mm(usableMm), "1500 mm"));
    }
    if (!(Double.isFinite(marginMm) && marginMm >= 0)) {
      found.add(refuse("number.negative", "margin", Show.mm(marginMm), "5 mm"));
    }
    for (double each : new double[] {alongChangePercent, acrossChangePercent}) {
      if (!(each > -100 && each < 100)) {
        found.add(refuse("wash.change", "change", Show.percent(each), "−5 %"));
      }
    }
    if (!(Double.isFinite(stepMm) && stepMm > 0)) {
      found.add(refuse("number.not-positive", "step", Show.mm(stepMm), "100 mm"));
    }
    return found;
  }

  private static Problem refuse(String code, String field, String found, String wanted) {
    return Problem.refuse(code, Place.field(field), found, wanted);
  }
}
