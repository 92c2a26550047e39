package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static walebook.statistics.Figures.known;
import static walebook.statistics.Figures.there;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.statistics.ProductLimit.Step;

class ProductLimitTest {

  /**
   * Weeks of remission of 21 patients on 6-mercaptopurine: E. J. Freireich and others, Blood 21
   * (1963) 699–716, printed in many textbooks (data and table from memory); held values negative.
   */
  private static final List<Lifetime> REMISSION =
      List.of(
              6, 6, 6, 7, 10, 13, 16, 22, 23, -6, -9, -10, -11, -17, -19, -20, -25, -32, -32, -34,
              -35)
          .stream()
          .map(weeks -> new Lifetime(Math.abs(weeks), weeks > 0))
          .toList();

  @ParameterizedTest
  @CsvSource({
    "6, 21, 3, 0.8571, 0.0764",
    "7, 17, 1, 0.8067, 0.0869",
    "10, 15, 1, 0.7529, 0.0963",
    "13, 12, 1, 0.6902, 0.1068",
    "16, 11, 1, 0.6275, 0.1141",
    "22, 7, 1, 0.5378, 0.1282",
    "23, 6, 1, 0.4482, 0.1346"
  })
  void equalsThePrintedTable(double weeks, int atRisk, int ended, double s, double error) {
    ProductLimit found = ProductLimit.of(REMISSION, 0.95);
    Step step = found.steps().stream().filter(x -> x.value() == weeks).findFirst().orElseThrow();
    assertThat(step.atRisk()).isEqualTo(atRisk);
    assertThat(step.ended()).isEqualTo(ended);
    assertThat(step.survival()).isCloseTo(s, within(5e-5));
    assertThat(step.error()).isCloseTo(error, within(6e-5));
  }

  /** Median 23 weeks, from 13 to not reached; log(−log) limits at 6 weeks 0.620 and 0.952. */
  @Test
  void medianAndLimitsOfTheRemissions() {
    ProductLimit found = ProductLimit.of(REMISSION, 0.95);
    assertThat(found.ended()).isEqualTo(9);
    assertThat(found.median()).isEqualTo(23.0);
    assertThat(found.quantileLimits(0.5).low()).isEqualTo(13.0);
    assertThat(found.quantileLimits(0.5).high()).isNull();
    Interval first = there(found.steps().get(0).interval());
    assertThat(first.low()).isCloseTo(0.620, within(5e-4));
    assertThat(first.high()).isCloseTo(0.952, within(5e-4));
    assertThat(found.survivalAt(35)).isCloseTo(0.4482, within(5e-5));
    assertThat(found.survivalAt(35.5)).isNull();
    assertThat(found.survivalAt(0)).isEqualTo(1.0);
  }

  /** The untreated group of the same trial, none censored: median 8, limits 4 and 11 (memory). */
  @Test
  void withoutCensoringItIsThePlainShare() {
    List<Lifetime> placebo =
        List.of(1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23).stream()
            .map(weeks -> Lifetime.endedAt(weeks))
            .toList();
    ProductLimit found = ProductLimit.of(placebo, 0.95);
    assertThat(found.median()).isEqualTo(8.0);
    assertThat(found.quantileLimits(0.5)).isEqualTo(new ProductLimit.Limits(4.0, 11.0, 0.95));
    for (Step step : found.steps()) {
      double share = (double) (step.atRisk() - step.ended()) / 21;
      assertThat(step.survival()).isCloseTo(share, within(1e-12));
      double binomial = Math.sqrt(share * (1 - share) / 21);
      assertThat(step.error()).isCloseTo(binomial, within(1e-12));
    }
    Step last = found.steps().get(found.steps().size() - 1);
    assertThat(last.survival()).isZero();
    assertThat(last.interval()).isNull();
    assertThat(found.survivalAt(99)).isEqualTo(0.0);
  }

  @Test
  void allHeldHasNoStepsAndNoMedian() {
    ProductLimit found = ProductLimit.of(List.of(Lifetime.heldTo(150), Lifetime.heldTo(160)), 0.95);
    assertThat(found.steps()).isEmpty();
    assertThat(found.median()).isNull();
    assertThat(found.quantileLimits(0.5).low()).isNull();
    assertThat(found.survivalAt(155)).isEqualTo(1.0);
    assertThat(found.survivalAt(161)).isNull();
  }

  @Test
  void onePieceThatGave() {
    ProductLimit found = ProductLimit.of(List.of(Lifetime.endedAt(150)), 0.95);
    assertThat(found.median()).isEqualTo(150.0);
    assertThat(found.steps().get(0).interval()).isNull();
    assertThatIllegalArgumentException().isThrownBy(() -> ProductLimit.of(List.of(), 0.95));
  }

  @Test
  void fallsStaysInsideAndForgetsOrder() {
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      List<Lifetime> all = new ArrayList<>();
      for (int i = 0; i < 1 + random.nextInt(25); i++) {
        all.add(new Lifetime(100 + random.nextInt(20), random.nextInt(3) > 0));
      }
      ProductLimit found = ProductLimit.of(all, 0.9);
      double before = 1;
      for (Step step : found.steps()) {
        assertThat(step.survival()).as("seed %d", seed).isBetween(0.0, before);
        before = step.survival();
        if (step.interval() != null) {
          assertThat(step.interval().contains(step.survival())).isTrue();
          assertThat(step.interval().low()).isBetween(0.0, 1.0);
          assertThat(step.interval().high()).isBetween(0.0, 1.0);
        }
      }
      Collections.shuffle(all, random);
      assertThat(ProductLimit.of(all, 0.9)).as("seed %d", seed).isEqualTo(found);
      if (found.median() != null) {
        assertThat(known(found.survivalAt(known(found.median()))))
            .as("seed %d", seed)
            .isLessThanOrEqualTo(0.5 + 1e-9);
      }
    }
  }
}
