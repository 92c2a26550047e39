package walebook.lesson;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import walebook.record.Tier;

/**
 * What a plan comes to in numbers before anything is sewn: each student's pieces, and how often a
 * class of a size sews each combination. Counting alone; combinations are shared out so that each
 * is sewn as often as any other, give or take one.
 *
 * @param combinations of the plan
 * @param perStudent pieces of a student on each tier, the control piece among them; readings of a
 *     plan of readings
 * @param shared pieces or readings of the whole class without the control pieces
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
    int cells = plan.cellCount();
    ReadingsPlan readings = plan instanceof ReadingsPlan found ? found : null;
    int each = readings == null ? 1 : readings.repeats();
    Map<Tier, Integer> perStudent = new EnumMap<>(Tier.class);
    int shares = 0;
    for (Tier tier : Tier.values()) {
      int share = Math.min(plan.tiers().of(tier).cells(), cells);
      perStudent.put(tier, readings == null ? share + 1 : share * each);
      shares += share * students.getOrDefault(tier, 0);
    }
    int least = shares / cells;
    int most = (shares + cells - 1) / cells;
    List<OfFactor> factors = new ArrayList<>();
    if (plan instanceof PiecesPlan pieces) {
      for (PiecesPlan.Factor factor : pieces.factors()) {
        int inLevel = cells / factor.levels().size();
        factors.add(new OfFactor(factor.key().key(), factor.levels(), least * inLevel));
      }
    }
    return new PlanCounts(cells, perStudent, shares * each, least * each, most * each, factors);
  }
}
