package walebook.compare.alike;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.StretchReading;
import walebook.statistics.Summary;

/** How far one person's readings of the same thing scatter, and nothing else of how alike. */
public final class Repeatability {
  private Repeatability() {}

  /**
   * The standard deviation pooled over everybody who read anything twice in the same way.
   *
   * @param setAside readings that the tutor set aside
   * @return points of stretch; null when nobody read twice, or when all repeats were equal
   */
  public static @Nullable Double sd(List<StretchReading> readings, Set<UUID> setAside) {
    Map<StretchReading.Like, Map<String, List<Double>>> studies = new HashMap<>();
    Map<UUID, String> people = new HashMap<>();
    for (StretchReading each : readings) {
      UUID by = each.measuredBy();
      if (by != null && !setAside.contains(each.id())) {
        String who = people.computeIfAbsent(by, UUID::toString);
        studies
            .computeIfAbsent(each.like(), like -> new TreeMap<>())
            .computeIfAbsent(who, key -> new ArrayList<>())
            .add(each.percent());
      }
    }
    double[] squares = new double[studies.size()];
    int degrees = 0;
    int at = 0;
    for (Map<String, List<Double>> study : studies.values()) {
      for (List<Double> own : study.values()) {
        squares[at] += Summary.of(own).sumOfSquares();
        degrees += own.size() - 1;
      }
      at++;
    }
    return pooled(squares, degrees);
  }

  /** Sums from the smallest on, so that the order of the studies makes no difference. */
  static @Nullable Double pooled(double[] squares, int degrees) {
    double[] sorted = squares.clone();
    Arrays.sort(sorted);
    double sum = Arrays.stream(sorted).reduce(0, Double::sum);
    return degrees == 0 || sum == 0 ? null : Double.valueOf(Math.sqrt(sum / degrees));
  }
}
