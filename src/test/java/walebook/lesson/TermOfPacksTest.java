package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import walebook.record.Tier;
import walebook.seam.Fault;
import walebook.tables.SharedTables;

/** What every pack of a term needs, so that a stranger can teach from it. */
class TermOfPacksTest {
  private static final Set<String> FAULTS = faults();

  /** What goes wrong with hand, rule or sum; a fault of a piece stands in the fault table. */
  private static final Set<String> SLIPS =
      Set.of(
          "backstitch-in-gauge",
          "cut-edge-stretched",
          "fold-rolled",
          "held-as-number",
          "no-rest",
          "pulled-too-hard",
          "readings-apart",
          "readings-creep",
          "readings-too-alike",
          "units-mixed",
          "wrong-base",
          "wrong-grain",
          "wrong-percent");

  /** Steps in which pieces are sewn or read, with what is done to them. */
  private static final Map<String, Set<String>> HANDS_ON =
      Map.ofEntries(
          Map.entry("measuring-stretch", Set.of("Stretch and read", "Let go, wait, read again")),
          Map.entry(
              "do-we-measure-alike",
              Set.of("Measure cloth A, all together", "Measure B and C on your own")),
          Map.entry("what-a-pattern-asks", Set.of("Measure the cloths")),
          Map.entry(
              "seam-that-stretches",
              Set.of(
                  "Sew the control piece",
                  "Sew your own pieces",
                  "Measure the edge, press, measure again",
                  "Pull, and say how it ended")),
          Map.entry(
              "needles-for-knits",
              Set.of("Sew the control piece", "Sew your own pieces", "Stretch once, and count")),
          Map.entry(
              "overlocker-and-allowance",
              Set.of(
                  "Sew the control piece", "Sew your own pieces", "Measure the edge, then pull")),
          Map.entry("ease-and-fit", Set.of("Measure what each cloth gives and gives back")),
          Map.entry(
              "which-way-round",
              Set.of(
                  "Sew the control piece", "Sew your own pieces", "Measure the edge, then pull")),
          Map.entry(
              "hems-that-stretch",
              Set.of(
                  "Sew the control piece",
                  "Sew your own pieces",
                  "Press, measure and grade",
                  "Pull to the need and beyond")),
          Map.entry(
              "bands-that-lie-flat",
              Set.of(
                  "Sew the control piece", "Sew your own bands", "Steam, wait, measure and grade")),
          Map.entry(
              "details-that-keep-the-stretch",
              Set.of("Sew the control piece", "Sew your own pieces", "Pull, rest, and look")),
          Map.entry(
              "garment-from-scraps",
              Set.of("Sew the control hem", "Sew your test hems", "Pull, and choose")));

  /** Cut parts of cloth that one test piece takes; two layers where nothing is said. */
  private static final Map<String, Integer> PARTS =
      Map.of("hems-that-stretch", 1, "garment-from-scraps", 1, "details-that-keep-the-stretch", 3);

  /** Cut parts for the garment itself, beside the test pieces. */
  private static final Map<String, Integer> FOR_THE_GARMENT = Map.of("garment-from-scraps", 2);

  static Stream<String> packs() {
    return BuiltInPacks.all().stream().map(PackSource::name);
  }

  private static Set<String> faults() {
    Set<String> keys = new HashSet<>();
    SharedTables.read().faults().stream().map(Fault::key).forEach(keys::add);
    return Set.copyOf(keys);
  }

  @Test
  void aTermIsTwelveLessons() {
    assertThat(Packs.all()).hasSize(12);
    assertThat(Packs.all()).extracting(each -> each.about().title()).doesNotHaveDuplicates();
    assertThat(Packs.all()).extracting(each -> each.plan().question()).doesNotHaveDuplicates();
    assertThat(HANDS_ON.keySet()).containsExactlyInAnyOrderElementsOf(packs().toList());
  }

  @ParameterizedTest
  @MethodSource("packs")
  void nothingAStrangerNeedsIsLeftOut(String name) {
    LessonPack pack = Packs.named(name);
    assertThat(new ReadPack().read(Packs.source(name)).problems()).isEmpty();
    LessonPack.Teaching teaching = pack.teaching();
    assertThat(teaching.aims()).hasSizeGreaterThanOrEqualTo(3);
    assertThat(teaching.cautions()).hasSizeGreaterThanOrEqualTo(3);
    assertThat(teaching.access()).hasSizeGreaterThanOrEqualTo(4);
    assertThat(teaching.trouble())
        .hasSizeGreaterThanOrEqualTo(5)
        .allMatch(each -> !each.steps().isEmpty(), "says at which steps it happens");
    assertThat(teaching.figures()).hasSizeGreaterThanOrEqualTo(5);
    assertThat(teaching.further()).isNotBlank();
    assertThat(pack.needs().forTheRoom()).isNotEmpty();
    assertThat(pack.text().opening()).hasSizeGreaterThanOrEqualTo(2);
    assertThat(pack.files().lessonMd()).contains("**Before the class:**");
    assertThat(pack.text().pictures()).hasSizeGreaterThanOrEqualTo(3);
    assertThat(pack.success())
        .anyMatch(each -> each.kind() == Success.Kind.LOGGED_AT_LEAST)
        .hasSizeGreaterThanOrEqualTo(2);
  }

  @ParameterizedTest
  @MethodSource("packs")
  void theMinutesAddUp(String name) {
    LessonPack pack = Packs.named(name);
    assertThat(pack.teaching().steps().stream().mapToInt(LessonPack.StepTime::minutes).sum())
        .isEqualTo(pack.about().minutes());
    assertThat(pack.teaching().steps()).allMatch(each -> each.minutes() >= 5);
  }

  @ParameterizedTest
  @MethodSource("packs")
  void everyFaultHasItsNameInTheTable(String name) {
    assertThat(Packs.named(name).teaching().trouble())
        .extracting(LessonPack.Trouble::fault)
        .allMatch(fault -> FAULTS.contains(fault) != SLIPS.contains(fault));
  }

  @Test
  void everySlipIsSpokenOf() {
    assertThat(SLIPS)
        .allMatch(
            slip ->
                Packs.all().stream()
                    .flatMap(each -> each.teaching().trouble().stream())
                    .anyMatch(each -> each.fault().equals(slip)));
  }

  /**
   * A class sews, measures and logs a piece in 8 minutes and reads a length three times in 8
   * (common practice: a beginner logs 3 to 5 pieces in 150 minutes).
   */
  @ParameterizedTest
  @MethodSource("packs")
  void thePlanFitsIntoTheTime(String name) {
    LessonPack pack = Packs.named(name);
    int given =
        pack.teaching().steps().stream()
            .filter(each -> HANDS_ON.getOrDefault(name, Set.of()).contains(each.heading()))
            .mapToInt(LessonPack.StepTime::minutes)
            .sum();
    assertThat(pack.teaching().steps())
        .extracting(LessonPack.StepTime::heading)
        .containsAll(HANDS_ON.getOrDefault(name, Set.of()));
    for (Tier tier : Tier.values()) {
      int control = controls(pack.plan());
      int units = pack.plan().tiers().of(tier).cells() + control;
      assertThat(8 * units).as("%s on the %s tier", name, tier).isLessThanOrEqualTo(given);
    }
    assertThat(pack.plan().tiers().core().cells())
        .isLessThanOrEqualTo(pack.plan().tiers().standard().cells());
  }

  @ParameterizedTest
  @MethodSource("packs")
  void thereIsClothForTheStandardPlan(String name) {
    LessonPack pack = Packs.named(name);
    double parts = 0;
    for (Material each : pack.needs().perStudent()) {
      parts += each.cloth() == null || each.count() == null ? 0 : each.count();
    }
    int cells = pack.plan().tiers().standard().cells();
    double wanted =
        pack.plan() instanceof PiecesPlan
            ? PARTS.getOrDefault(name, 2) * (cells + 1) + FOR_THE_GARMENT.getOrDefault(name, 0)
            : pack.plan().cloths().size();
    assertThat(parts).isGreaterThanOrEqualTo(wanted);
  }

  @ParameterizedTest
  @MethodSource("packs")
  void twelveStudentsCanTakeItUp(String name) {
    LessonPack pack = Packs.named(name);
    Map<String, UUID> cloths = new HashMap<>();
    pack.plan().cloths().forEach(each -> cloths.put(each.slot(), UUID.randomUUID()));
    List<PlanStudent> students =
        Stream.generate(() -> new PlanStudent(UUID.randomUUID(), Tier.STANDARD)).limit(12).toList();
    int cells = pack.plan().tiers().standard().cells();
    if (pack.plan() instanceof PiecesPlan pieces) {
      assertThat(PlanPieces.plan(pieces, pack.measure().readings(), students, cloths, 7))
          .hasSize(12 * (cells + 1))
          .filteredOn(PieceToSew::control)
          .hasSize(12);
    } else {
      assertThat(PlanReadings.plan((ReadingsPlan) pack.plan(), students, cloths, 7))
          .hasSize(12 * (cells + controls(pack.plan())));
    }
  }

  @ParameterizedTest
  @MethodSource("packs")
  void aControlIsNoneOfTheCombinations(String name) {
    if (Packs.named(name).plan() instanceof PiecesPlan plan) {
      assertThat(plan.cells())
          .extracting(each -> each.settings().values())
          .doesNotContain(plan.controlSettings().values());
    }
  }

  /** How many pieces or readings everybody takes on before the shared ones. */
  private static int controls(Plan plan) {
    return plan instanceof ReadingsPlan readings && readings.control() == null ? 0 : 1;
  }
}
