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
 * Plans a lesson of readings again for who is there now, as {@link ReplanPieces} does for pieces:
 * what somebody began to measure stays theirs, the rest is shared out anew with few changes.
 */
public final class ReplanReadings {
  private final PlanReadings.Ask ask;
  private final List<ReadingsPlan.Cell> cells;
  private final Map<UUID, Has> has;

  private ReplanReadings(PlanReadings.Ask ask, List<Has> soFar) {
    this.ask = ask;
    this.cells = PlanReadings.possibleCells(ask);
    this.has = soFar.stream().collect(Collectors.toMap(Has::student, Function.identity()));
  }

  /**
   * What a student, here or gone, has of the plan so far.
   *
   * @param measured of which there is at least one reading, the control among them
   * @param open handed out and not begun
   * @param lastPlace the highest place in the student's order; 0 with none
   */
  public record Has(
      UUID student, List<ReadingsPlan.Cell> measured, List<ReadingsPlan.Cell> open, int lastPlace) {
    public Has {
      measured = List.copyOf(measured);
      open = List.copyOf(open);
    }

    static Has nothing(UUID student) {
      return new Has(student, List.of(), List.of(), 0);
    }
  }

  /** What to take back from a student. */
  public record Back(UUID student, ReadingsPlan.Cell cell) {}

  /** What changes. */
  public record Change(List<PlanReadings.ToMeasure> added, List<Back> back) {
    public Change {
      added = List.copyOf(added);
      back = List.copyOf(back);
    }
  }

  /**
   * The change.
   *
   * @param ask who is there now, and which cloths they have
   * @param soFar one for each student with any part of the plan, those gone too
   */
  public static Change of(PlanReadings.Ask ask, List<Has> soFar) {
    return new ReplanReadings(ask, soFar).change();
  }

  private Change change() {
    List<Has> gone = new ArrayList<>(has.values());
    Set<UUID> here = ask.students().stream().map(PlanStudent::id).collect(Collectors.toSet());
    gone.removeIf(each -> here.contains(each.student()));
    gone.sort((a, b) -> a.student().compareTo(b.student()));
    List<ShareAgain.Here> now = new ArrayList<>();
    for (PlanStudent student : ask.students()) {
      Has each = of(student);
      now.add(
          new ShareAgain.Here(
              numbers(each.measured()),
              numbers(each.open()),
              student.share(ask.plan().tiers()),
              PlanReadings.barred(student, cells)));
    }
    List<List<Integer>> blocks =
        ShareAgain.of(
            cells.size(),
            now,
            gone.stream().map(each -> numbers(each.measured())).toList(),
            (one, other) -> 0,
            ask.seed());
    List<PlanReadings.ToMeasure> added = new ArrayList<>();
    List<Back> back = new ArrayList<>();
    gone.forEach(each -> each.open().forEach(cell -> back.add(new Back(each.student(), cell))));
    for (int i = 0; i < ask.students().size(); i++) {
      compare(of(ask.students().get(i)), blocks.get(i), added, back);
    }
    return new Change(added, back);
  }

  private Has of(PlanStudent student) {
    return has.getOrDefault(student.id(), Has.nothing(student.id()));
  }

  private List<Integer> numbers(List<ReadingsPlan.Cell> of) {
    return of.stream().map(cells::indexOf).filter(each -> each >= 0).distinct().toList();
  }

  private void compare(
      Has now, List<Integer> then, List<PlanReadings.ToMeasure> added, List<Back> back) {
    List<ReadingsPlan.Cell> wanted = new ArrayList<>();
    if (ask.plan().control() != null) {
      wanted.add(ask.plan().control());
    }
    then.forEach(each -> wanted.add(cells.get(each)));
    Set<ReadingsPlan.Cell> keeps = new HashSet<>(wanted);
    now.open().stream()
        .filter(each -> !keeps.contains(each))
        .forEach(each -> back.add(new Back(now.student(), each)));
    int place = now.lastPlace();
    for (ReadingsPlan.Cell each : wanted) {
      if (!now.measured().contains(each) && !now.open().contains(each)) {
        added.add(PlanReadings.toMeasure(ask, now.student(), ++place, each));
      }
    }
  }
}
