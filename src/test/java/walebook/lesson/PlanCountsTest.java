package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import walebook.record.Tier;

class PlanCountsTest {
  private static PiecesPlan plan() {
    return (PiecesPlan) Packs.seam().plan();
  }

  /** Counted by hand: 12 combinations, shares of 2, 4 and so on as the pack says. */
  @Test
  void countsByHand() {
    PiecesPlan plan = plan();
    int standard = plan.tiers().standard().cells();
    PlanCounts counts = PlanCounts.of(plan, Map.of(Tier.STANDARD, 12));
    assertThat(counts.combinations()).isEqualTo(12);
    assertThat(counts.ofTier(Tier.STANDARD)).isEqualTo(standard + 1);
    assertThat(counts.shared()).isEqualTo(12 * standard);
    assertThat(counts.least()).isEqualTo(standard);
    assertThat(counts.most()).isEqualTo(standard);
    assertThat(counts.factors().get(0).least()).isEqualTo(6 * standard);
  }

  /** What is counted beforehand is what the plan then hands out. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5, 7, 12, 30})
  void thePlanKeepsWhatTheCountSays(int size) {
    PiecesPlan plan = plan();
    List<PlanStudent> students = new ArrayList<>();
    Map<Tier, Integer> tiers = new HashMap<>();
    for (int i = 0; i < size; i++) {
      Tier tier = List.of(Tier.CORE, Tier.STANDARD, Tier.OWN).get(i % 3);
      students.add(new PlanStudent(new UUID(1, i), tier));
      tiers.merge(tier, 1, Integer::sum);
    }
    PlanCounts counts = PlanCounts.of(plan, tiers);
    Map<String, Integer> sewn = new HashMap<>();
    plan.cells().forEach(cell -> sewn.put(cell.label(), 0));
    for (PieceToSew each : PlanPieces.plan(plan, 1, students, Map.of(), 7)) {
      if (!each.control()) {
        sewn.merge(each.cell(), 1, Integer::sum);
      }
    }
    assertThat(sewn.values().stream().mapToInt(Integer::intValue).sum()).isEqualTo(counts.shared());
    assertThat(sewn.values()).allMatch(n -> n >= counts.least() && n <= counts.most());
  }

  @Test
  void readingsAreCountedWithTheirRepeats() throws IOException {
    PackSource source = new PackBytes("two-cloths", BrokenPacks.base("two-cloths"));
    PlanCounts counts =
        PlanCounts.of(new ReadPack().read(source).value().plan(), Map.of(Tier.CORE, 4));
    assertThat(counts.combinations()).isEqualTo(4);
    assertThat(counts.ofTier(Tier.CORE)).isEqualTo(4);
    assertThat(counts.shared()).isEqualTo(16);
    assertThat(counts.least()).isEqualTo(4);
  }

  /** Three cloths one way, the first for everybody: two sheets of three readings to share out. */
  @Test
  void theControlOfReadingsIsTakenByEverybodyAndSharedOutToNobody() {
    Plan plan = Packs.named("do-we-measure-alike").plan();
    Map<Tier, Integer> students = Map.of(Tier.CORE, 4, Tier.STANDARD, 3);
    PlanCounts counts = PlanCounts.of(plan, students);
    assertThat(counts.combinations()).isEqualTo(2);
    assertThat(counts.ofTier(Tier.CORE)).isEqualTo(6);
    assertThat(counts.ofTier(Tier.STANDARD)).isEqualTo(9);
    assertThat(counts.shared()).isEqualTo(4 * 3 + 3 * 6);
    assertThat(counts.least()).isEqualTo(15);
    assertThat(PackDraft.of(Packs.named("do-we-measure-alike")).counts(students)).isEqualTo(counts);
  }
}
