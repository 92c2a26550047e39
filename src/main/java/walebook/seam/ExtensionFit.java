package walebook.seam;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.TDistribution;
import org.hipparchus.stat.regression.SimpleRegression;
import org.jspecify.annotations.Nullable;
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

/**
 * A class's own rule on one cloth: measured extension against the stitch's geometry, E ≈ a + b
 * E_geo by least squares over the pieces that gave. Pieces that held are censored: left out of the
 * fit and counted beside it, so that the line leans low where many held.
 */
public final class ExtensionFit {
  /**
   * Two numbers are fitted; six pieces leave four degrees of freedom, where the 95 % factor of
   * Student's t has come down to 2.8 (from 12.7 at one degree and 4.3 at two).
   */
  public static final int FEWEST = 6;

  /** On two settings any line fits; a third can contradict it. */
  public static final int FEWEST_SETTINGS = 3;

  private final List<Point> gave;
  private final int held;
  private final SimpleRegression regression;
  private final double meanGeometry;

  /**
   * A piece that gave.
   *
   * @param geometryPercent E_geo of its stitch
   * @param measuredPercent the seam's stretch at which it gave
   */
  public record Point(double geometryPercent, double measuredPercent) {
    public Point {
      if (!Double.isFinite(geometryPercent) || !Double.isFinite(measuredPercent)) {
        throw new IllegalArgumentException(
            "a point is finite: " + geometryPercent + ", " + measuredPercent);
      }
    }
  }

  /**
   * The line at one geometry with its confidence band, per cent.
   *
   * @param low lower edge of the band of the mean
   * @param middle on the line
   * @param high upper edge
   */
  public record Band(double low, double middle, double high) {}

  /**
   * Fits the pieces.
   *
   * @param gave pieces that gave, any number
   * @param held how many held, not negative
   */
  public ExtensionFit(List<Point> gave, int held) {
    if (held < 0) {
      throw new IllegalArgumentException("held must not be negative: " + held);
    }
    this.gave = List.copyOf(gave);
    this.held = held;
    this.regression = new SimpleRegression(true);
    this.gave.forEach(point -> regression.addData(point.geometryPercent, point.measuredPercent));
    this.meanGeometry = this.gave.stream().mapToDouble(Point::geometryPercent).average().orElse(0);
  }

  /** Whether there are pieces and settings enough to show a line. */
  public boolean isEnough() {
    return gave.size() >= FEWEST && settings() >= FEWEST_SETTINGS;
  }

  /** a, per cent; only to be used when there are enough. */
  public double intercept() {
    return regression.getIntercept();
  }

  /** b, pure number; only to be used when there are enough. */
  public double slope() {
    return regression.getSlope();
  }

  /** Residual standard deviation in points, n − 2 degrees of freedom. */
  public double residual() {
    return Math.sqrt(Math.max(0, regression.getMeanSquareError()));
  }

  /** Standard error of b. */
  public double slopeError() {
    return residual() / Math.sqrt(regression.getXSumSquares());
  }

  /** Standard error of a. */
  public double interceptError() {
    return spreadAt(0);
  }

  /**
   * The line and the confidence band of its mean at one geometry.
   *
   * @param confidencePercent between 50 and 99.9
   * @throws IllegalStateException before there are enough pieces
   */
  public Band at(double geometryPercent, double confidencePercent) {
    if (!isEnough()) {
      throw new IllegalStateException("too few pieces: " + gave.size() + ", " + settings());
    }
    double middle = intercept() + slope() * geometryPercent;
    double t =
        TDistribution.of(gave.size() - 2)
            .inverseSurvivalProbability((1 - confidencePercent / 100) / 2);
    double half = t * spreadAt(geometryPercent);
    return new Band(middle - half, middle, middle + half);
  }

  /**
   * Works out the line, and what it says at one geometry where that is asked.
   *
   * @param atPercent E_geo asked about; null for the line alone
   * @return the working; without a value before there are enough pieces. Its value is the line at
   *     that geometry, or else b
   */
  public Working working(@Nullable Double atPercent) {
    WorkingBuilder board =
        Working.named("seam-fit", Message.of("seam.fit.title"))
            .assume(Message.of("seam.assume.fit-held", Integer.toString(held)))
            .assume(Message.of("seam.assume.fit-one-cloth"))
            .source(Source.Kind.MEASURED_HERE, "the class's own test pieces on this cloth")
            .source(Source.Kind.DEFINITION, "ordinary least squares");
    if (!isEnough()) {
      return board.says(
          Message.of(
              "seam.fit.says-too-few",
              Integer.toString(gave.size()),
              Integer.toString((int) settings()),
              Integer.toString(FEWEST),
              Integer.toString(FEWEST_SETTINGS),
              Integer.toString(held)));
    }
    board
        .step(
            Message.of("seam.fit.step-slope"),
            "b = Σ (x − x̄)(y − ȳ) ÷ Σ (x − x̄)²",
            "b = %s, standard error %s".formatted(f(slope(), 3), f(slopeError(), 3)))
        .step(
            Message.of("seam.fit.step-intercept"),
            "a = ȳ − b × x̄",
            "a = %s, standard error %s".formatted(f(intercept(), 2), f(interceptError(), 2)))
        .step(
            Message.of("seam.fit.step-residual"),
            "s = √(Σ (y − a − b x)² ÷ (n − 2))",
            "s = %s points, n = %s".formatted(f(residual(), 2), gave.size()));
    return atPercent == null ? line(board) : prediction(board, atPercent);
  }

  private Working line(WorkingBuilder board) {
    return board
        .result(Measured.of(slope(), Unit.RATIO, slopeError()))
        .says(
            Message.of(
                "seam.fit.says",
                f(intercept(), 1),
                f(slope(), 2),
                Integer.toString(gave.size()),
                Integer.toString(held)));
  }

  private Working prediction(WorkingBuilder board, double at) {
    Band band = at(at, 95);
    return board
        .step(
            Message.of("seam.fit.step-at"),
            "E = a + b × E_geo, ± t × s × √(1 ÷ n + (x − x̄)² ÷ Σ (x − x̄)²)",
            "%s + %s × %s = %s, band %s to %s"
                .formatted(
                    f(intercept(), 2),
                    f(slope(), 3),
                    f(at, 1),
                    Show.percent(band.middle),
                    f(band.low, 1),
                    Show.percent(band.high)))
        .result(Measured.of(band.middle, Unit.PERCENT, spreadAt(at)))
        .says(
            Message.of(
                "seam.fit.says-at",
                Show.percent(at),
                Show.percent(band.middle),
                f(band.low, 1),
                Show.percent(band.high),
                Integer.toString(held)));
  }

  /** Standard error of the line's mean at one geometry. */
  private double spreadAt(double geometryPercent) {
    double away = geometryPercent - meanGeometry;
    return residual() * Math.sqrt(1.0 / gave.size() + away * away / regression.getXSumSquares());
  }

  private long settings() {
    return gave.stream().mapToDouble(Point::geometryPercent).distinct().count();
  }

  /**
   * Fits lists of the same length.
   *
   * @param geometry E_geo of each piece that gave, per cent
   * @param measured its stretch, per cent
   */
  static Answer<ExtensionFit> of(List<Double> geometry, List<Double> measured, int held) {
    if (geometry.size() != measured.size()) {
      return Answer.bad(
          Problem.refuse(
              "fit.uneven",
              Place.field("measured"),
              Integer.toString(measured.size()),
              Integer.toString(geometry.size())));
    }
    Needs needs = new Needs().notNegative("held", held, "3");
    if (needs.failed()) {
      return Answer.bad(needs.problems());
    }
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < geometry.size(); i++) {
      points.add(new Point(geometry.get(i), measured.get(i)));
    }
    return Answer.good(new ExtensionFit(points, held));
  }

  private static String f(double value, int decimals) {
    return Show.fixed(value, decimals);
  }
}
