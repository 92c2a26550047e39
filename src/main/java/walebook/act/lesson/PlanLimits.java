package walebook.act.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import walebook.lesson.PlanStudent;
import walebook.record.MachineKind;
import walebook.record.Student;

/**
 * What a class can't or needn't sew or measure of a plan.
 *
 * @param leftOut combinations nobody is to sew, each by some of its levels, such as {@code width=3}
 * @param machines kinds of machine that a student has none of
 * @param cloths the plan's cloths that a student has none of, by their slot
 * @param shares how many combinations a student takes on in the place of the tier's
 */
public record PlanLimits(
    List<String> leftOut,
    Map<UUID, Set<MachineKind>> machines,
    Map<UUID, Set<String>> cloths,
    Map<UUID, Integer> shares) {
  /** Everybody has everything. */
  public static final PlanLimits NONE = new PlanLimits(List.of(), Map.of(), Map.of(), Map.of());

  public PlanLimits {
    leftOut = List.copyOf(leftOut);
    machines = Map.copyOf(machines);
    cloths = Map.copyOf(cloths);
    shares = Map.copyOf(shares);
  }

  /** True when no student has a cloth of the plan. */
  boolean isWithout(String slot, List<Student> students) {
    return !students.isEmpty()
        && students.stream()
            .allMatch(each -> cloths.getOrDefault(each.id(), Set.of()).contains(slot));
  }

  /**
   * What is left out, and what was before: a fair plan never asks for one combination twice and for
   * another not at all, so one that nobody has while another is in two pairs of hands was left out.
   *
   * @param labels of every combination of the plan
   * @param dealt labels of those in anybody's hands, once for each
   */
  List<String> leftOutOf(List<String> labels, List<String> dealt) {
    List<String> all = new ArrayList<>(leftOut);
    if (labels.stream().anyMatch(each -> Collections.frequency(dealt, each) > 1)) {
      labels.stream().filter(each -> !dealt.contains(each)).forEach(all::add);
    }
    return all;
  }

  /** The students as the plan takes them. */
  List<PlanStudent> of(List<Student> students) {
    return students.stream().map(this::of).toList();
  }

  private PlanStudent of(Student student) {
    UUID id = student.id();
    return new PlanStudent(
        id,
        student.tier(),
        shares.get(id),
        machines.getOrDefault(id, Set.of()),
        cloths.getOrDefault(id, Set.of()));
  }
}
