package walebook.lesson;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import walebook.record.Tier;

/**
 * What a plan comes to in numbers before anything is sewn: each student's pieces, and how often a
 * class of a size sews each combination. Counting alone; combinations are shared out so that each
 * is sewn as often as any other, give or take one.
 *
 * @param combinations of the plan, to be shared out
 * @param perStudent pieces of a student on each tier, the control piece among them; readings of a
 *     plan of readings, those of its control among them
 * @param shared pieces or readings of the whole class without those of the control
 * @param least times that the combination sewn least often is sewn
 * @param most times that the one sewn most often is sewn
 */
public record PlanCounts(
    int combinations,
    Map<Tier, Integer> perStudent,
    int shared,
    int least,
    int most,
    List<OfFactor> factors) {
  public PlanCounts {
    perStudent = Map.copyOf(perStudent);
    factors = List.copyOf(factors);
  }

  /** Pieces or readings of a student on a tier. */
  public int ofTier(Tier tier) {
    return perStudent.getOrDefault(tier, 0);
  }

  /**
   * What a factor's levels come to.
   *
   * @param least times that each level is sewn at least, over all combinations it is in
   */
  public record OfFactor(String key, List<String> levels, int least) {
    public OfFactor {
      levels = List.copyOf(levels);
    }
  }

  /** The numbers of a plan for a class with so many students on each tier. */
  public static PlanCounts of(Plan plan, Map<Tier, Integer> students) {
    Map<Tier, Integer> shares = new EnumMap<>(Tier.class);
    for (Tier tier : Tier.values()) {
      shares.put(tier, plan.tiers().of(tier).cells());
    }
    if (plan instanceof ReadingsPlan readings) {
      boolean control = readings.control() != null;
      return ofReadings(plan.cellCount(), control, readings.repeats(), shares, students);
    }
    Map<String, List<String>> levels = new LinkedHashMap<>();
    if (plan instanceof PiecesPlan pieces) {
      pieces.factors().forEach(each -> levels.put(each.key().key(), each.levels()));
    }
    return ofPieces(levels, shares, students);
  }

  /**
   * The numbers of a plan of pieces, also of one that is not whole yet.
   *
   * @param levels of each factor; every level meets every other
   * @param shares combinations of a student on each tier
   */
  static PlanCounts ofPieces(
      Map<String, List<String>> levels, Map<Tier, Integer> shares, Map<Tier, Integer> students) {
    int cells = levels.values().stream().mapToInt(List::size).reduce(1, (a, b) -> a * b);
    Map<Tier, Integer> perStudent = new EnumMap<>(Tier.class);
    int shared = shared(cells, shares, students);
    shares.forEach((tier, share) -> perStudent.put(tier, Math.min(share, cells) + 1));
    int least = shared / cells;
    List<OfFactor> factors = new ArrayList<>();
    levels.forEach(
        (key, each) -> factors.add(new OfFactor(key, each, least * (cells / each.size()))));
    return new PlanCounts(cells, perStudent, shared, least, most(shared, cells), factors);
  }

  /**
   * The numbers of a plan of readings.
   *
   * @param cells cloths times grains, without the control; at least 1
   * @param control true when everybody measures one more, the same
   */
  static PlanCounts ofReadings(
      int cells,
      boolean control,
      int repeats,
      Map<Tier, Integer> shares,
      Map<Tier, Integer> students) {
    int forAll = control ? 1 : 0;
    Map<Tier, Integer> perStudent = new EnumMap<>(Tier.class);
    int shared = shared(cells, shares, students);
    shares.forEach(
        (tier, share) -> perStudent.put(tier, (Math.min(share, cells) + forAll) * repeats));
    int least = shared / cells * repeats;
    return new PlanCounts(
        cells, perStudent, shared * repeats, least, most(shared, cells) * repeats, List.of());
  }

  private static int shared(int cells, Map<Tier, Integer> shares, Map<Tier, Integer> students) {
    return shares.entrySet().stream()
        .mapToInt(
            each -> Math.min(each.getValue(), cells) * students.getOrDefault(each.getKey(), 0))
        .sum();
  }

  private static int most(int shared, int cells) {
    return (shared + cells - 1) / cells;
  }
}
