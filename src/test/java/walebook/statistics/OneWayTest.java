package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static walebook.statistics.Figures.known;
import static walebook.statistics.Figures.sample;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.statistics.inference.OneWayAnova;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OneWayTest {

  /** NIST Statistical Reference Datasets, analysis of variance, SiRstv: certified values. */
  @Test
  void equalsCertifiedSiRstv() {
    OneWay found = OneWay.of(Figures.samples(Figures.rows("nist-sirstv.csv"), 0, 1));
    assertThat(found.dfBetween()).isEqualTo(4);
    assertThat(found.dfWithin()).isEqualTo(20);
    assertThat(found.ssBetween()).isCloseTo(5.11462616000000E-02, within(5e-13));
    assertThat(found.ssWithin()).isCloseTo(2.16636560000000E-01, within(5e-13));
    assertThat(known(found.f())).isCloseTo(1.18046237440255, within(1e-11));
    assertThat(known(found.residualSd())).isCloseTo(0.104076068334656, within(1e-13));
    assertThat(known(found.rSquared())).isCloseTo(0.190999039051129, within(2e-12));
  }

  /**
   * NIST StRD, analysis of variance, AtmWtAg: certified values (data and values from memory). The
   * data agree to seven digits, so nine are all that doubles allow.
   */
  @Test
  void equalsCertifiedAtmWtAg() {
    OneWay found = OneWay.of(Figures.samples(Figures.rows("nist-atmwtag.csv"), 0, 1));
    assertThat(found.n()).isEqualTo(48);
    assertThat(known(found.f())).isCloseTo(1.59467335677930E+01, within(1e-8));
    assertThat(known(found.residualSd())).isCloseTo(1.51048314446410E-05, within(1e-14));
    assertThat(known(found.rSquared())).isCloseTo(2.57426544538321E-01, within(1e-9));
  }

  /**
   * NIST StRD, SmLs01 and SmLs04: nine groups of 21 about an offset (rule from memory; the
   * certified values, F 21 and deviation 0.1, follow from it exactly). At an offset of a million
   * the values themselves are held to 1e-10 only.
   */
  @ParameterizedTest
  @CsvSource({"1, 1e-12", "1000000, 1e-7"})
  void offsetsCostNoMoreThanTheDoublesThemselves(double offset, double relative) {
    double[] step = {0.4, 0.3, 0.5, 0.3, 0.5, 0.3, 0.5, 0.3, 0.5};
    List<Sample> samples = new ArrayList<>();
    for (int g = 0; g < step.length; g++) {
      List<Double> values = new ArrayList<>(List.of(offset + step[g]));
      for (int k = 0; k < 10; k++) {
        values.add(offset + step[g] - 0.1);
        values.add(offset + step[g] + 0.1);
      }
      samples.add(new Sample("g" + g, values));
    }
    OneWay found = OneWay.of(samples);
    assertThat(known(found.f())).isCloseTo(21, within(21 * relative));
    assertThat(known(found.residualSd())).isCloseTo(0.1, within(0.1 * relative));
    assertThat(known(found.rSquared())).isCloseTo(1.68 / 3.48, within(relative));
  }

  /** Apache Commons Statistics' one-way analysis on made samples of uneven size. */
  @Test
  void agreesWithAGeneralLibrary() {
    for (int seed = 0; seed < 50; seed++) {
      Random random = new Random(seed);
      List<Sample> samples = new ArrayList<>();
      List<double[]> arrays = new ArrayList<>();
      for (int g = 0; g < 2 + random.nextInt(6); g++) {
        double[] values = random.doubles(2 + random.nextInt(7), 90, 110).toArray();
        arrays.add(values);
        samples.add(new Sample("g" + g, Arrays.stream(values).boxed().toList()));
      }
      var library = OneWayAnova.withDefaults().test(arrays);
      OneWay found = OneWay.of(samples);
      assertThat(known(found.f()))
          .as("seed %d", seed)
          .isCloseTo(library.getStatistic(), within(1e-9));
      assertThat(known(found.p())).as("seed %d", seed).isCloseTo(library.getPValue(), within(1e-9));
    }
  }

  @Test
  void oneGroupNoRepeatsAndNoScatterTellWhatTheyCan() {
    OneWay one = OneWay.of(List.of(sample("a", 1.0, 2.0)));
    assertThat(one.f()).isNull();
    assertThat(one.residualSd()).isNotNull();
    OneWay single = OneWay.of(List.of(sample("a", 1.0), sample("b", 2.0)));
    assertThat(single.f()).isNull();
    assertThat(single.residualSd()).isNull();
    OneWay same = OneWay.of(List.of(sample("a", 0.1, 0.1), sample("b", 0.1, 0.1)));
    assertThat(same.f()).isNull();
    assertThat(same.rSquared()).isNull();
    assertThat(same.residualSd()).isZero();
  }

  @Test
  void refusesNothingAndTwinNames() {
    assertThatIllegalArgumentException().isThrownBy(() -> OneWay.of(List.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OneWay.of(List.of(sample("a", 1.0), sample("a", 2.0))))
        .withMessageContaining("repeats: a");
  }
}
