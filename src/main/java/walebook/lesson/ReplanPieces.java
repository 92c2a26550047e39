package walebook.lesson;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Plans a lesson again for who is there now. What is sewn stays as it is. Those who stay keep what
 * they were handed, but for what they can't sew any more and for the few pieces it takes to sew
 * every combination equally often again; newcomers get the share that balances the class best.
 */
public final class ReplanPieces {
  private final PlanPieces.Ask ask;
  private final PlanTable table;
  private final Map<UUID, Has> has;

  private ReplanPieces(PlanPieces.Ask ask, List<Has> so) {
    this.ask = ask;
    this.table = new PlanTable(ask.plan(), ask.students(), ask.leftOut());
    this.has = so.stream().collect(Collectors.toMap(Has::student, Function.identity()));
  }

  /**
   * What a student, here or gone, has of the plan so far.
   *
   * @param sewn labels of combinations logged, the control among them
   * @param open labels of combinations handed out and not logged
   * @param lastPlace the highest place in the student's order; 0 with none
   */
  public record Has(UUID student, List<String> sewn, List<String> open, int lastPlace) {
    public Has {
      sewn = List.copyOf(sewn);
      open = List.copyOf(open);
    }

    static Has nothing(UUID student) {
      return new Has(student, List.of(), List.of(), 0);
    }
  }

  /** A piece to take back from a student. */
  public record Back(UUID student, String cell) {}

  /** What changes. */
  public record Change(List<PieceToSew> added, List<Back> back) {
    public Change {
      added = List.copyOf(added);
      back = List.copyOf(back);
    }
  }

  /**
   * The change.
   *
   * @param ask who is there now, and what they can sew
   * @param soFar one for each student with any piece of the plan, those gone too
   */
  public static Change of(PlanPieces.Ask ask, List<Has> soFar) {
    return new ReplanPieces(ask, soFar).change();
  }

  private Change change() {
    List<Back> back = new ArrayList<>();
    List<PieceToSew> added = new ArrayList<>();
    Set<UUID> here = ask.students().stream().map(PlanStudent::id).collect(Collectors.toSet());
    for (Has each :
        has.values().stream().sorted((a, b) -> a.student().compareTo(b.student())).toList()) {
      if (!here.contains(each.student())) {
        each.open().forEach(cell -> back.add(new Back(each.student(), cell)));
      }
    }
    List<List<Integer>> taken = allot(here);
    for (int i = 0; i < ask.students().size(); i++) {
      compare(of(i), taken.get(i), added, back);
    }
    return new Change(added, back);
  }

  private Has of(int student) {
    UUID id = ask.students().get(student).id();
    return has.getOrDefault(id, Has.nothing(id));
  }

  /** The blocks of those who are there, then of those gone. */
  private List<List<Integer>> allot(Set<UUID> here) {
    List<ShareAgain.Here> now = new ArrayList<>();
    for (int i = 0; i < ask.students().size(); i++) {
      PlanStudent student = ask.students().get(i);
      Has each = of(i);
      now.add(
          new ShareAgain.Here(
              numbers(each.sewn()),
              numbers(each.open()),
              student.share(ask.plan().tiers()),
              table.barred(student)));
    }
    List<List<Integer>> gone =
        has.values().stream()
            .sorted((a, b) -> a.student().compareTo(b.student()))
            .filter(each -> !here.contains(each.student()))
            .map(each -> numbers(each.sewn()))
            .toList();
    return ShareAgain.of(table.size(), now, gone, table.likeness(), ask.seed());
  }

  private List<Integer> numbers(List<String> labels) {
    return labels.stream().map(table::number).filter(each -> each >= 0).distinct().toList();
  }

  private void compare(Has now, List<Integer> then, List<PieceToSew> added, List<Back> back) {
    Set<String> wanted = new HashSet<>(Set.of(PlanPieces.CONTROL));
    then.forEach(each -> wanted.add(table.cell(each).label()));
    for (String each : now.open()) {
      if (!wanted.contains(each)) {
        back.add(new Back(now.student(), each));
      }
    }
    int place = now.lastPlace();
    if (!now.sewn().contains(PlanPieces.CONTROL) && !now.open().contains(PlanPieces.CONTROL)) {
      added.add(PlanPieces.piece(ask, now.student(), ++place, ask.plan().controlCell()));
    }
    for (int each : then) {
      String label = table.cell(each).label();
      if (!now.sewn().contains(label) && !now.open().contains(label)) {
        added.add(PlanPieces.piece(ask, now.student(), ++place, table.cell(each)));
      }
    }
  }
}
