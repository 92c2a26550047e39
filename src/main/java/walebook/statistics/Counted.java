package walebook.statistics;

import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Values and how often each came. Readings are taken on a scale, so that there are no more
 * different ones than the scale has marks, however many there are of them.
 */
public final class Counted {
  private static final int FEW = 8;

  /** A table of open places, at most half of them taken; a place is free while its count is 0. */
  private double[] values = new double[FEW];

  private int[] counts = new int[FEW];
  private int different;
  private int n;

  /** A value and how often it came. */
  public interface Each {
    /** Takes one. */
    void take(double value, int times);
  }

  /** One more value, finite. */
  public void add(double value) {
    add(value, 1);
  }

  private void add(double value, int times) {
    Require.finite("value", value);
    double key = value == 0 ? 0 : value;
    int place = place(key);
    if (counts[place] == 0) {
      if (2 * different >= counts.length) {
        grow();
        place = place(key);
      }
      values[place] = key;
      different++;
    }
    counts[place] += times;
    n += times;
  }

  private int place(double value) {
    int hash = Double.hashCode(value) * 0x9E3779B9;
    int place = (hash ^ (hash >>> 16)) & (counts.length - 1);
    while (counts[place] != 0 && values[place] != value) {
      place = (place + 1) & (counts.length - 1);
    }
    return place;
  }

  private void grow() {
    double[] oldValues = values;
    int[] oldCounts = counts;
    values = new double[2 * oldValues.length];
    counts = new int[values.length];
    for (int i = 0; i < oldCounts.length; i++) {
      if (oldCounts[i] > 0) {
        int place = place(oldValues[i]);
        values[place] = oldValues[i];
        counts[place] = oldCounts[i];
      }
    }
  }

  private void inAnyOrder(Each to) {
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        to.take(values[i], counts[i]);
      }
    }
  }

  /** All of the others too. */
  public void addAll(Counted others) {
    others.inAnyOrder(this::add);
  }

  /** The same values on another scale. */
  public Counted map(DoubleUnaryOperator to) {
    Counted mapped = new Counted();
    inAnyOrder((value, times) -> mapped.add(to.applyAsDouble(value), times));
    return mapped;
  }

  /** How many values, each as often as it came. */
  public int n() {
    return n;
  }

  public boolean isEmpty() {
    return n == 0;
  }

  /** How often a value came. */
  public int timesOf(double value) {
    return counts[place(value == 0 ? 0 : value)];
  }

  /** Null when there are none. */
  public @Nullable Double least() {
    return isEmpty() ? null : Double.valueOf(different().min().orElseThrow());
  }

  /** Null when there are none. */
  public @Nullable Double greatest() {
    return isEmpty() ? null : Double.valueOf(different().max().orElseThrow());
  }

  /** Each value once, however often it came, in no order. */
  public DoubleStream different() {
    return IntStream.range(0, counts.length).filter(i -> counts[i] > 0).mapToDouble(i -> values[i]);
  }

  /** How often each came, the least first. */
  SortedMap<Double, int[]> rising() {
    SortedMap<Double, int[]> rising = new TreeMap<>();
    inAnyOrder((value, times) -> rising.put(value, new int[] {times}));
    return rising;
  }

  /** Tells each and how often it came, the least first. */
  public void rising(Each to) {
    rising().forEach((value, times) -> to.take(value, times[0]));
  }

  /** Their mean and scatter. */
  public Moments moments() {
    Moments moments = new Moments();
    rising(moments::add);
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

  /** The middle value, or the lower of the two middle ones; of at least one. */
  public double lowerMiddle() {
    return at(Math.floor((n - 1) / 2.0))[0];
  }

  /** The middle value, or the mean of the two middle ones. */
  double median() {
    return at((n - 1) / 2.0)[0];
  }
}
