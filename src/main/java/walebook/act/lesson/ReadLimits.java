package walebook.act.lesson;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import walebook.lesson.ClassToPlan;
import walebook.lesson.PiecesPlan;
import walebook.lesson.Plan;
import walebook.lesson.PlanPieces;
import walebook.lesson.PlanReadings;
import walebook.lesson.ReadingsPlan;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.ReadNumber;
import walebook.record.Keyed;
import walebook.record.MachineKind;
import walebook.record.Student;

/**
 * Reads what a class can't or needn't sew or measure, as it is typed: {@code overlocker} or {@code
 * cloth b} for everybody, {@code S03=overlocker} for one student, and likewise for shares.
 */
public final class ReadLimits {
  private static final String CLOTH = "cloth ";

  private final Plan plan;
  private final List<Student> students;
  private final List<Problem> problems = new ArrayList<>();
  private final List<String> leftOut = new ArrayList<>();
  private final Map<UUID, Set<MachineKind>> machines = new HashMap<>();
  private final Map<UUID, Set<String>> cloths = new HashMap<>();
  private final Map<UUID, Integer> shares = new HashMap<>();

  private ReadLimits(Plan plan, List<Student> students) {
    this.plan = plan;
    this.students = students;
  }

  /** Limits as typed, each list in the order it was typed. */
  public record Typed(List<String> leaveOut, List<String> without, List<String> share) {
    public static final Typed NOTHING = new Typed(List.of(), List.of(), List.of());

    public Typed {
      leaveOut = List.copyOf(leaveOut);
      without = List.copyOf(without);
      share = List.copyOf(share);
    }
  }

  /** The limits, or every mistake in them. */
  public static Answer<PlanLimits> of(Typed typed, Plan plan, List<Student> students) {
    ReadLimits read = new ReadLimits(plan, students);
    typed.leaveOut().forEach(read::leaveOut);
    typed.without().forEach(read::without);
    typed.share().forEach(read::share);
    PlanLimits limits = new PlanLimits(read.leftOut, read.machines, read.cloths, read.shares);
    if (read.problems.isEmpty()) {
      read.possible(limits);
    }
    return read.problems.isEmpty() ? Answer.good(limits) : Answer.bad(read.problems);
  }

  private void leaveOut(String typed) {
    List<String> levels = plan.levelsIn(typed);
    if (levels.isEmpty()) {
      String known = String.join(", ", plan.levels());
      refuse("lesson.left-out-unknown", "leave-out", typed.strip(), known);
    } else {
      leftOut.add(String.join(" ", levels));
    }
  }

  private void without(String typed) {
    String what = what(typed).toLowerCase(Locale.ROOT);
    MachineKind machine = isSewn() ? Keyed.find(MachineKind.class, what) : null;
    String slot = what.startsWith(CLOTH) ? what.substring(CLOTH.length()).strip() : "";
    boolean isSlot = plan.cloths().stream().anyMatch(each -> each.slot().equals(slot));
    if (machine == null && !isSlot) {
      String code = isSewn() ? "lesson.without-unknown" : "lesson.without-no-cloth";
      refuse(code, "without", what, withoutKnown());
      return;
    }
    for (Student each : whose("without", typed)) {
      if (machine != null) {
        machines.computeIfAbsent(each.id(), id -> new HashSet<>()).add(machine);
      } else {
        cloths.computeIfAbsent(each.id(), id -> new HashSet<>()).add(slot);
      }
    }
  }

  /** Whether there are pieces to sew; cloth is measured without a machine. */
  private boolean isSewn() {
    return plan instanceof PiecesPlan;
  }

  private String withoutKnown() {
    List<String> known = new ArrayList<>();
    if (isSewn()) {
      for (MachineKind each : MachineKind.values()) {
        known.add(each.key());
      }
    }
    plan.cloths().forEach(each -> known.add(CLOTH + each.slot()));
    return String.join(", ", known);
  }

  private void share(String typed) {
    Answer<Integer> count = ReadNumber.whole(what(typed), Place.field("share"));
    problems.addAll(count.problems());
    if (count.isGood() && count.value() < 1) {
      refuse("number.too-small", "share", what(typed), "1");
    } else if (count.isGood()) {
      whose("share", typed).forEach(each -> shares.put(each.id(), count.value()));
    }
  }

  private static String what(String typed) {
    return typed.substring(typed.lastIndexOf('=') + 1).strip();
  }

  /** The student before the equals sign, or everybody. */
  private List<Student> whose(String field, String typed) {
    int end = typed.lastIndexOf('=');
    if (end < 0) {
      return students;
    }
    String name = typed.substring(0, end).strip().toLowerCase(Locale.ROOT);
    List<Student> found =
        students.stream()
            .filter(
                each ->
                    each.alias().toLowerCase(Locale.ROOT).equals(name)
                        || each.name().toLowerCase(Locale.ROOT).equals(name))
            .toList();
    if (found.isEmpty()) {
      String known = students.stream().map(Student::alias).collect(Collectors.joining(", "));
      refuse("choice.unknown", field, name, known);
    }
    return found;
  }

  /** Nobody may be left without work, nor be asked for more than there is; said once for all. */
  private void possible(PlanLimits limits) {
    List<String> idle = new ArrayList<>();
    Map<List<Integer>, List<String>> tooMuch = new LinkedHashMap<>();
    for (Student each : students) {
      int most = possible(limits, each);
      int asked = limits.shares().getOrDefault(each.id(), 0);
      if (most == 0) {
        idle.add(each.alias());
      } else if (asked > most) {
        tooMuch.computeIfAbsent(List.of(asked, most), key -> new ArrayList<>()).add(each.alias());
      }
    }
    if (!idle.isEmpty()) {
      boolean everyone = idle.size() == students.size();
      refuse(
          nothingLeft(everyone),
          leftOut.isEmpty() ? "without" : "leave-out",
          String.join(", ", idle),
          "");
    }
    tooMuch.forEach(
        (asked, whose) ->
            refuse(
                isSewn() ? "lesson.share-too-large" : "lesson.share-too-large-to-measure",
                "share",
                whose.size() == students.size()
                    ? String.valueOf(asked.get(0))
                    : String.join(", ", whose) + "=" + asked.get(0),
                String.valueOf(asked.get(1))));
  }

  private int possible(PlanLimits limits, Student student) {
    ClassToPlan alone = new ClassToPlan(limits.of(List.of(student)), Map.of(), limits.leftOut(), 0);
    return plan instanceof PiecesPlan pieces
        ? PlanPieces.possible(new PlanPieces.Ask(pieces, 1, alone))
        : PlanReadings.possible(new PlanReadings.Ask((ReadingsPlan) plan, alone));
  }

  private String nothingLeft(boolean everyone) {
    if (isSewn()) {
      return everyone ? "lesson.nothing-to-sew-at-all" : "lesson.nothing-to-sew";
    }
    return everyone ? "lesson.nothing-to-measure-at-all" : "lesson.nothing-to-measure";
  }

  private void refuse(String code, String field, String found, String wanted) {
    problems.add(Problem.refuse(code, Place.field(field), found, wanted));
  }
}
