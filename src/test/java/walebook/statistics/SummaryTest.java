package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static walebook.statistics.Figures.known;
import static walebook.statistics.Figures.there;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SummaryTest {

  /** NIST Statistical Reference Datasets, univariate: certified mean and standard deviation. */
  @ParameterizedTest
  @CsvSource({
    "nist-michelso.csv, 299.852400000000, 0.0790105478190518, 1e-11",
    "nist-lew.csv, -177.435000000000, 277.332168044316, 1e-14",
    "nist-mavro.csv, 2.00185600000000, 0.000429123454003053, 1e-11"
  })
  void equalsCertifiedValues(String file, double mean, double sd, double relative) {
    Summary summary = Summary.of(Figures.column(file, 0));
    assertThat(summary.mean()).isCloseTo(mean, within(1e-14 * Math.abs(mean)));
    assertThat(known(summary.sd())).isCloseTo(sd, within(relative * sd));
  }

  /**
   * NIST StRD NumAcc4: mean 10000000.2 and standard deviation 0.1 exactly. The values themselves
   * are held to 1e-9 only, so eight digits of the deviation are all that doubles allow.
   */
  @Test
  void largeOffsetCostsNoMoreThanTheDoublesThemselves() {
    List<Double> values = new ArrayList<>(List.of(10000000.2));
    for (int i = 0; i < 500; i++) {
      values.add(10000000.1);
      values.add(10000000.3);
    }
    Summary summary = Summary.of(values);
    assertThat(summary.mean()).isCloseTo(10000000.2, within(2e-9));
    assertThat(known(summary.sd())).isCloseTo(0.1, within(1e-9));
  }

  /** NIST StRD NumAcc1: 10000001, 10000003, 10000002 have mean 10000002 and deviation 1. */
  @Test
  void numAcc1IsExact() {
    Summary summary = Summary.of(List.of(10000001.0, 10000003.0, 10000002.0));
    assertThat(summary.mean()).isEqualTo(10000002);
    assertThat(summary.sd()).isEqualTo(1.0);
  }

  /** Student's sleep data, second drug (Biometrika 6, 1908): mean 2.33, s 2.0022; t 2.262 on 9. */
  @Test
  void tIntervalOfStudentsSleepData() {
    Summary summary = Summary.of(List.of(1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4));
    assertThat(summary.mean()).isCloseTo(2.33, within(1e-12));
    assertThat(known(summary.sd())).isCloseTo(2.002249, within(5e-7));
    Interval interval = there(summary.tInterval(0.95));
    assertThat(interval.low()).isCloseTo(2.33 - 2.262157 * 0.633167, within(1e-5));
    assertThat(interval.high()).isCloseTo(2.33 + 2.262157 * 0.633167, within(1e-5));
  }

  @Test
  void oneValueOrEqualValuesGiveNoInterval() {
    assertThat(Summary.of(List.of(5.0)).sd()).isNull();
    assertThat(Summary.of(List.of(5.0)).tInterval(0.95)).isNull();
    Summary same = Summary.of(List.of(0.1, 0.1, 0.1));
    assertThat(same.sd()).isZero();
    assertThat(same.mean()).isEqualTo(0.1);
    assertThat(same.tInterval(0.95)).isNull();
  }

  /** 0.1 + 0.2 is not 0.3 in doubles: that is no scatter. */
  @Test
  void roundingIsNotTakenForScatter() {
    Summary summary = Summary.of(List.of(0.1 + 0.2, 0.3, 0.3));
    assertThat(summary.sd()).isZero();
    assertThat(summary.tInterval(0.95)).isNull();
    assertThat(Robust.of(List.of(0.1 + 0.2, 0.3, 0.3)).isOdd(0.31)).isFalse();
  }

  @Test
  void refusesNothingAndNonsense() {
    assertThatIllegalArgumentException().isThrownBy(() -> Summary.of(List.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Summary.of(List.of(1.0, Double.NaN)))
        .withMessageContaining("values[1]");
  }

  /** Definition 7 of Hyndman and Fan (1996), by its formula, for 1, 2, 4, 8: 1.75, 3, 5. */
  @Test
  void fiveNumbersInterpolate() {
    FiveNumbers range = FiveNumbers.of(List.of(8.0, 1.0, 4.0, 2.0));
    assertThat(range).isEqualTo(new FiveNumbers(4, 1, 1.75, 3, 5, 8));
    assertThat(FiveNumbers.of(List.of(3.0))).isEqualTo(new FiveNumbers(1, 3, 3, 3, 3, 3));
  }
}
