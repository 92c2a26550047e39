package walebook.cloth;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Show;

/** Whether the lengths between two marks can be right: what must be mended, what must be asked. */
public final class ReadingCheck {
  /**
   * Shorter and longer gauges than these are unlikely on a class's test piece (common practice).
   */
  private static final double SHORT_GAUGE_MM = 20;

  private static final double LONG_GAUGE_MM = 1000;

  /** Outside these no tape measures anything; they also keep the arithmetic finite. */
  private static final double SMALLEST_MM = 0.01;

  private static final double LARGEST_MM = 1_000_000;

  /** Few cloths reach five times their length by hand (common practice). */
  private static final double FAR = 5;

  private ReadingCheck() {}

  /**
   * Checks a reading.
   *
   * @param gaugeMm L0, before stretching
   * @param stretchedMm L1, stretched; null when not read
   * @param releasedMm L2, after release and rest; null when not read
   * @return refusals for what cannot be; asks for what is no result as it stands, and for what is
   *     only unlikely
   */
  public static List<Problem> of(
      double gaugeMm, @Nullable Double stretchedMm, @Nullable Double releasedMm) {
    List<Problem> found = new ArrayList<>();
    if (!positive(gaugeMm)) {
      found.add(refuse("gauge", gaugeMm));
      return found;
    }
    found.addAll(gauge(gaugeMm));
    if (stretchedMm != null) {
      found.addAll(stretched(gaugeMm, stretchedMm));
    }
    if (releasedMm != null) {
      found.addAll(released(stretchedMm, releasedMm));
    }
    return found;
  }

  /** True when a problem says that the lengths give no result as they stand. */
  static boolean stops(List<Problem> found) {
    return found.stream()
        .anyMatch(
            problem ->
                problem.refuses()
                    || problem.code().equals("reading.stretched-shorter")
                    || problem.code().equals("reading.released-longer"));
  }

  private static List<Problem> gauge(double gaugeMm) {
    return gaugeMm < SHORT_GAUGE_MM || gaugeMm > LONG_GAUGE_MM
        ? List.of(
            Problem.ask(
                "reading.gauge-unlikely",
                Place.field("gauge"),
                Show.mm(gaugeMm),
                Show.mm(SHORT_GAUGE_MM) + " – " + Show.mm(LONG_GAUGE_MM)))
        : List.of();
  }

  private static List<Problem> stretched(double gaugeMm, double stretchedMm) {
    if (!positive(stretchedMm)) {
      return List.of(refuse("stretched", stretchedMm));
    }
    if (stretchedMm < gaugeMm) {
      return List.of(ask("reading.stretched-shorter", "stretched", stretchedMm, gaugeMm));
    }
    return stretchedMm > FAR * gaugeMm
        ? List.of(ask("reading.stretched-far", "stretched", stretchedMm, FAR * gaugeMm))
        : List.of();
  }

  private static List<Problem> released(@Nullable Double stretchedMm, double releasedMm) {
    if (!positive(releasedMm)) {
      return List.of(refuse("released", releasedMm));
    }
    return stretchedMm != null && releasedMm > stretchedMm
        ? List.of(ask("reading.released-longer", "released", releasedMm, stretchedMm))
        : List.of();
  }

  private static Problem refuse(String field, double found) {
    return Problem.refuse("reading.not-positive", Place.field(field), Show.mm(found), "100 mm");
  }

  private static Problem ask(String code, String field, double foundMm, double limitMm) {
    return Problem.ask(code, Place.field(field), Show.mm(foundMm), Show.mm(limitMm));
  }

  private static boolean positive(double length) {
    return length >= SMALLEST_MM && length <= LARGEST_MM;
  }
}
