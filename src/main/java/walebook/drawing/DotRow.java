package walebook.drawing;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One setting in a {@link DotPlot} with its test pieces.
 *
 * @param label the setting
 * @param dots one for each test piece
 * @param median where half lie below; null when not known
 * @param low lower end of the interval; null when there is none
 * @param high upper end of the interval; null when there is none
 * @param series 0 to 4: the shape of its marks
 */
public record DotRow(
    String label,
    List<Dot> dots,
    @Nullable Double median,
    @Nullable Double low,
    @Nullable Double high,
    int series) {

  /**
   * One test piece.
   *
   * @param value in the axis's unit
   * @param held true when it held to the value: the true one lies at or above it
   * @param apart true when it is shown and counts in none of the numbers: open, without an arrow
   */
  public record Dot(double value, boolean held, boolean apart) {
    public Dot(double value, boolean held) {
      this(value, held, false);
    }

    public Dot {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("value of a dot must be finite: " + value);
      }
    }
  }

  public DotRow {
    Objects.requireNonNull(label, "label");
    dots = List.copyOf(dots);
    if (series < 0 || series > 4) {
      throw new IllegalArgumentException("series must be 0 to 4: " + series);
    }
    if ((low == null) != (high == null) || (low != null && high != null && low > high)) {
      throw new IllegalArgumentException("low and high go together, low first");
    }
  }

  /** A row of the first series. */
  public static DotRow of(String label, List<Dot> dots) {
    return new DotRow(label, dots, null, null, null, 0);
  }
}
