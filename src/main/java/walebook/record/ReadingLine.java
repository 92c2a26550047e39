package walebook.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a student is asked to measure, and what is measured of it so far.
 *
 * @param measured readings of the student, the lesson, the cloth and the grain, oldest first; more
 *     than asked for where somebody measured once more
 */
public record ReadingLine(PlannedReading planned, List<ClothReading> measured) {
  public ReadingLine {
    measured = List.copyOf(measured);
  }

  /** How many of the readings asked for are there; one more than asked is no more done. */
  public int done() {
    return Math.min(measured.size(), planned.repeats());
  }

  public boolean isDone() {
    return measured.size() >= planned.repeats();
  }

  private record Asks(
      @Nullable UUID student, @Nullable UUID lesson, @Nullable UUID cloth, Grain grain) {}

  /**
   * Gives each reading to what it was asked for by. Where one cloth stands for two of a plan, the
   * first is filled up before the second; what is over goes to the last.
   *
   * @param plan in the order of measuring
   * @param readings oldest first; those that nothing asked for are passed over
   */
  public static List<ReadingLine> of(List<PlannedReading> plan, List<ClothReading> readings) {
    Map<Asks, List<ClothReading>> waiting = new HashMap<>();
    for (ClothReading each : readings) {
      waiting
          .computeIfAbsent(
              new Asks(each.measuredBy(), each.lessonId(), each.clothId(), each.grain()),
              key -> new ArrayList<>())
          .add(each);
    }
    Map<Asks, Integer> last = new HashMap<>();
    for (int i = 0; i < plan.size(); i++) {
      last.put(asks(plan.get(i)), i);
    }
    List<ReadingLine> lines = new ArrayList<>();
    for (int i = 0; i < plan.size(); i++) {
      PlannedReading each = plan.get(i);
      List<ClothReading> of = waiting.getOrDefault(asks(each), List.of());
      boolean takesRest = Integer.valueOf(i).equals(last.get(asks(each)));
      int takes = takesRest ? of.size() : Math.min(of.size(), each.repeats());
      lines.add(new ReadingLine(each, of.subList(0, takes)));
      waiting.put(asks(each), of.subList(takes, of.size()));
    }
    return List.copyOf(lines);
  }

  private static Asks asks(PlannedReading each) {
    return new Asks(each.studentId(), each.lessonId(), each.clothId(), each.grain());
  }
}
