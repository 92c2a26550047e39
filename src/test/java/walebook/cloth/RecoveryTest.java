package walebook.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.working.Working;

class RecoveryTest {

  // Growth as ASTM D6614 3.1 defines it; recovery of the extension (S − G) ÷ S as textile testing
  // texts print it; recovered elongation as in EN 14704-1 (from memory); L0 / L2 as in the US Navy
  // manual 14218.
  // The numbers follow from those definitions.
  @ParameterizedTest
  @CsvSource({
    "100, 150, 104, 4, 92, 96, 96.15",
    "100, 130, 100, 0, 100, 100, 100",
    "100, 110, 105, 5, 50, 95, 95.24",
    "100, 150, 99, -1, 102, 101, 101.01",
  })
  void threeNumbersAreCalledRecovery(
      double l0, double l1, double l2, double growth, double r, double original, double length) {
    assertThat(Growth.of(l0, l1, l2, 1).value().value()).isCloseTo(growth, within(1e-9));
    Working working = Recovery.of(l0, l1, l2, 1).value();
    assertThat(working.value()).isCloseTo(r, within(1e-9));
    assertThat(Recovery.ofOriginal(l0, l2)).isCloseTo(original, within(1e-9));
    assertThat(Recovery.ofLength(l0, l2)).isCloseTo(length, within(0.005));
    assertThat(working.steps())
        .anySatisfy(
            step -> {
              assertThat(step.says().key()).isEqualTo("cloth.recovery.step-original");
              assertThat(step.numbers())
                  .endsWith(String.format(Locale.ROOT, "= %.1f %%", original));
            })
        .anySatisfy(
            step -> {
              assertThat(step.says().key()).isEqualTo("cloth.recovery.step-length");
              assertThat(step.numbers()).endsWith(String.format(Locale.ROOT, "= %.2f %%", length));
            });
  }

  @Test
  void recoveryOfAnUnstretchedClothIsUndefined() {
    Working working = Recovery.of(100, 100, 100, 1).value();
    assertThat(working.result()).isNull();
    assertThat(working.says().key()).isEqualTo("cloth.recovery.says-undefined");
    assertThat(Recovery.ofOriginal(100, 100)).isEqualTo(100);
  }

  @Test
  void overAHundredIsRemarkedUpon() {
    assertThat(Recovery.of(100, 150, 99, 1).value().says().key())
        .isEqualTo("cloth.recovery.says-over");
  }

  @Test
  void releasedLongerThanStretchedIsAskedAbout() {
    for (Answer<Working> answer :
        List.of(Recovery.of(100, 150, 155, 1), Growth.of(100, 150.0, 155, 1))) {
      assertThat(answer.isGood()).isFalse();
      assertThat(answer.problems())
          .extracting(Problem::code)
          .containsExactly("reading.released-longer");
    }
  }

  @Test
  void uncertaintyMatchesDifferencesTakenNumerically() {
    // GUM 5.1.3 NOTE 2: sensitivities may be found by moving each input by its uncertainty.
    double u = 0.01;
    double r = Recovery.ofExtension(100, 150, 104);
    double numeric =
        Math.sqrt(
            Math.pow(Recovery.ofExtension(100 + u, 150, 104) - r, 2)
                + Math.pow(Recovery.ofExtension(100, 150 + u, 104) - r, 2)
                + Math.pow(Recovery.ofExtension(100, 150, 104 + u) - r, 2));
    assertThat(ReadingUncertainty.ofRecovery(100, 150, 104, u, u, u))
        .isCloseTo(numeric, within(1e-5));
  }
}
