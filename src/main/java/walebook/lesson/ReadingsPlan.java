package walebook.lesson;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.record.Grain;

/**
 * A plan of cloth readings: each cloth along each grain, some times over.
 *
 * @param control what everybody measures first, so that it is shared out to nobody; null for none
 * @param repeats how often a student measures the same cloth and grain
 */
public record ReadingsPlan(
    String question,
    List<ClothSlot> cloths,
    List<Grain> grains,
    @Nullable Cell control,
    int repeats,
    Tiers tiers)
    implements Plan {
  public static final String KIND = "cloth_readings";

  public ReadingsPlan {
    cloths = List.copyOf(cloths);
    grains = List.copyOf(grains);
  }

  /**
   * One cloth along one grain.
   *
   * @param slot the plan's cloth
   */
  public record Cell(String slot, Grain grain) {
    /** What it is called, such as {@code cloth=a grain=wale}. */
    public String label() {
      return String.join(" ", levels());
    }

    List<String> levels() {
      return List.of("cloth=" + slot, "grain=" + grain.key());
    }
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public int cellCount() {
    return cells().size();
  }

  @Override
  public List<String> levels() {
    List<String> levels = new ArrayList<>();
    cloths.forEach(each -> levels.add("cloth=" + each.slot()));
    grains.forEach(each -> levels.add("grain=" + each.key()));
    return List.copyOf(levels);
  }

  /** What is shared out: every cloth along every grain but the control, grains changing fastest. */
  public List<Cell> cells() {
    List<Cell> cells = new ArrayList<>();
    for (ClothSlot cloth : cloths) {
      for (Grain grain : grains) {
        Cell cell = new Cell(cloth.slot(), grain);
        if (!cell.equals(control)) {
          cells.add(cell);
        }
      }
    }
    return List.copyOf(cells);
  }
}
