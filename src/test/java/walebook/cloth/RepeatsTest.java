package walebook.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.working.Working;

class RepeatsTest {

  @Test
  void numAcc1() {
    // NIST StRD NumAcc1: certified mean 10000002, standard deviation 1, exact.
    Repeats.Spread spread = Repeats.spread(List.of(10000001.0, 10000003.0, 10000002.0), 95);
    assertThat(spread.mean()).isEqualTo(10000002);
    assertThat(spread.standardDeviation()).isCloseTo(1, within(1e-12));
  }

  @Test
  void numAcc4() {
    // NIST StRD NumAcc4: 1001 values 10000000.2 followed by pairs .1 and .3; certified mean
    // 10000000.2, standard deviation 0.1, exact.
    List<Double> values = new ArrayList<>(List.of(10000000.2));
    for (int i = 0; i < 500; i++) {
      values.add(10000000.1);
      values.add(10000000.3);
    }
    Repeats.Spread spread = Repeats.spread(values, 95);
    assertThat(spread.mean()).isCloseTo(10000000.2, within(1e-7));
    assertThat(spread.standardDeviation()).isCloseTo(0.1, within(1e-8));
  }

  @Test
  void intervalAgainstAnotherLibrary() {
    // Student's t quantile of Hipparchus, a library that the calculation does not take it from.
    List<Double> readings = List.of(52.0, 54.0, 51.0, 55.0, 53.0);
    double t = new TDistribution(4).inverseCumulativeProbability(0.975);
    Repeats.Spread spread = Repeats.spread(readings, 95);
    assertThat(spread.standardDeviation()).isCloseTo(Math.sqrt(2.5), within(1e-12));
    assertThat(spread.standardError()).isCloseTo(Math.sqrt(0.5), within(1e-12));
    assertThat(spread.halfWidth()).isCloseTo(t * Math.sqrt(0.5), within(1e-9));
  }

  @Test
  void quantilesOfPrintedTables() {
    // GUM Table G.2 (from memory): t95 for 1, 4 and 10 degrees of freedom is 12.71, 2.78 and 2.23;
    // with a
    // standard error of 1 the half width is t.
    assertThat(halfWidthOfUnitError(2)).isCloseTo(12.71, within(0.005));
    assertThat(halfWidthOfUnitError(5)).isCloseTo(2.78, within(0.005));
    assertThat(halfWidthOfUnitError(11)).isCloseTo(2.23, within(0.005));
  }

  @Test
  void gumDayMeans() {
    // GUM H.5, Table H.9: ten day means, grand mean 10.000097 V, standard deviation 57 µV,
    // experimental standard deviation of the mean 18 µV.
    List<Double> days =
        List.of(
            10.000172, 10.000116, 10.000013, 10.000144, 10.000106, 10.000031, 10.000060, 10.000125,
            10.000163, 10.000041);
    Repeats.Spread spread = Repeats.spread(days, 95);
    assertThat(spread.mean()).isCloseTo(10.000097, within(5e-7));
    assertThat(spread.standardDeviation()).isCloseTo(57e-6, within(0.5e-6));
    assertThat(spread.standardError()).isCloseTo(18e-6, within(0.5e-6));
  }

  @Test
  void oneReadingShowsNoSpread() {
    Working working = Repeats.of(List.of(52.0), Unit.PERCENT, 95).value();
    assertThat(working.value()).isEqualTo(52);
    assertThat(working.says().key()).isEqualTo("cloth.repeats.says-one");
  }

  @Test
  void equalReadingsHaveNoSpread() {
    Repeats.Spread spread = Repeats.spread(List.of(52.0, 52.0, 52.0), 95);
    assertThat(spread.halfWidth()).isZero();
  }

  @Test
  void nothingAndNonsenseAreRefused() {
    assertThat(Repeats.of(List.of(), Unit.PERCENT, 95).problems())
        .extracting(Problem::code)
        .containsExactly("repeats.none");
    assertThat(Repeats.of(List.of(52.0), Unit.PERCENT, 100).problems())
        .extracting(Problem::code)
        .containsExactly("repeats.confidence");
  }

  private static double halfWidthOfUnitError(int n) {
    List<Double> readings = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      readings.add((double) i);
    }
    Repeats.Spread spread = Repeats.spread(readings, 95);
    Double half = spread.halfWidth();
    Double error = spread.standardError();
    return half == null || error == null ? Double.NaN : half / error;
  }
}
