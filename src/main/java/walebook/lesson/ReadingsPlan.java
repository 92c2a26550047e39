package walebook.lesson;

import java.util.List;
import walebook.record.Grain;

/**
 * A plan of cloth readings: each cloth along each grain, some times over.
 *
 * @param repeats how often a student measures the same cloth and grain
 */
public record ReadingsPlan(
    String question, List<ClothSlot> cloths, List<Grain> grains, int repeats, Tiers tiers)
    implements Plan {
  public static final String KIND = "cloth_readings";

  public ReadingsPlan {
    cloths = List.copyOf(cloths);
    grains = List.copyOf(grains);
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public int cellCount() {
    return cloths.size() * grains.size();
  }
}
