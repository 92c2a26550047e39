package walebook.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/**
 * What rows of dots span with their intervals: what counts of the dots ({@link Reach}), and of an
 * interval no more than lies near them.
 *
 * @param least the smallest value that has to be on the scale
 * @param most the greatest one, not below {@code least}
 */
record DotSpan(double least, double most) {
  /**
   * The span of rows.
   *
   * @param also values that are to be on the scale, however far they lie
   * @return null when there is nothing to span
   */
  static @Nullable DotSpan of(List<DotRow> rows, double... also) {
    List<double[]> dots =
        rows.stream()
            .map(row -> row.dots().stream().mapToDouble(DotRow.Dot::value).toArray())
            .toList();
    boolean none = dots.stream().allMatch(row -> row.length == 0);
    Reach reach = none ? null : Reach.of(dots);
    DoubleStream.Builder values = DoubleStream.builder();
    Arrays.stream(also).forEach(values);
    if (reach != null) {
      values.add(reach.least()).add(reach.most());
    }
    for (DotRow row : rows) {
      if (reach != null && !row.dots().stream().allMatch(dot -> reach.has(dot.value()))) {
        // A slip drags its row's interval along.
        continue;
      }
      for (Double end : Arrays.asList(row.low(), row.high())) {
        if (end != null) {
          values.add(reach == null ? end : reach.near(end));
        }
      }
    }
    double[] all = values.build().sorted().toArray();
    return all.length == 0 ? null : new DotSpan(all[0], all[all.length - 1]);
  }
}
