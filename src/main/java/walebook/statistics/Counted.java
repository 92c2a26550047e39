package walebook.statistics;

import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/**
 * Values and how often each came. Readings are taken on a scale, so that there are no more
 * different ones than the scale has marks, however many there are of them.
 */
public final class Counted {
  private final Map<Double, int[]> counts = new HashMap<>();
  private int n;

  /** One more value, finite. */
  public void add(Double value) {
    add(value, 1);
  }

  private void add(Double value, int times) {
    Double key = value == 0 ? Double.valueOf(0) : value;
    int[] count = counts.get(key);
    if (count == null) {
      Require.finite("value", value);
      count = new int[1];
      counts.put(key, count);
    }
    count[0] += times;
    n += times;
  }

  /** All of the others too. */
  public void addAll(Counted others) {
    others.counts.forEach((value, count) -> add(value, count[0]));
  }

  /** The same values on another scale. */
  public Counted map(DoubleUnaryOperator to) {
    Counted mapped = new Counted();
    counts.forEach((value, count) -> mapped.add(to.applyAsDouble(value), count[0]));
    return mapped;
  }

  /** How many values, each as often as it came. */
  public int n() {
    return n;
  }

  public boolean isEmpty() {
    return n == 0;
  }

  /** Null when there are none. */
  public @Nullable Double least() {
    return counts.keySet().stream().min(Double::compare).orElse(null);
  }

  /** Null when there are none. */
  public @Nullable Double greatest() {
    return counts.keySet().stream().max(Double::compare).orElse(null);
  }

  /** How often a value came. */
  public int times(double value) {
    int[] count = counts.get(value == 0 ? Double.valueOf(0) : Double.valueOf(value));
    return count == null ? 0 : count[0];
  }

  /** Each value once, however often it came, in no order. */
  public DoubleStream different() {
    return counts.keySet().stream().mapToDouble(Double::doubleValue);
  }

  /** How often each came, the least first. */
  SortedMap<Double, int[]> rising() {
    return new TreeMap<>(counts);
  }

  /** Their mean and scatter. */
  public Moments moments() {
    Moments moments = new Moments();
    rising().forEach((value, count) -> moments.add(value, count[0]));
    return moments;
  }

  /**
   * Values at places in their order.
   *
   * @param places from 0, rising; fractions lie that far between two values
   */
  double[] at(double... places) {
    double[] found = new double[places.length];
    double before = Double.NaN;
    int passed = 0;
    int next = 0;
    for (var each : rising().entrySet()) {
      double value = each.getKey();
      int end = passed + each.getValue()[0];
      while (next < places.length && Math.ceil(places[next]) < end) {
        double share = places[next] - Math.floor(places[next]);
        double low = Math.floor(places[next]) < passed ? before : value;
        found[next] = low == value ? value : low + share * (value - low);
        next++;
      }
      before = value;
      passed = end;
    }
    return found;
  }

  /** The middle value, or the mean of the two middle ones. */
  double median() {
    return at((n - 1) / 2.0)[0];
  }
}
