package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TwoRatesTest {

  /**
   * R. G. Newcombe, Statistics in Medicine 17 (1998) 873–890, Table II, method 10 (four decimals
   * printed; all but the first row from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "56, 70, 48, 80, 0.0524, 0.3339",
    "9, 10, 3, 10, 0.1705, 0.8090",
    "6, 7, 2, 7, 0.0582, 0.8062",
    "5, 56, 0, 29, -0.0381, 0.1926",
    "0, 10, 0, 20, -0.1611, 0.2775",
    "0, 10, 0, 10, -0.2775, 0.2775",
    "10, 10, 0, 20, 0.6791, 1.0000",
    "10, 10, 0, 10, 0.6075, 1.0000"
  })
  void equalsNewcombesTable(int x1, int n1, int x2, int n2, double low, double high) {
    TwoRates rates = new TwoRates(new Proportion(x1, n1), new Proportion(x2, n2));
    assertThat(rates.newcombe(0.95).low()).isCloseTo(low, within(5.1e-5));
    assertThat(rates.newcombe(0.95).high()).isCloseTo(high, within(5.1e-5));
  }

  /**
   * The tea tasting of R. A. Fisher, The Design of Experiments (1935), chapter II: 3 of 4 right
   * twice over gives 34/70 two-sided; all right 2/70.
   */
  @Test
  void theLadyTastingTea() {
    TwoRates three = new TwoRates(new Proportion(3, 4), new Proportion(1, 4));
    TwoRates four = new TwoRates(new Proportion(4, 4), new Proportion(0, 4));
    assertThat(three.fisher()).isCloseTo(34.0 / 70, within(1e-12));
    assertThat(four.fisher()).isCloseTo(2.0 / 70, within(1e-12));
  }

  @Test
  void nobodyOrEverybodyTellsNothing() {
    assertThat(new TwoRates(new Proportion(0, 4), new Proportion(0, 9)).fisher()).isEqualTo(1);
    assertThat(new TwoRates(new Proportion(4, 4), new Proportion(9, 9)).fisher()).isEqualTo(1);
  }

  @Test
  void turningTurnsTheIntervalAndKeepsP() {
    for (int n1 = 1; n1 <= 8; n1++) {
      for (int x1 = 0; x1 <= n1; x1++) {
        for (int x2 = 0; x2 <= 6; x2++) {
          TwoRates there = new TwoRates(new Proportion(x1, n1), new Proportion(x2, 6));
          TwoRates back = new TwoRates(/* first= */ there.second(), /* second= */ there.first());
          Interval interval = there.newcombe(0.9);
          assertThat(interval.low()).isCloseTo(-back.newcombe(0.9).high(), within(1e-12));
          assertThat(interval.contains(there.difference())).isTrue();
          assertThat(there.fisher()).isCloseTo(back.fisher(), within(1e-12)).isBetween(0.0, 1.0);
        }
      }
    }
  }
}
