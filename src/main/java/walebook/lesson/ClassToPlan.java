package walebook.lesson;

import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * Who is planned for, and with what.
 *
 * @param students no student twice
 * @param cloths the room's cloth for each slot of the plan; a slot may be left out
 * @param leftOut combinations nobody is to do, each by some of its levels, such as {@code width=3}
 * @param seed the same seed gives the same plan
 */
public record ClassToPlan(
    List<PlanStudent> students, Map<String, UUID> cloths, List<String> leftOut, long seed) {
  public ClassToPlan {
    students = List.copyOf(students);
    cloths = Map.copyOf(cloths);
    leftOut = List.copyOf(leftOut);
    if (students.stream().map(PlanStudent::id).distinct().count() != students.size()) {
      throw new IllegalArgumentException("students must not hold a student twice");
    }
  }

  /** A class that leaves nothing out. */
  public ClassToPlan(List<PlanStudent> students, Map<String, UUID> cloths, long seed) {
    this(students, cloths, List.of(), seed);
  }
}
