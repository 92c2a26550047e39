package walebook.statistics;

/**
 * Number, mean and scatter of values that come one after the other and are not kept (T. F. Chan, G.
 * H. Golub and R. J. LeVeque, The American Statistician 37 (1983) 242–247).
 */
public final class Moments {
  private int n;
  private double mean;
  private double squares;
  private double least = Double.POSITIVE_INFINITY;
  private double greatest = Double.NEGATIVE_INFINITY;

  /** Begins with none. */
  public Moments() {}

  /** What was kept of some values. */
  Moments(int n, double mean, double squares, double least, double greatest) {
    this.n = n;
    this.mean = mean;
    this.squares = squares;
    this.least = least;
    this.greatest = greatest;
  }

  /** One more value, finite. */
  public void add(double value) {
    add(value, 1);
  }

  void add(double value, int times) {
    Require.finite("value", value);
    together(times, value, 0, value, value);
  }

  /** All of the others too. */
  public void addAll(Moments others) {
    if (others.n > 0) {
      together(others.n, others.mean, others.squares, others.least, others.greatest);
    }
  }

  private void together(int more, double mid, double sum, double low, double high) {
    int all = n + more;
    double away = mid - mean;
    mean = n == 0 ? mid : mean + away * more / all;
    squares += n == 0 ? sum : sum + away * away * n * more / all;
    n = all;
    least = Math.min(least, low);
    greatest = Math.max(greatest, high);
  }

  /** The same values times a number above 0. */
  public Moments times(double factor) {
    Moments scaled = new Moments();
    if (n > 0) {
      scaled.together(
          n, mean * factor, squares * factor * factor, least * factor, greatest * factor);
    }
    return scaled;
  }

  public int n() {
    return n;
  }

  double mean() {
    return mean;
  }

  double squares() {
    return squares;
  }

  double least() {
    return least;
  }

  double greatest() {
    return greatest;
  }

  /** Mean and standard deviation of at least one value. */
  public Summary summary() {
    double size = Rounding.size(least, greatest);
    Double sd = n < 2 ? null : Double.valueOf(Rounding.clean(Math.sqrt(squares / (n - 1)), size));
    return new Summary(n, Math.min(greatest, Math.max(least, mean)), sd, least, greatest);
  }
}
