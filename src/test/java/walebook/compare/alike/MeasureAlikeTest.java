package walebook.compare.alike;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.compare.Names;
import walebook.compare.odd.FindOdd;
import walebook.compare.odd.OddFindings;
import walebook.compare.odd.OddReading;
import walebook.record.ClothReading;
import walebook.record.CutEdge;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.How;
import walebook.record.Pull;
import walebook.record.Stamp;
import walebook.words.Words;

class MeasureAlikeTest {
  private static final UUID CLOTH = id("cloth");
  private static final Words WORDS = Words.english();

  private final List<ClothReading> readings = new ArrayList<>();
  private final Map<String, String> names = new HashMap<>(Map.of(CLOTH.toString(), "Grey jersey"));

  private static UUID id(String name) {
    return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
  }

  private MeasureAlikeTest read(String who, Grain grain, int cycle, double... stretches) {
    names.put(id(who).toString(), who);
    for (double each : stretches) {
      readings.add(
          new ClothReading(
              id("r" + readings.size()),
              CLOTH,
              null,
              null,
              id(who),
              grain,
              100,
              100 + each,
              null,
              new How(Fold.FOLDED, Pull.FIRM, null, null, null),
              CutEdge.INSIDE,
              cycle,
              LocalDate.of(2026, 10, 5),
              "",
              Stamp.fresh(Instant.parse("2026-10-05T18:30:00Z"))));
    }
    return this;
  }

  private MeasureAlike found(UUID... setAside) {
    return MeasureAlike.of(readings, Names.given(names), Set.of(setAside), 0.95);
  }

  private AlikeStudy study() {
    return found().studies().get(0);
  }

  private List<String> says() {
    List<String> says = new ArrayList<>();
    AlikeFindings.of(study()).forEach(each -> says.add(WORDS.say(each)));
    AlikeFindings.practise(study()).forEach(each -> says.add(WORDS.say(each)));
    assertThat(says).noneMatch(each -> each.contains("NaN") || each.contains("[compare"));
    return says;
  }

  /** ASTM E691-99, glucose in serum, materials B and D, as if they were readings of a cloth. */
  @ParameterizedTest
  @CsvSource({"B, 1.4949, 4.186, 4.423", "D, 2.6251, 7.350, 9.424"})
  void equalsTheGlucoseExample(String material, double sr, double one, double two)
      throws IOException {
    String file = "/walebook/statistics/astm-e691-glucose.csv";
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(
                requireNonNull(MeasureAlikeTest.class.getResourceAsStream(file)),
                StandardCharsets.UTF_8))) {
      lines
          .lines()
          .skip(2)
          .map(line -> line.split(",", -1))
          .filter(cells -> cells[1].equals(material))
          .forEach(cells -> read(cells[0], Grain.COURSE, 1, Double.parseDouble(cells[2])));
    }
    AlikeStudy study = study();
    assertThat(study.people()).hasSize(8);
    assertThat(requireNonNull(found().repeatabilitySd())).isCloseTo(sr, within(5e-5));
    assertThat(found().degrees()).isEqualTo(16);
    assertThat(requireNonNull(study.repeatabilityLimit())).isCloseTo(one, within(5e-4));
    assertThat(requireNonNull(study.reproducibilityLimit())).isCloseTo(two, within(5e-4));
    // E691, table of critical values at 0.5 %, 8 laboratories: h 2.15 (from memory).
    assertThat(requireNonNull(study.criticalH())).isCloseTo(2.15, within(5e-3));
  }

  @Test
  void readingsOfAnotherGrainOrPullAreAnotherStudy() {
    read("Ada", Grain.COURSE, 1, 50, 52)
        .read("Bo", Grain.COURSE, 1, 51)
        .read("Ada", Grain.WALE, 1, 20);
    assertThat(found().studies()).hasSize(2);
    assertThat(study().people()).extracting(Person::who).containsExactly("Ada", "Bo");
  }

  @Test
  void whoReadsHighIsToldAndSentToPractise() {
    for (String who : List.of("Bo", "Cy", "Di", "Ed", "Fi", "Gus", "Hal")) {
      read(who, Grain.COURSE, 1, 50, 50.5, 49.5);
    }
    read("Ada", Grain.COURSE, 1, 60, 60.5, 59.5);
    Person ada = study().people().get(0);
    assertThat(ada.bias()).isEqualTo(Person.Bias.ODD);
    assertThat(says())
        .anyMatch(each -> each.startsWith("Ada reads higher than the room by 8.8 points"))
        .anyMatch(each -> each.startsWith("Ada: pull beside somebody else"))
        .noneMatch(each -> each.startsWith("Bo: pull"));
  }

  @Test
  void whoScattersIsSentToReadAgain() {
    for (String who : List.of("Bo", "Cy", "Di", "Ed", "Fi", "Gus", "Hal")) {
      read(who, Grain.COURSE, 1, 50, 50.5, 49.5);
    }
    read("Ada", Grain.COURSE, 1, 44, 50, 56);
    assertThat(study().people().get(0).scatter()).isEqualTo(Person.Scatter.ODD);
    assertThat(says())
        .anyMatch(each -> each.startsWith("Ada: read the same strip again"))
        .anyMatch(each -> each.startsWith("The readings of Ada scatter so much"))
        .noneMatch(each -> each.startsWith("So few readings"));
  }

  /** Two strips turned by the way: the limit is theirs, and neither of the two is to blame. */
  private void twoTurned() {
    read("Ada", Grain.COURSE, 1, 94, 24).read("Bo", Grain.COURSE, 1, 95, 25, 93);
    read("Cy", Grain.COURSE, 1, 96, 92).read("Di", Grain.COURSE, 1, 91, 97);
    read("Ed", Grain.COURSE, 1, 90, 95).read("Fi", Grain.COURSE, 1, 98, 94);
    read("Cy", Grain.WALE, 1, 22, 23).read("Di", Grain.WALE, 1, 21, 23, 24);
  }

  @Test
  void oddReadingsAreToldBeforeTheLimitThatTheyMake() {
    twoTurned();
    AlikeStudy study = study();
    double without = requireNonNull(requireNonNull(study.without()).reproducibilityLimit());
    assertThat(without).isLessThan(12);
    assertThat(requireNonNull(study.reproducibilityLimit())).isGreaterThan(50);
    double with = requireNonNull(study.reproducibilityLimit());
    assertThat(says())
        .startsWith(
            "Odd readings that nobody has looked at yet stand in here: Ada 24.0 %, Bo 25.0 %."
                + " Look at them first. Sentences, means and tables here are without"
                + " them.",
            WORDS.say("compare.alike.two-of-us", walebook.quantity.Show.fixed(without, 1)),
            WORDS.say("compare.alike.two-of-us-with", walebook.quantity.Show.fixed(with, 1)));
    assertThat(says()).contains("Readings counted here: 11, by students: 6.");
    assertThat(says())
        .anyMatch(each -> each.startsWith("Ada: look at the odd reading first (24.0 %)"))
        .anyMatch(each -> each.startsWith("Bo: look at the odd reading first (25.0 %)"))
        .noneMatch(each -> each.contains("read the same strip again"))
        .noneMatch(each -> each.contains("the room by"))
        .noneMatch(each -> each.startsWith("The readings of"));
  }

  @Test
  void whatTheTutorLookedAtIsOddNoMore() {
    twoTurned();
    UUID ada = readings.get(1).id();
    UUID bo = readings.get(3).id();
    MeasureAlike kept =
        MeasureAlike.of(readings, Names.given(names), Set.of(), Set.of(ada, bo), 0.95);
    assertThat(kept.studies().get(0).odd()).isEmpty();
    assertThat(kept.studies().get(0).without()).isNull();
  }

  @Test
  void aReadingAsAlongTheOtherGrainIsSaidToBeSo() {
    twoTurned();
    List<OddReading> odd = FindOdd.of(List.of(), found(), Names.given(names), List.of());
    assertThat(odd).extracting(OddReading::number).containsExactlyInAnyOrder(24.0, 25.0);
    assertThat(odd)
        .allMatch(
            each ->
                each.reasons().get(0) == OddReading.Reason.AS_OTHER_GRAIN
                    && each.reasons().contains(OddReading.Reason.FAR_FROM_MIDDLE));
    assertThat(WORDS.say(OddFindings.of(odd.get(0)).get(0)))
        .endsWith(
            "would be usual along another grain of this cloth, not along this one: was the"
                + " strip turned?");
    readings.removeIf(each -> each.grain() == Grain.WALE);
    assertThat(FindOdd.of(List.of(), found(), Names.given(names), List.of()))
        .noneMatch(each -> each.reasons().contains(OddReading.Reason.AS_OTHER_GRAIN));
  }

  @Test
  void twoOfUsMayDifferBySoMuch() {
    read("Ada", Grain.COURSE, 1, 50, 52)
        .read("Bo", Grain.COURSE, 1, 55, 57)
        .read("Cy", Grain.COURSE, 1, 51, 49);
    double limit = requireNonNull(study().reproducibilityLimit());
    assertThat(says())
        .contains(WORDS.say("compare.alike.two-of-us", walebook.quantity.Show.fixed(limit, 1)))
        .anyMatch(each -> each.startsWith("So few readings tell these limits only roughly"));
  }

  /** The upper 95 % limit over its estimate, by the chi-squared distribution of the library. */
  @Test
  void aRoughLimitIsSaidToBeAsRoughAsItIs() {
    for (int df = 1; df < 8; df++) {
      assertThat(beyond(df)).isGreaterThan(2);
    }
    assertThat(beyond(8)).isLessThan(2);
    read("Ada", Grain.COURSE, 1, 50, 52).read("Bo", Grain.COURSE, 1, 50);
    assertThat(says())
        .contains(
            "So few readings tell these limits only roughly: the true ones may be more than twice"
                + " as large.");
  }

  private static double beyond(int df) {
    return Math.sqrt(df / ChiSquaredDistribution.of(df).inverseCumulativeProbability(0.025));
  }

  @Test
  void whatCannotBeToldIsSaidToBeSo() {
    read("Ada", Grain.COURSE, 1, 50);
    assertThat(says())
        .contains(
            "Only one of us measured this, so it can’t be told whether two would agree.",
            "Nobody measured this twice, so it can’t be told what is measuring and what is us.");
    readings.clear();
    read("Ada", Grain.COURSE, 1, 50, 50).read("Bo", Grain.COURSE, 1, 50, 50);
    assertThat(study().reproducibilityLimit()).isNull();
    assertThat(says()).anyMatch(each -> each.startsWith("Everyone’s own readings are equal"));
    readings.clear();
    read("Ada", Grain.COURSE, 1, 50, 51)
        .read("Ada", Grain.COURSE, 2, 54)
        .read("Bo", Grain.COURSE, 1, 50);
    assertThat(says())
        .contains("With two of us it can’t be told who of the two is off.")
        .anyMatch(each -> each.startsWith("First and later stretches"));
  }

  @Test
  void whatIsSetAsideIsCountedAndLeftOut() {
    read("Ada", Grain.COURSE, 1, 50, 51, 90).read("Bo", Grain.COURSE, 1, 50);
    AlikeStudy study = found(readings.get(2).id()).studies().get(0);
    assertThat(study.setAside()).isEqualTo(1);
    assertThat(study.readings()).isEqualTo(3);
    assertThat(AlikeFindings.of(study).stream().map(WORDS::say))
        .contains("Left out, set aside by the tutor: 1.");
  }

  @Test
  void nothingReadGivesNoStudy() {
    assertThat(found().studies()).isEmpty();
    assertThat(found().repeatabilitySd()).isNull();
  }
}
