package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import walebook.record.Grain;
import walebook.record.Tier;

class PlanReadingsTest {
  private static final Map<String, UUID> CLOTHS =
      Stream.of("a", "b", "c", "d")
          .collect(Collectors.toMap(Function.identity(), each -> UUID.randomUUID()));

  static Stream<ReadingsPlan> plans() {
    return Packs.all().stream()
        .filter(each -> each.plan() instanceof ReadingsPlan)
        .map(each -> (ReadingsPlan) each.plan());
  }

  /** Counted over classes of every size up to thirty, tiers mixed. */
  @ParameterizedTest
  @MethodSource("plans")
  void whatIsSharedOutIsBalanced(ReadingsPlan plan) {
    for (int size = 1; size <= 30; size++) {
      List<PlanStudent> students = students(size);
      Map<ReadingsPlan.Cell, Integer> times = new HashMap<>();
      plan.cells().forEach(each -> times.put(each, 0));
      List<PlanReadings.ToMeasure> all = PlanReadings.plan(plan, students, CLOTHS, size);
      for (PlanReadings.ToMeasure each : all) {
        assertThat(each.repeats()).isEqualTo(plan.repeats());
        assertThat(each.clothId()).isEqualTo(CLOTHS.get(each.slot()));
        if (!each.control()) {
          times.merge(new ReadingsPlan.Cell(each.slot(), each.grain()), 1, Integer::sum);
        }
      }
      assertThat(times).hasSize(plan.cellCount());
      assertThat(Collections.max(times.values()) - Collections.min(times.values()))
          .isLessThanOrEqualTo(1);
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everybodyBeginsWithTheControlAndMeasuresNothingTwice(ReadingsPlan plan) {
    ReadingsPlan.Cell control = plan.control();
    int forAll = control == null ? 0 : 1;
    List<PlanStudent> students = students(17);
    Map<UUID, List<PlanReadings.ToMeasure>> byStudent =
        PlanReadings.plan(plan, students, CLOTHS, 3).stream()
            .collect(Collectors.groupingBy(PlanReadings.ToMeasure::studentId));
    for (PlanStudent student : students) {
      List<PlanReadings.ToMeasure> own =
          Objects.requireNonNull(byStudent.get(student.id()), "a plan for everybody");
      assertThat(own).hasSize(plan.tiers().of(student.tier()).cells() + forAll);
      assertThat(own)
          .extracting(each -> new ReadingsPlan.Cell(each.slot(), each.grain()))
          .doesNotHaveDuplicates();
      for (int i = 0; i < own.size(); i++) {
        assertThat(own.get(i).place()).isEqualTo(i + 1);
        assertThat(own.get(i).control()).isEqualTo(control != null && i == 0);
      }
      if (control != null) {
        assertThat(own.get(0).slot()).isEqualTo(control.slot());
        assertThat(own.get(0).grain()).isEqualTo(control.grain());
      }
    }
  }

  /** What a pack's words promise of cloth A and of a control, its plan keeps. */
  @Test
  void whereTheWordsSpeakOfAControlThePlanHasOne() {
    for (LessonPack pack : Packs.all()) {
      if (pack.plan() instanceof ReadingsPlan plan) {
        String said = Packs.words(pack) + pack.plan().cloths() + pack.plan().tiers();
        boolean promised = said.contains("control") || said.contains("with the whole class");
        ReadingsPlan.Cell control = plan.control();
        assertThat(control != null).as(pack.about().name()).isEqualTo(promised);
        if (control != null) {
          assertThat(control).isEqualTo(new ReadingsPlan.Cell("a", Grain.COURSE));
          for (Tier tier : Tier.values()) {
            assertThat(sheets(plan.tiers().of(tier))).isEqualTo(plan.tiers().of(tier).cells() + 1);
          }
        } else {
          for (Tier tier : Tier.values()) {
            assertThat(sheets(plan.tiers().of(tier))).isEqualTo(plan.tiers().of(tier).cells());
          }
        }
      }
    }
  }

  /** The sheets that a tier's words count out, the control among them. */
  private static int sheets(Tiers.Share share) {
    List<String> numbers = List.of("No", "One", "Two", "Three", "Four", "Five");
    String[] first = share.says().split(" ", 3);
    assertThat(first[1]).startsWith("sheets");
    return numbers.indexOf(first[0]);
  }

  @Test
  void aControlAlongAnotherGrainIsNoneOfTheCombinations() {
    ReadingsPlan plan = plans().filter(each -> each.grains().size() == 2).findFirst().orElseThrow();
    ReadingsPlan with =
        new ReadingsPlan(
            plan.question(),
            plan.cloths(),
            plan.grains(),
            new ReadingsPlan.Cell("a", Grain.BIAS),
            plan.repeats(),
            plan.tiers());
    assertThat(with.cellCount()).isEqualTo(plan.cloths().size() * 2);
  }

  private static List<PlanStudent> students(int count) {
    Random random = new Random(count);
    List<PlanStudent> students = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Tier tier = List.of(Tier.CORE, Tier.STANDARD, Tier.OWN).get(random.nextInt(3));
      students.add(new PlanStudent(new UUID(1, i), tier));
    }
    return students;
  }
}
