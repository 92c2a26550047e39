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

/**
 * Works out who measures which cloth along which grain: the control first where the plan has one,
 * then a fair share of the others.
 */
public final class PlanReadings {
  private PlanReadings() {}

  /**
   * One set of readings a student is asked for.
   *
   * @param place in the student's order, from 1
   * @param control what everybody measures first
   * @param slot the plan's cloth
   * @param clothId the room's cloth for it; null while the tutor hasn't said
   * @param repeats how often to measure it
   */
  public record ToMeasure(
      UUID studentId,
      int place,
      boolean control,
      String slot,
      @Nullable UUID clothId,
      Grain grain,
      int repeats) {}

  /** The readings of a class, student by student; shares and seed as in {@link PlanPieces}. */
  public static List<ToMeasure> plan(
      ReadingsPlan plan, List<PlanStudent> students, Map<String, UUID> cloths, long seed) {
    List<ReadingsPlan.Cell> cells = plan.cells();
    ReadingsPlan.Cell control = plan.control();
    List<BlockTask.Share> shares =
        students.stream().map(each -> BlockTask.Share.of(each.share(plan.tiers()))).toList();
    List<List<Integer>> taken =
        AllotBlocks.of(new BlockTask(cells.size(), shares, (one, other) -> 0), new Random(seed))
            .blocks();
    List<ToMeasure> all = new ArrayList<>();
    for (int i = 0; i < students.size(); i++) {
      List<ReadingsPlan.Cell> ofStudent = new ArrayList<>();
      if (control != null) {
        ofStudent.add(control);
      }
      taken.get(i).forEach(cell -> ofStudent.add(cells.get(cell)));
      for (int place = 1; place <= ofStudent.size(); place++) {
        ReadingsPlan.Cell cell = ofStudent.get(place - 1);
        all.add(
            new ToMeasure(
                students.get(i).id(),
                place,
                cell.equals(control),
                cell.slot(),
                cloths.get(cell.slot()),
                cell.grain(),
                plan.repeats()));
      }
    }
    return List.copyOf(all);
  }
}
