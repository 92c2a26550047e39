package walebook.garment;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A row of the table of body girths: a size code's span, or one figure of a survey.
 *
 * @param group {@code women} or {@code men}
 * @param size a letter code such as {@code M}, or a percentile such as {@code P95}
 * @param fromMm the span's lower end, which belongs to it; a survey's figure
 * @param belowMm the span's upper end, which belongs to the next size; a survey's figure again
 */
public record BodyGirth(
    String key,
    Girth girth,
    String group,
    String size,
    double fromMm,
    double belowMm,
    String source) {
  public BodyGirth {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(girth, "girth");
    Objects.requireNonNull(group, "group");
    Objects.requireNonNull(size, "size");
    Objects.requireNonNull(source, "source");
    if (!(fromMm > 0 && fromMm <= belowMm)) {
      throw new IllegalArgumentException("a girth must be over 0 and not end before it begins");
    }
  }

  /** True for a size code's span, false for one figure of a survey. */
  public boolean isSpan() {
    return fromMm < belowMm;
  }

  /**
   * The size code of a girth; the lower end is closed, so that 900 mm belongs to the larger size.
   */
  public static Optional<BodyGirth> sizeOf(
      List<BodyGirth> rows, Girth girth, String group, double mm) {
    return rows.stream()
        .filter(row -> row.isSpan() && row.girth == girth && row.group.equals(group))
        .filter(row -> mm >= row.fromMm && mm < row.belowMm)
        .findFirst();
  }

  /** A survey's figure, such as the head of women at P95. */
  public static Optional<BodyGirth> figure(
      List<BodyGirth> rows, Girth girth, String group, String percentile) {
    return rows.stream()
        .filter(row -> !row.isSpan() && row.girth == girth && row.group.equals(group))
        .filter(row -> row.size.equals(percentile))
        .findFirst();
  }
}
