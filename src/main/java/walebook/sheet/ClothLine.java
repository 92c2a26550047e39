package walebook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.compare.ClothReturn;
import walebook.compare.ClothStretch;
import walebook.record.Cloth;
import walebook.record.ClothReading;
import walebook.record.Grain;

/**
 * A cloth's card with what was read along one grain.
 *
 * @param grain null for a cloth that nobody has read yet
 * @param readings how many there are along this grain, however hard it was pulled
 * @param back growth and recovery, null when no reading was released
 */
public record ClothLine(
    Cloth cloth,
    @Nullable Grain grain,
    int readings,
    @Nullable ClothStretch stretch,
    @Nullable ClothReturn back) {

  /** The lines of one cloth: one for each grain that was read, or a single one without. */
  static List<ClothLine> of(
      Cloth cloth, List<ClothReading> readings, Map<Grain, ClothStretch> stretches) {
    List<ClothLine> lines = new ArrayList<>();
    for (Grain grain : Grain.values()) {
      List<ClothReading> along = readings.stream().filter(r -> r.grain() == grain).toList();
      if (!along.isEmpty()) {
        ClothReturn back = ClothReturn.of(along);
        lines.add(new ClothLine(cloth, grain, along.size(), stretches.get(grain), back));
      }
    }
    return lines.isEmpty() ? List.of(new ClothLine(cloth, null, 0, null, null)) : lines;
  }
}
