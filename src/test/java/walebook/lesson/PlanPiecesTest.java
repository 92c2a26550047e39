package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import walebook.record.Grain;
import walebook.record.MachineKind;
import walebook.record.Tier;
import walebook.working.Message;

class PlanPiecesTest {
  private static final PiecesPlan SEAM = (PiecesPlan) Packs.named("seam-that-stretches").plan();
  private static final UUID JERSEY = new UUID(0, 100);
  private static final UUID RIB = new UUID(0, 101);
  private static final Map<String, UUID> CLOTHS = Map.of("a", JERSEY, "b", RIB);

  @RepeatedTest(60)
  void isFairWhateverTheClass(RepetitionInfo round) {
    Random random = new Random(round.getCurrentRepetition());
    List<PlanStudent> students = students(1 + random.nextInt(30), random);
    long seed = random.nextLong();
    List<PieceToSew> pieces = PlanPieces.plan(SEAM, 1, students, CLOTHS, seed);
    assertThat(PlanPieces.plan(SEAM, 1, students, CLOTHS, seed)).isEqualTo(pieces);
    Map<String, Integer> sewn = new HashMap<>();
    SEAM.cells().forEach(cell -> sewn.put(cell.label(), 0));
    for (PlanStudent student : students) {
      List<PieceToSew> own =
          pieces.stream().filter(each -> each.studentId().equals(student.id())).toList();
      assertThat(own).hasSize(1 + SEAM.tiers().of(student.tier()).cells());
      assertThat(own.get(0).control()).isTrue();
      Set<String> cells = new HashSet<>();
      for (int i = 0; i < own.size(); i++) {
        assertThat(own.get(i).place()).isEqualTo(i + 1);
        assertThat(own.get(i).control()).isEqualTo(i == 0);
        assertThat(cells.add(own.get(i).cell())).isTrue();
        sewn.computeIfPresent(own.get(i).cell(), (cell, times) -> times + 1);
      }
    }
    assertThat(Collections.max(sewn.values()) - Collections.min(sewn.values()))
        .isLessThanOrEqualTo(1);
  }

  /** Ways to hem have names of several words, one of which may begin another. */
  @Test
  void aLevelMayHoldBlanks() {
    PiecesPlan.Factor hems =
        new PiecesPlan.Factor(
            SettingKey.HEM_METHOD, "", List.of("turned", "turned twice, pressed", "raw edge"));
    PiecesPlan.Factor widths =
        new PiecesPlan.Factor(SettingKey.WIDTH, "", List.of("1", "1.5", "edge"));
    PiecesPlan plan =
        new PiecesPlan(
            "", SEAM.cloths(), SEAM.fixed(), SEAM.control(), List.of(hems, widths), SEAM.tiers());
    String twice = "hem_method=turned twice, pressed";
    assertThat(plan.levelsIn("width=1.5 " + twice)).containsExactly("width=1.5", twice);
    assertThat(plan.levelsIn("hem_method=turned,width=1"))
        .containsExactly("hem_method=turned", "width=1");
    assertThat(plan.levelsIn("hem_method=turned thrice")).isEmpty();
    assertThat(plan.cells().get(4).levels()).containsExactly(twice, "width=1.5");
    PlanTable all = new PlanTable(plan, List.of(), List.of());
    // Nothing in common but by a word of their names: "turned" and "edge" are no levels.
    assertThat(all.likeness().applyAsInt(0, 4)).isZero();
    assertThat(all.likeness().applyAsInt(8, 5)).isEqualTo(1);
    assertThat(new PlanTable(plan, List.of(), List.of("hem_method=turned")).size()).isEqualTo(6);
    assertThat(new PlanTable(plan, List.of(), List.of(plan.cells().get(3).label())).size())
        .isEqualTo(8);
  }

  /** Settings can only be told from hands when the same hands sew several of them. */
  @RepeatedTest(20)
  void everyStudentComparesWidthsInTheirOwnHands(RepetitionInfo round) {
    List<PlanStudent> students =
        java.util.stream.Stream.generate(() -> new PlanStudent(UUID.randomUUID(), Tier.STANDARD))
            .limit(5)
            .toList();
    List<PieceToSew> pieces =
        PlanPieces.plan(SEAM, 1, students, CLOTHS, round.getCurrentRepetition());
    for (PlanStudent student : students) {
      assertThat(
              pieces.stream()
                  .filter(each -> each.studentId().equals(student.id()) && !each.control())
                  .map(each -> each.asked().dialWidth())
                  .distinct())
          .hasSizeGreaterThanOrEqualTo(2);
    }
  }

  /** Seven combinations in threes to seven students: Fano's plane (Fisher and Yates). */
  @RepeatedTest(5)
  void sevenInThreesIsFanosPlane(RepetitionInfo round) {
    PiecesPlan.Factor widths =
        new PiecesPlan.Factor(SettingKey.WIDTH, "w", List.of("0", "1", "2", "3", "4", "5", "6"));
    Tiers.Share three = new Tiers.Share(3, "");
    PiecesPlan plan =
        new PiecesPlan(
            SEAM.question(),
            SEAM.cloths(),
            new Settings(Map.of(SettingKey.CLOTH, "a")).over(SEAM.fixed()),
            SEAM.control(),
            List.of(widths),
            new Tiers(three, three, three));
    List<PieceToSew> pieces =
        PlanPieces.plan(plan, 1, students(7, new Random(1)), CLOTHS, round.getCurrentRepetition());
    PlanFairness fairness = fairness(plan, pieces);
    assertThat(fairness.leastSewn()).isEqualTo(3);
    assertThat(fairness.mostSewn()).isEqualTo(3);
    assertThat(fairness.leastTogether()).isEqualTo(1);
    assertThat(fairness.mostTogether()).isEqualTo(1);
    assertThat(fairness.efficiency().average()).isCloseTo(7.0 / 9, within(1e-12));
    assertThat(fairness.says())
        .extracting(Message::key)
        .containsExactly(
            "lesson.fair.sewn",
            "lesson.fair.together-once",
            "lesson.fair.factor",
            "lesson.fair.best");
  }

  @Test
  void whatIsMissingOrLeftOutIsGivenToNobodyWhoLacksIt() {
    PlanStudent noRib = new PlanStudent(new UUID(1, 1), Tier.STANDARD, 3, Set.of(), Set.of("b"));
    PlanStudent noMachine =
        new PlanStudent(new UUID(1, 2), Tier.OWN, null, Set.of(MachineKind.SEWING), Set.of());
    List<PlanStudent> students = new ArrayList<>(List.of(noRib, noMachine));
    students.addAll(students(6, new Random(2)).subList(3, 6));
    PlanPieces.Ask ask =
        new PlanPieces.Ask(
            SEAM,
            1,
            new ClassToPlan(students, CLOTHS, List.of("width=3", "cloth=b length=1.5"), 9));
    List<PieceToSew> pieces = PlanPieces.plan(ask);
    assertThat(PlanPieces.possible(ask)).isEqualTo(6);
    assertThat(pieces)
        .filteredOn(each -> !each.control())
        .noneMatch(each -> each.cell().contains("width=3"))
        .noneMatch(each -> each.cell().contains("cloth=b") && each.cell().contains("length=1.5"));
    assertThat(pieces)
        .filteredOn(each -> each.studentId().equals(noRib.id()))
        .hasSize(4)
        .noneMatch(each -> each.slot().equals("b"));
    assertThat(pieces)
        .filteredOn(each -> each.studentId().equals(noMachine.id()))
        .allMatch(PieceToSew::control);
    PlanFairness fairness = fairness(SEAM, pieces);
    assertThat(fairness.mostSewn() - fairness.leastSewn()).isLessThanOrEqualTo(1);
    assertThat(fairness.unsewn()).isEqualTo(6);
  }

  @Test
  void aPlanThatTellsNothingSaysSo() {
    PlanFairness apart =
        PlanFairness.of(List.of("a=1", "a=2", "a=3"), List.of(List.of("a=1"), List.of("a=2")));
    assertThat(apart.says())
        .extracting(Message::key)
        .containsExactly("lesson.fair.sewn-once", "lesson.fair.unsewn", "lesson.fair.alone");
    PlanFairness parts =
        PlanFairness.of(
            List.of("a", "b", "c", "d"), List.of(List.of("a", "b"), List.of("c", "d", "control")));
    assertThat(parts.says()).extracting(Message::key).contains("lesson.fair.parts");
    assertThat(PlanFairness.of(List.of("a"), List.of()).says())
        .extracting(Message::key)
        .containsExactly("lesson.fair.nothing");
  }

  private static PlanFairness fairness(PiecesPlan plan, List<PieceToSew> pieces) {
    Map<UUID, List<String>> hands = new HashMap<>();
    pieces.forEach(
        each -> hands.computeIfAbsent(each.studentId(), id -> new ArrayList<>()).add(each.cell()));
    return PlanFairness.of(
        plan.cells().stream().map(PiecesPlan.Cell::label).toList(), List.copyOf(hands.values()));
  }

  @Test
  void anotherSeedGivesAnotherPlan() {
    List<PlanStudent> students = students(12, new Random(1));
    assertThat(PlanPieces.plan(SEAM, 1, students, CLOTHS, 1))
        .isNotEqualTo(PlanPieces.plan(SEAM, 1, students, CLOTHS, 2));
  }

  @Test
  void aPieceAsksForItsLevelsAndTheFixedRest() {
    List<PieceToSew> pieces = PlanPieces.plan(SEAM, 2, students(12, new Random(3)), CLOTHS, 3);
    PieceToSew control = pieces.get(0);
    assertThat(control.cell()).isEqualTo("control");
    assertThat(control.asked().stitchType()).isEqualTo("301");
    assertThat(control.asked().dialWidth()).isZero();
    assertThat(control.clothId()).isEqualTo(JERSEY);
    for (PieceToSew each : pieces) {
      assertThat(each.asked().grain()).isEqualTo(Grain.COURSE);
      assertThat(each.asked().readings()).isEqualTo(2);
      if (!each.control()) {
        assertThat(each.asked().stitchType()).isEqualTo("304");
        assertThat(each.cell()).startsWith("cloth=" + each.slot() + " width=");
        assertThat(each.clothId()).isEqualTo(each.slot().equals("a") ? JERSEY : RIB);
      }
    }
  }

  @Test
  void anEmptyClassAndClothsNotYetChosenAreFine() {
    assertThat(PlanPieces.plan(SEAM, 1, List.of(), CLOTHS, 1)).isEmpty();
    List<PlanStudent> one = students(1, new Random(1));
    assertThat(PlanPieces.plan(SEAM, 1, one, Map.of(), 1))
        .allSatisfy(each -> assertThat(each.clothId()).isNull());
    List<PlanStudent> twice = List.of(one.get(0), one.get(0));
    assertThatThrownBy(() -> PlanPieces.plan(SEAM, 1, twice, CLOTHS, 1))
        .hasMessageContaining("students");
  }

  private static List<PlanStudent> students(int count, Random random) {
    List<PlanStudent> students = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Tier tier = List.of(Tier.CORE, Tier.STANDARD, Tier.OWN).get(random.nextInt(3));
      students.add(new PlanStudent(new UUID(1, i), tier));
    }
    return students;
  }
}
