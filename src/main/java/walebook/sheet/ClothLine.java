package walebook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.compare.ClothReturn;
import walebook.compare.ClothStretch;
import walebook.compare.ReadingsThatCount;
import walebook.record.Cloth;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.Pull;

/**
 * A cloth's card with what was read along one grain.
 *
 * @param grain null for a cloth that nobody has read yet
 * @param readings how many there are along this grain, however hard it was pulled
 * @param aside how many of them the tutor set aside; they count for nothing else
 * @param back growth and recovery of the pull that counts, null when no such reading was released
 */
public record ClothLine(
    Cloth cloth,
    @Nullable Grain grain,
    int readings,
    int aside,
    @Nullable ClothStretch stretch,
    @Nullable ClothReturn back) {

  /** The lines of one cloth: one for each grain that was read, or a single one without. */
  static List<ClothLine> of(
      Cloth cloth,
      List<ClothReading> readings,
      Set<UUID> setAside,
      Map<Grain, ClothStretch> stretches) {
    List<ClothLine> lines = new ArrayList<>();
    for (Grain grain : Grain.values()) {
      List<ClothReading> along = readings.stream().filter(r -> r.grain() == grain).toList();
      if (!along.isEmpty()) {
        List<ClothReading> counting = ReadingsThatCount.of(along, setAside);
        ClothStretch stretch = stretches.get(grain);
        lines.add(
            new ClothLine(
                cloth,
                grain,
                along.size(),
                along.size() - counting.size(),
                stretch,
                stretch == null ? null : ClothReturn.of(pulled(counting, stretch.pull()))));
      }
    }
    return lines.isEmpty() ? List.of(new ClothLine(cloth, null, 0, 0, null, null)) : lines;
  }

  private static List<ClothReading> pulled(List<ClothReading> readings, Pull pull) {
    return readings.stream().filter(each -> ClothStretch.pullOf(each) == pull).toList();
  }
}
