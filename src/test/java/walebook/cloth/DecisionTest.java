package walebook.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.working.Verdict;

class DecisionTest {

  // The rule of JCGM 106, 8.3 (clause from memory): accept inside the guard band, reject outside
  // it.
  @ParameterizedTest
  @CsvSource({
    "52, 1, 50, MET",
    "51, 1, 50, MET",
    "50.9, 1, 50, TOO_CLOSE",
    "50, 1, 50, TOO_CLOSE",
    "49, 1, 50, TOO_CLOSE",
    "48.9, 1, 50, NOT_MET",
    "50, 0, 50, MET",
    "49.9, 0, 50, NOT_MET",
  })
  void guardBand(double value, double expanded, double need, Verdict verdict) {
    assertThat(Decision.verdict(value, expanded, need)).isEqualTo(verdict);
    assertThat(Decision.of(value, expanded, need).value().verdict()).isEqualTo(verdict);
  }

  @Test
  void negativeUncertaintyIsRefused() {
    assertThat(Decision.of(50, -1, 40).isGood()).isFalse();
  }
}
