package walebook.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.cloth.ReadingUncertainty;
import walebook.cloth.Repeats;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.Pull;
import walebook.record.StretchReading;

/**
 * What the readings of a cloth say of its stretch along one grain.
 *
 * @param n how many readings it rests on
 * @param percent their mean
 * @param uncertainty standard uncertainty of the mean in points: scatter and reading combined
 * @param pull how hard it was pulled: a seam is pulled until something stops it, so firm pulls
 *     count before comfortable ones
 */
public record ClothStretch(int n, double percent, double uncertainty, Pull pull) {

  /** Marks are read to the nearest millimetre. */
  public static final double READ_TO_MM = 1;

  private static final List<Pull> BEFORE = List.of(Pull.FIRM, Pull.LOAD, Pull.COMFORTABLE);

  /** Sums up every cloth's readings, grain by grain. */
  public static Map<UUID, Map<Grain, ClothStretch>> of(List<ClothReading> readings) {
    return ofStretches(readings.stream().map(StretchReading::of).toList());
  }

  /** The same of what comparisons read of them. */
  public static Map<UUID, Map<Grain, ClothStretch>> ofStretches(List<StretchReading> readings) {
    Map<UUID, Map<Grain, List<StretchReading>>> sorted = new HashMap<>();
    for (StretchReading each : readings) {
      sorted
          .computeIfAbsent(each.like().clothId(), id -> new EnumMap<>(Grain.class))
          .computeIfAbsent(each.like().grain(), grain -> new ArrayList<>())
          .add(each);
    }
    Map<UUID, Map<Grain, ClothStretch>> all = new HashMap<>();
    sorted.forEach(
        (cloth, grains) -> {
          Map<Grain, ClothStretch> known = new EnumMap<>(Grain.class);
          grains.forEach((grain, list) -> known.put(grain, sum(list)));
          all.put(cloth, known);
        });
    return all;
  }

  private static ClothStretch sum(List<StretchReading> readings) {
    Pull hardest =
        readings.stream()
            .map(ClothStretch::pullOf)
            .min(Comparator.comparingInt(BEFORE::indexOf))
            .orElse(Pull.COMFORTABLE);
    List<StretchReading> used = readings.stream().filter(r -> pullOf(r) == hardest).toList();
    List<Double> percents = used.stream().map(StretchReading::percent).toList();
    double mean = percents.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    double reading = readingUncertainty(used.get(0)) / Math.sqrt(used.size());
    Double error = Repeats.spread(percents, 95).standardError();
    double scatter = error == null ? 0 : error;
    return new ClothStretch(used.size(), mean, Math.hypot(reading, scatter), hardest);
  }

  /** How hard it was pulled; comfortably where nobody said. */
  public static Pull pullOf(ClothReading reading) {
    return orComfortable(reading.how().pull());
  }

  private static Pull pullOf(StretchReading reading) {
    return orComfortable(reading.like().pull());
  }

  private static Pull orComfortable(@Nullable Pull pull) {
    return pull == null ? Pull.COMFORTABLE : pull;
  }

  private static double readingUncertainty(StretchReading reading) {
    double u = ReadingUncertainty.ofResolution(READ_TO_MM);
    return ReadingUncertainty.ofChange(reading.gaugeMm(), reading.stretchedMm(), u, u);
  }
}
