package walebook.quantity;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A number with its unit and, where one can be stated, its standard uncertainty in the same unit
 * (percentage points for a percentage).
 *
 * @param value finite
 * @param standardUncertainty null when none can be stated; otherwise finite and not negative
 */
public record Measured(double value, Unit unit, @Nullable Double standardUncertainty) {

  public Measured {
    Objects.requireNonNull(unit, "unit");
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value must be finite: " + value);
    }
    if (standardUncertainty != null
        && !(Double.isFinite(standardUncertainty) && standardUncertainty >= 0)) {
      throw new IllegalArgumentException(
          "standardUncertainty must be finite and not negative: " + standardUncertainty);
    }
  }

  public static Measured of(double value, Unit unit) {
    return new Measured(value, unit, null);
  }

  public static Measured of(double value, Unit unit, double standardUncertainty) {
    return new Measured(value, unit, standardUncertainty);
  }

  /** The expanded uncertainty U = 2 u (GUM, coverage factor 2), or null. */
  public @Nullable Double expanded() {
    return standardUncertainty == null ? null : 2 * standardUncertainty;
  }
}
