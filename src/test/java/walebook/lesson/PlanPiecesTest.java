package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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
import walebook.record.Tier;

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

  /**
   * Fano's plane is the published balanced incomplete block design of 7 treatments in 7 blocks of 3
   * (Fisher and Yates, Statistical Tables): each pair once. A greedy plan comes near: no pair is
   * met more than three times, and no treatment more or less than three times.
   */
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

  @RepeatedTest(20)
  void pairsSpreadOut(RepetitionInfo round) {
    List<List<Integer>> blocks =
        AllotCells.allot(
            Collections.nCopies(7, 3),
            7,
            (one, other) -> 0,
            new Random(round.getCurrentRepetition()));
    int[] times = new int[7];
    Map<Set<Integer>, Integer> pairs = new HashMap<>();
    for (List<Integer> block : blocks) {
      assertThat(block).hasSize(3).doesNotHaveDuplicates();
      block.forEach(each -> times[each]++);
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < i; j++) {
          pairs.merge(Set.of(block.get(i), block.get(j)), 1, Integer::sum);
        }
      }
    }
    assertThat(times).containsOnly(3);
    assertThat(Collections.max(pairs.values())).isLessThanOrEqualTo(3);
    assertThat(pairs).hasSizeGreaterThanOrEqualTo(14); // of 21
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

  @Test
  void readingsAreSharedOutTheSameWay() {
    ReadingsPlan plan = (ReadingsPlan) Packs.named("measuring-stretch").plan();
    List<PlanStudent> students = students(12, new Random(4));
    List<PlanReadings.ToMeasure> all = PlanReadings.plan(plan, students, CLOTHS, 4);
    Map<String, Integer> times = new HashMap<>();
    all.forEach(each -> times.merge(each.slot() + each.grain().key(), 1, Integer::sum));
    assertThat(times).hasSize(6);
    assertThat(Collections.max(times.values()) - Collections.min(times.values()))
        .isLessThanOrEqualTo(1);
    assertThat(all).allSatisfy(each -> assertThat(each.repeats()).isEqualTo(3));
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
