package walebook.compare;

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
    Map<UUID, Map<Grain, List<ClothReading>>> sorted = new HashMap<>();
    for (ClothReading each : readings) {
      sorted
          .computeIfAbsent(each.clothId(), id -> new EnumMap<>(Grain.class))
          .computeIfAbsent(each.grain(), grain -> new java.util.ArrayList<>())
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

  private static ClothStretch sum(List<ClothReading> readings) {
    Pull hardest =
        readings.stream()
            .map(ClothStretch::pullOf)
            .min(Comparator.comparingInt(BEFORE::indexOf))
            .orElse(Pull.COMFORTABLE);
    List<ClothReading> used = readings.stream().filter(r -> pullOf(r) == hardest).toList();
    List<Double> percents = used.stream().map(ClothReading::stretchPercent).toList();
    double mean = percents.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    double reading = readingUncertainty(used.get(0)) / Math.sqrt(used.size());
    Double error = Repeats.spread(percents, 95).standardError();
    double scatter = error == null ? 0 : error;
    return new ClothStretch(used.size(), mean, Math.hypot(reading, scatter), hardest);
  }

  private static Pull pullOf(ClothReading reading) {
    @Nullable Pull pull = reading.how().pull();
    return pull == null ? Pull.COMFORTABLE : pull;
  }

  private static double readingUncertainty(ClothReading reading) {
    double u = ReadingUncertainty.ofResolution(READ_TO_MM);
    return ReadingUncertainty.ofChange(reading.gaugeMm(), reading.stretchedMm(), u, u);
  }
}
