package walebook.statistics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Holm's step-down adjustment of several p-values looked at together. */
public final class Holm {
  private Holm() {}

  /**
   * Adjusted p-values: the i-th smallest of m becomes {@code max_{j≤i} min(1, (m−j+1) p_j)}. Keeps
   * the chance of any false finding among them at the level read off, whatever their dependence.
   *
   * <p>S. Holm, Scandinavian Journal of Statistics 6 (1979) 65–70.
   *
   * @param p any number of p-values, each from 0 to 1
   * @return as many, in the same order
   */
  public static List<Double> adjust(List<Double> p) {
    for (double one : p) {
      if (!(one >= 0 && one <= 1)) {
        throw new IllegalArgumentException("p must lie between 0 and 1: " + one);
      }
    }
    List<Integer> order =
        IntStream.range(0, p.size()).boxed().sorted(Comparator.comparing(p::get)).toList();
    List<Double> adjusted = new ArrayList<>(p);
    double highest = 0;
    for (int i = 0; i < order.size(); i++) {
      int at = order.get(i);
      highest = Math.max(highest, Math.min(1, (p.size() - i) * p.get(at)));
      adjusted.set(at, highest);
    }
    return List.copyOf(adjusted);
  }
}
