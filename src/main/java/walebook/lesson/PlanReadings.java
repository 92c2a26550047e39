package walebook.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.IntBinaryOperator;
import org.jspecify.annotations.Nullable;
import walebook.record.Grain;
import walebook.statistics.BlockTask;

/**
 * Works out who measures which cloth along which grain: the control first where the plan has one,
 * then a fair share of the others.
 */
public final class PlanReadings {
  /** No cloth is more like one than like another. */
  static final IntBinaryOperator UNLIKE = (one, other) -> 0;

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

  /** What a class is planned by. */
  public record Ask(ReadingsPlan plan, ClassToPlan room) {}

  /** The plan for a class that has everything and leaves nothing out. */
  public static List<ToMeasure> plan(
      ReadingsPlan plan, List<PlanStudent> students, Map<String, UUID> cloths, long seed) {
    return plan(new Ask(plan, new ClassToPlan(students, cloths, seed)));
  }

  /** The readings of a class, student by student in the order given. */
  public static List<ToMeasure> plan(Ask ask) {
    List<ReadingsPlan.Cell> cells = possibleCells(ask);
    ReadingsPlan.Cell control = ask.plan().control();
    List<List<Integer>> taken = allot(ask, cells);
    List<ToMeasure> all = new ArrayList<>();
    for (int i = 0; i < ask.room().students().size(); i++) {
      UUID student = ask.room().students().get(i).id();
      int place = 1;
      if (control != null) {
        all.add(toMeasure(ask, student, place++, control));
      }
      for (int cell : taken.get(i)) {
        all.add(toMeasure(ask, student, place++, cells.get(cell)));
      }
    }
    return List.copyOf(all);
  }

  /** How many combinations there are that somebody of those asked for can measure. */
  public static int possible(Ask ask) {
    return possibleCells(ask).size();
  }

  private static List<List<Integer>> allot(Ask ask, List<ReadingsPlan.Cell> cells) {
    List<BlockTask.Share> shares =
        ask.room().students().stream()
            .map(
                each ->
                    new BlockTask.Share(
                        List.of(), each.share(ask.plan().tiers()), barred(each, cells)))
            .toList();
    return ShareOut.first(cells.size(), shares, UNLIKE, ask.room().seed());
  }

  /** The plan's combinations without those left out and those of which nobody has the cloth. */
  static List<ReadingsPlan.Cell> possibleCells(Ask ask) {
    List<List<String>> without =
        ask.room().leftOut().stream()
            .map(ask.plan()::levelsIn)
            .filter(each -> !each.isEmpty())
            .toList();
    return ask.plan().cells().stream()
        .filter(each -> without.stream().noneMatch(each.levels()::containsAll))
        .filter(
            each ->
                ask.room().students().isEmpty()
                    || ask.room().students().stream()
                        .anyMatch(student -> !student.withoutCloths().contains(each.slot())))
        .toList();
  }

  /** The combinations a student has no cloth for. */
  static List<Integer> barred(PlanStudent student, List<ReadingsPlan.Cell> cells) {
    List<Integer> barred = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      if (student.withoutCloths().contains(cells.get(i).slot())) {
        barred.add(i);
      }
    }
    return barred;
  }

  static ToMeasure toMeasure(Ask ask, UUID student, int place, ReadingsPlan.Cell cell) {
    return new ToMeasure(
        student,
        place,
        cell.equals(ask.plan().control()),
        cell.slot(),
        ask.room().cloths().get(cell.slot()),
        cell.grain(),
        ask.plan().repeats());
  }
}
