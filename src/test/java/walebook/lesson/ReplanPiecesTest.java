package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import walebook.record.Tier;

class ReplanPiecesTest {
  private static final PiecesPlan SEAM = (PiecesPlan) Packs.seam().plan();
  private static final Map<String, UUID> CLOTHS = Map.of("a", new UUID(0, 1), "b", new UUID(0, 2));

  private static PlanStudent student(int number) {
    return new PlanStudent(new UUID(7, number), Tier.STANDARD);
  }

  private static PlanPieces.Ask ask(List<PlanStudent> students, long seed) {
    return new PlanPieces.Ask(SEAM, 1, new ClassToPlan(students, CLOTHS, seed));
  }

  /** A class of which some pieces are sewn, then some leave and others come. */
  @Test
  void whoComesAndGoesLeavesTheRestAloneAndThePlanEven() {
    for (int round = 0; round < 60; round++) {
      Random random = new Random(round);
      int before = 3 + random.nextInt(20);
      List<PlanStudent> first = new ArrayList<>();
      for (int i = 0; i < before; i++) {
        first.add(student(i));
      }
      Map<UUID, List<String>> sewn = new HashMap<>();
      Map<UUID, List<String>> open = new HashMap<>();
      for (PieceToSew each : PlanPieces.plan(ask(first, round))) {
        boolean done = random.nextInt(3) == 0;
        sewn.computeIfAbsent(each.studentId(), id -> new ArrayList<>());
        open.computeIfAbsent(each.studentId(), id -> new ArrayList<>());
        cells(done ? sewn : open, each.studentId()).add(each.cell());
      }
      List<PlanStudent> then = new ArrayList<>(first.subList(random.nextInt(3), before));
      int coming = random.nextInt(4);
      for (int i = 0; i < coming; i++) {
        then.add(student(100 + i));
      }
      List<Replan.Has<String>> has =
          first.stream()
              .map(s -> new Replan.Has<>(s.id(), cells(sewn, s.id()), cells(open, s.id()), 5))
              .toList();
      Replan.Change<PieceToSew, String> change = ReplanPieces.of(ask(then, round), has);
      assertThat(ReplanPieces.of(ask(then, round), has)).isEqualTo(change);
      check(change, first, then, sewn, open);
    }
  }

  private static List<String> cells(Map<UUID, List<String>> of, UUID student) {
    return Objects.requireNonNull(of.get(student));
  }

  private static void check(
      Replan.Change<PieceToSew, String> change,
      List<PlanStudent> first,
      List<PlanStudent> then,
      Map<UUID, List<String>> sewn,
      Map<UUID, List<String>> open) {
    Set<UUID> here = Set.copyOf(then.stream().map(PlanStudent::id).toList());
    Map<UUID, List<String>> after = new HashMap<>();
    for (PlanStudent each : first) {
      List<String> left = new ArrayList<>(cells(open, each.id()));
      change.back().stream()
          .filter(back -> back.student().equals(each.id()))
          .forEach(back -> assertThat(left.remove(back.cell())).as("was open").isTrue());
      left.addAll(cells(sewn, each.id()));
      after.put(each.id(), left);
    }
    change
        .added()
        .forEach(
            each -> {
              assertThat(here).contains(each.studentId());
              after.computeIfAbsent(each.studentId(), id -> new ArrayList<>()).add(each.cell());
            });
    Map<String, Integer> times = new HashMap<>();
    SEAM.cells().forEach(cell -> times.put(cell.label(), 0));
    after.forEach(
        (student, cells) -> {
          assertThat(cells).doesNotHaveDuplicates();
          if (here.contains(student)) {
            assertThat(cells).hasSize(1 + SEAM.tiers().standard().cells()).contains("control");
          } else {
            assertThat(cells).isEqualTo(cells(sewn, student));
          }
          cells.forEach(cell -> times.computeIfPresent(cell, (label, n) -> n + 1));
        });
    int open2 = open.values().stream().mapToInt(List::size).sum();
    if (open2 > 2 * SEAM.cellCount()) {
      assertThat(times.values().stream().max(Integer::compare).orElseThrow())
          .isLessThanOrEqualTo(1 + times.values().stream().min(Integer::compare).orElseThrow());
    }
  }

  @Test
  void nothingChangesWhenNobodyCameOrLeft() {
    List<PlanStudent> students = List.of(student(1), student(2), student(3));
    Map<UUID, List<String>> cells = new HashMap<>();
    PlanPieces.plan(ask(students, 4))
        .forEach(
            each ->
                cells.computeIfAbsent(each.studentId(), id -> new ArrayList<>()).add(each.cell()));
    List<Replan.Has<String>> has =
        cells.entrySet().stream()
            .map(each -> new Replan.Has<>(each.getKey(), List.of(), each.getValue(), 5))
            .toList();
    Replan.Change<PieceToSew, String> change = ReplanPieces.of(ask(students, 99), has);
    assertThat(change.added()).isEmpty();
    assertThat(change.back()).isEmpty();
  }

  @Test
  void aNewcomersPiecesComeAfterTheControlAndWhatIsTakenBackIsReplacedAtTheEnd() {
    PlanStudent here = student(1);
    List<String> held =
        List.of("control", "cloth=b width=1 length=1.5", "cloth=a width=1 length=2.5");
    Replan.Has<String> has = new Replan.Has<>(here.id(), List.of("control"), held.subList(1, 3), 3);
    PlanStudent noRib = new PlanStudent(here.id(), Tier.CORE, null, Set.of(), Set.of("b"));
    Replan.Change<PieceToSew, String> change =
        ReplanPieces.of(ask(List.of(noRib, student(2)), 3), List.of(has));
    assertThat(change.back())
        .containsExactly(new Replan.Back<>(here.id(), "cloth=b width=1 length=1.5"));
    assertThat(change.added())
        .filteredOn(each -> each.studentId().equals(here.id()))
        .singleElement()
        .satisfies(each -> assertThat(each.place()).isEqualTo(4))
        .satisfies(each -> assertThat(each.slot()).isEqualTo("a"));
    assertThat(change.added())
        .filteredOn(each -> each.studentId().equals(student(2).id()))
        .extracting(PieceToSew::place)
        .containsExactly(1, 2, 3, 4, 5);
  }
}
