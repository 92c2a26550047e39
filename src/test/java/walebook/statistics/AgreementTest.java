package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static walebook.statistics.Figures.known;
import static walebook.statistics.Figures.sample;
import static walebook.statistics.Figures.there;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AgreementTest {

  private static Agreement glucose(String material) {
    List<String[]> rows =
        Figures.rows("astm-e691-glucose.csv").stream().filter(r -> r[1].equals(material)).toList();
    return Agreement.of(Figures.samples(rows, 0, 2), 0.95);
  }

  /**
   * ASTM E691-99, glucose in serum, 8 laboratories of 3: materials A, B and D (data as in its table
   * 1, results by its formulas).
   */
  @ParameterizedTest
  @CsvSource({
    "A, 41.5183, 0.6061, 1.0632, 1.0632, 2.977, 2.977, true",
    "B, 79.6796, 1.0028, 1.4949, 1.5796, 4.186, 4.423, false",
    "D, 194.7171, 2.5950, 2.6251, 3.3657, 7.350, 9.424, false"
  })
  void equalsTheGlucoseExample(
      String material,
      double mean,
      double sx,
      double sr,
      double sR,
      double r,
      double big,
      boolean clamped) {
    Agreement found = glucose(material);
    assertThat(found.meanOfMeans()).isCloseTo(mean, within(5e-5));
    assertThat(known(found.sdOfMeans())).isCloseTo(sx, within(5e-5));
    assertThat(known(found.repeatabilitySd())).isCloseTo(sr, within(5e-5));
    assertThat(known(found.reproducibilitySd())).isCloseTo(sR, within(5e-5));
    assertThat(known(found.repeatabilityLimit())).isCloseTo(r, within(5e-4));
    assertThat(known(found.reproducibilityLimit())).isCloseTo(big, within(5e-4));
    assertThat(found.clamped()).isEqualTo(clamped);
  }

  /** The unclamped s_L² of material A is −0.0094: cut off at nought, and said so. */
  @Test
  void aNegativeComponentIsKeptBesideTheNought() {
    Agreement found = glucose("A");
    assertThat(known(found.betweenVariance())).isCloseTo(-0.0094, within(5e-5));
    assertThat(found.betweenSd()).isZero();
  }

  /** ASTM E691, critical values at 0.5 %: p = 8: h 2.15, and k 2.06 for n = 3 (from memory). */
  @Test
  void criticalValuesOfTheStandard() {
    Agreement found = glucose("B");
    assertThat(known(found.criticalH())).isCloseTo(2.15, within(5e-3));
    assertThat(known(found.members().get(0).criticalK())).isCloseTo(2.06, within(5e-3));
  }

  /** ISO 5725-6: single readings give R back, many readings leave 2.8 s_L. */
  @Test
  void criticalDifferenceOfMeans() {
    Agreement found = glucose("D");
    double single = known(found.criticalDifference(1, 1));
    assertThat(single).isCloseTo(known(found.reproducibilityLimit()), within(1e-12));
    double sr = known(found.repeatabilitySd());
    double sR = known(found.reproducibilitySd());
    double standard = 2.8 * Math.sqrt(sR * sR - sr * sr * (1 - 1.0 / 6 - 1.0 / 10));
    assertThat(known(found.criticalDifference(3, 5))).isCloseTo(standard, within(1e-12));
    assertThat(known(found.criticalDifference(1_000_000, 1_000_000)))
        .isCloseTo(2.8 * known(found.betweenSd()), within(1e-4));
    assertThatIllegalArgumentException().isThrownBy(() -> found.criticalDifference(0, 1));
  }

  /** GUM (JCGM 100:2008) H.5: ten days of five, from the day means and deviations it prints. */
  @Test
  void guideH5() {
    int[] means = {172, 116, 13, 144, 106, 31, 60, 125, 163, 41};
    double[] deviations = {60, 77, 111, 101, 67, 93, 80, 73, 88, 86};
    List<Sample> days = new ArrayList<>();
    for (int i = 0; i < means.length; i++) {
      double step = deviations[i] * Math.sqrt(4.0 / 10);
      double mean = means[i];
      days.add(
          sample("day " + i, mean - 2 * step, mean - step, mean, mean + step, mean + 2 * step));
    }
    Agreement found = Agreement.of(days, 0.95);
    assertThat(found.meanOfMeans()).isCloseTo(97, within(0.5));
    assertThat(known(found.sdOfMeans())).isCloseTo(57, within(0.5));
    assertThat(known(found.repeatabilitySd())).isCloseTo(85, within(0.5));
    assertThat(known(found.oneWay().f())).isCloseTo(2.25, within(0.015));
    assertThat(known(found.betweenSd())).isCloseTo(43, within(0.5));
  }

  /** The biases' intervals against the full covariance of the means, by a sum over people. */
  @Test
  void biasesSumToNoughtAndTheirErrorFollowsFromTheMeans() {
    List<Sample> uneven =
        List.of(
            sample("a", 10.0, 11.0, 12.5),
            sample("b", 9.0, 9.5),
            sample("c", 14.0, 13.0, 13.5, 12.0),
            sample("d", 11.0));
    Agreement found = Agreement.of(uneven, 0.9);
    assertThat(found.members().stream().mapToDouble(Member::bias).sum())
        .isCloseTo(0, within(1e-12));
    double sr = known(found.repeatabilitySd());
    double t = 1.943180280515303;
    int[] n = {3, 2, 4, 1};
    for (int i = 0; i < n.length; i++) {
      double variance = 0;
      for (int j = 0; j < n.length; j++) {
        double weight = (i == j ? 1 : 0) - 0.25;
        variance += weight * weight / n[j];
      }
      Interval interval = there(found.members().get(i).biasInterval());
      assertThat(interval.width() / 2).isCloseTo(t * sr * Math.sqrt(variance), within(1e-9));
    }
    assertThat(found.members().get(3).k()).isNull();
    assertThat(found.members().get(3).h()).isNotNull();
  }

  @Test
  void onePersonNoRepeatsOrNoScatterGiveNoFalseNumbers() {
    Agreement one = Agreement.of(List.of(sample("a", 1.0, 2.0)), 0.95);
    assertThat(one.repeatabilitySd()).isNotNull();
    assertThat(one.reproducibilitySd()).isNull();
    assertThat(one.members().get(0).biasInterval()).isNull();
    Agreement once = Agreement.of(List.of(sample("a", 1.0), sample("b", 2.0)), 0.95);
    assertThat(once.repeatabilitySd()).isNull();
    assertThat(once.reproducibilityLimit()).isNull();
    Agreement same = Agreement.of(List.of(sample("a", 1.0, 1.0), sample("b", 1.0, 1.0)), 0.95);
    assertThat(same.members().get(0).h()).isNull();
    assertThat(same.members().get(0).k()).isNull();
    assertThat(same.members().get(0).biasInterval()).isNull();
  }

  @Test
  void invariantsOverMadeClasses() {
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      List<Sample> samples = new ArrayList<>();
      int people = 2 + random.nextInt(8);
      for (int i = 0; i < people; i++) {
        List<Double> values = random.doubles(2 + random.nextInt(4), 140, 160).boxed().toList();
        samples.add(new Sample("p" + i, values));
      }
      Agreement found = Agreement.of(samples, 0.95);
      double k2 = 0;
      for (Member member : found.members()) {
        k2 += known(member.k()) * known(member.k()) * (member.summary().n() - 1);
      }
      assertThat(k2).as("seed %d", seed).isCloseTo(found.oneWay().dfWithin(), within(1e-9));
      assertThat(known(found.reproducibilitySd()))
          .as("seed %d", seed)
          .isGreaterThanOrEqualTo(known(found.repeatabilitySd()));
    }
  }
}
