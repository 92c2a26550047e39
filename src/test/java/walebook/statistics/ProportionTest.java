package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionTest {

  /**
   * R. G. Newcombe, Statistics in Medicine 17 (1998) 857–872, Table I, methods 3 and 5 (four
   * decimals printed); 18 of 20 is printed with six digits by the R package binom.
   */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2553, 0.3662, 0.2527, 0.3676, 5e-5",
    "15, 148, 0.0624, 0.1605, 0.0578, 0.1617, 5e-5",
    "0, 20, 0, 0.1611, 0, 0.1684, 5e-5",
    "1, 29, 0.0061, 0.1718, 0.0009, 0.1776, 5e-5",
    "18, 20, 0.698966, 0.972134, 0.683017, 0.987651, 5e-7"
  })
  void equalsPrintedIntervals(
      int x, int n, double wilsonLow, double wilsonHigh, double low, double high, double within) {
    Proportion rate = new Proportion(x, n);
    assertThat(rate.wilson(0.95).low()).isCloseTo(wilsonLow, within(within));
    assertThat(rate.wilson(0.95).high()).isCloseTo(wilsonHigh, within(within));
    assertThat(rate.exact(0.95).low()).isCloseTo(low, within(within));
    assertThat(rate.exact(0.95).high()).isCloseTo(high, within(within));
  }

  /** NIST/SEMATECH e-Handbook of Statistical Methods 7.2.4.2: 4 of 20, 90 % exact; arithmetic. */
  @Test
  void exactIntervalAtNinetyPercent() {
    Interval exact = new Proportion(4, 20).exact(0.90);
    assertThat(exact.low()).isCloseTo(0.071354, within(5e-7));
    assertThat(exact.high()).isCloseTo(0.401028, within(5e-7));
  }

  /** Closed form for none of n: 1 − (α/2)^(1/n). */
  @ParameterizedTest
  @CsvSource({"1", "5", "10", "77"})
  void noneOfNHasTheClosedForm(int n) {
    Interval exact = new Proportion(0, n).exact(0.95);
    assertThat(exact.low()).isZero();
    assertThat(exact.high()).isCloseTo(1 - Math.pow(0.025, 1.0 / n), within(1e-12));
  }

  /** The class-sized table of the arithmetic: Wilson's quadratic is solved by its own limits. */
  @Test
  void wilsonLimitsSolveTheScoreEquation() {
    double z = 1.959963984540054;
    for (int n = 1; n <= 40; n++) {
      for (int x = 0; x <= n; x++) {
        Proportion rate = new Proportion(x, n);
        Interval wilson = rate.wilson(0.95);
        for (double limit : new double[] {wilson.low(), wilson.high()}) {
          double score = Math.pow(rate.share() - limit, 2);
          assertThat(score).isCloseTo(z * z * limit * (1 - limit) / n, within(1e-12));
        }
      }
    }
  }

  @Test
  void intervalsStayInsideMirrorAndNeverCollapse() {
    for (int n = 1; n <= 60; n++) {
      for (int x = 0; x <= n; x++) {
        Proportion rate = new Proportion(x, n);
        for (Interval one : new Interval[] {rate.wilson(0.95), rate.exact(0.95)}) {
          assertThat(one.low()).isBetween(0.0, rate.share());
          assertThat(one.high()).isBetween(rate.share(), 1.0);
          assertThat(one.width()).isPositive();
        }
        Interval mirrored = rate.others().exact(0.95);
        assertThat(mirrored.low()).isCloseTo(1 - rate.exact(0.95).high(), within(1e-10));
      }
    }
  }

  /**
   * Brown, Cai and DasGupta, Statistical Science 16 (2001) 101–133: for n = 50 Wilson's actual
   * coverage swings about 95 % while the exact interval never covers less; both by exact summation.
   */
  @Test
  void coverageByExactSummation() {
    int n = 50;
    double mean = 0;
    int grid = 0;
    for (double p = 0.01; p < 0.995; p += 0.01) {
      double wilson = 0;
      double exact = 0;
      double chance = Math.pow(1 - p, n);
      for (int x = 0; x <= n; x++) {
        Proportion rate = new Proportion(x, n);
        wilson += rate.wilson(0.95).contains(p) ? chance : 0;
        exact += rate.exact(0.95).contains(p) ? chance : 0;
        chance *= (double) (n - x) / (x + 1) * p / (1 - p);
      }
      assertThat(exact).isGreaterThanOrEqualTo(0.95 - 1e-9);
      mean += wilson;
      grid++;
    }
    assertThat(mean / grid).isBetween(0.945, 0.96);
  }

  @Test
  void refusesWhatIsNoProportion() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Proportion(0, 0))
        .withMessageContaining("n ");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Proportion(4, 3))
        .withMessageContaining("count");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Proportion(1, 3).wilson(95))
        .withMessageContaining("confidence");
  }
}
