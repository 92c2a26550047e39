package walebook.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.Grain;
import walebook.statistics.AllotBlocks;
import walebook.statistics.BlockTask;

/** Works out who measures which cloth along which grain. */
public final class PlanReadings {
  private PlanReadings() {}

  /**
   * One set of readings a student is asked for.
   *
   * @param place in the student's order, from 1
   * @param slot the plan's cloth
   * @param clothId the room's cloth for it; null while the tutor hasn't said
   * @param repeats how often to measure it
   */
  public record ToMeasure(
      UUID studentId, int place, String slot, @Nullable UUID clothId, Grain grain, int repeats) {}

  /** The readings of a class, student by student; shares and seed as in {@link PlanPieces}. */
  public static List<ToMeasure> plan(
      ReadingsPlan plan, List<PlanStudent> students, Map<String, UUID> cloths, long seed) {
    int grains = plan.grains().size();
    List<BlockTask.Share> shares =
        students.stream().map(each -> BlockTask.Share.of(each.share(plan.tiers()))).toList();
    List<List<Integer>> taken =
        AllotBlocks.of(new BlockTask(plan.cellCount(), shares, (one, other) -> 0), new Random(seed))
            .blocks();
    List<ToMeasure> all = new ArrayList<>();
    for (int i = 0; i < students.size(); i++) {
      int place = 1;
      for (int cell : taken.get(i)) {
        String slot = plan.cloths().get(cell / grains).slot();
        Grain grain = plan.grains().get(cell % grains);
        UUID student = students.get(i).id();
        all.add(new ToMeasure(student, place++, slot, cloths.get(slot), grain, plan.repeats()));
      }
    }
    return List.copyOf(all);
  }
}
