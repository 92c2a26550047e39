package walebook.act.cloth;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.compare.Names;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.record.ClothReading;
import walebook.record.ClothWash;
import walebook.record.Grain;
import walebook.record.TestPiece;
import walebook.working.Working;

/**
 * Everything the book knows of one cloth.
 *
 * @param readings newest first
 * @param aside keys of the readings that the tutor set aside
 * @param grains one summary for each grain that was read
 * @param balance how the two grains compare; null until both are read
 * @param pieces how many test pieces were sewn on it
 * @param best up to five pieces that their makers would keep, the best graded first
 * @param names of those who measured
 * @param unit lengths are shown in
 */
public record ClothCard(
    Cloth cloth,
    List<ClothReading> readings,
    Set<UUID> aside,
    List<GrainSummary> grains,
    @Nullable Working balance,
    List<ClothWash> washes,
    int pieces,
    List<TestPiece> best,
    Names names,
    Unit unit) {
  public ClothCard {
    readings = List.copyOf(readings);
    aside = Set.copyOf(aside);
    grains = List.copyOf(grains);
    washes = List.copyOf(washes);
    best = List.copyOf(best);
  }

  /** How many of its readings along a grain are set aside. */
  public int aside(Grain grain) {
    return (int) readings.stream().filter(r -> r.grain() == grain && isAside(r)).count();
  }

  /** Whether a reading is set aside. */
  public boolean isAside(ClothReading reading) {
    return aside.contains(reading.id());
  }

  /** What its washes come to, one summary for each grain that was marked. */
  public List<WashSummary> washed() {
    return WashSummary.of(washes);
  }
}
