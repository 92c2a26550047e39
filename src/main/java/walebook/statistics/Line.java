package walebook.statistics;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A least-squares line with its confidence band.
 *
 * <p>{@code b = Sxy/Sxx}, {@code a = ȳ − b x̄}, {@code s² = Σ(y − a − bx)²/(n−2)}; the fitted mean
 * at x has {@code u² = s² (1/n + (x−x̄)²/Sxx)} (N. R. Draper and H. Smith, Applied Regression
 * Analysis, 3rd ed. 1998, chapters 1 and 3). The x are taken as known without error.
 *
 * @param n number of points, at least 3
 * @param xMean x̄
 * @param yMean ȳ
 * @param xLeast smallest x of the fit
 * @param xGreatest greatest x: outside these two, the line is a guess
 * @param sxx {@code Σ(x − x̄)²}
 * @param intercept a
 * @param slope b
 * @param interceptError standard error of a
 * @param slopeError standard error of b
 * @param residualSd s, 0 when all points lie on the line
 * @param rSquared share of the scatter in y that the line takes up; null when all y are the same
 */
public record Line(
    int n,
    double xMean,
    double yMean,
    double xLeast,
    double xGreatest,
    double sxx,
    double intercept,
    double slope,
    double interceptError,
    double slopeError,
    double residualSd,
    @Nullable Double rSquared) {

  /**
   * A point to fit.
   *
   * @param x finite, known
   * @param y finite, measured
   */
  public record Point(double x, double y) {
    public Point {
      Require.finite("x", x);
      Require.finite("y", y);
    }
  }

  /**
   * The line through the points.
   *
   * @return null with fewer than three points or when all x are the same: no line can be told then
   */
  public static @Nullable Line fit(List<Point> points) {
    int n = points.size();
    if (n < 3) {
      return null;
    }
    Summary x = Summary.of(points.stream().map(Point::x).toList());
    Summary y = Summary.of(points.stream().map(Point::y).toList());
    if (x.least() == x.greatest()) {
      return null;
    }
    double sxx = 0;
    double sxy = 0;
    for (Point point : points) {
      sxx += (point.x - x.mean()) * (point.x - x.mean());
      sxy += (point.x - x.mean()) * (point.y - y.mean());
    }
    double slope = sxy / sxx;
    double left = 0;
    double total = 0;
    for (Point point : points) {
      double away = point.y - y.mean();
      double residual = away - slope * (point.x - x.mean());
      left += residual * residual;
      total += away * away;
    }
    double size = Rounding.size(y.least(), y.greatest());
    double sd = Rounding.clean(Math.sqrt(left / (n - 2)), size);
    return new Line(
        n,
        x.mean(),
        y.mean(),
        x.least(),
        x.greatest(),
        sxx,
        y.mean() - slope * x.mean(),
        slope,
        sd * Math.sqrt(1.0 / n + x.mean() * x.mean() / sxx),
        sd / Math.sqrt(sxx),
        sd,
        total > 0 ? Double.valueOf(1 - left / total) : null);
  }

  /** The fitted y at x. */
  public double at(double x) {
    return yMean + slope * (Require.finite("x", x) - xMean);
  }

  /** t-interval of the mean y at one x chosen beforehand; null when all points lie on the line. */
  public @Nullable Interval meanAt(double x, double confidence) {
    return around(x, Quantiles.student(confidence, n - 2), leverage(x), confidence);
  }

  /** Interval in which one new y at x is to be expected; null when all points lie on the line. */
  public @Nullable Interval nextAt(double x, double confidence) {
    return around(x, Quantiles.student(confidence, n - 2), 1 + leverage(x), confidence);
  }

  /**
   * The band that holds the whole true line at once, {@code ± √(2F(2, n−2))} standard errors
   * (Working and Hotelling, J. Am. Stat. Assoc. 24 (1929) supplement 73–85).
   *
   * @return its limits at x; null when all points lie on the line
   */
  public @Nullable Interval bandAt(double x, double confidence) {
    double f = Quantiles.f(1 - Require.confidence(confidence), 2, n - 2);
    return around(x, Math.sqrt(2 * f), leverage(x), confidence);
  }

  /** t-interval of the slope; null when all points lie on the line. */
  public @Nullable Interval slopeInterval(double confidence) {
    double t = Quantiles.student(confidence, n - 2);
    return residualSd == 0 ? null : Interval.around(slope, t * slopeError, confidence);
  }

  private double leverage(double x) {
    return 1.0 / n + (x - xMean) * (x - xMean) / sxx;
  }

  private @Nullable Interval around(double x, double factor, double share, double confidence) {
    return residualSd == 0
        ? null
        : Interval.around(at(x), factor * residualSd * Math.sqrt(share), confidence);
  }
}
