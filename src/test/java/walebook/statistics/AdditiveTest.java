package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static walebook.statistics.Figures.known;
import static walebook.statistics.Figures.there;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.statistics.Additive.Pair;

class AdditiveTest {

  private static Response r(String block, String level, double value) {
    return new Response(block, level, value);
  }

  /**
   * D. C. Montgomery, Design and Analysis of Experiments, the incomplete-block example of four
   * catalysts on four batches of raw material (data and results from memory).
   */
  private static final List<Response> CATALYST =
      List.of(
          r("b1", "1", 73),
          r("b2", "1", 74),
          r("b4", "1", 71),
          r("b2", "2", 75),
          r("b3", "2", 67),
          r("b4", "2", 72),
          r("b1", "3", 73),
          r("b2", "3", 75),
          r("b3", "3", 68),
          r("b1", "4", 75),
          r("b3", "4", 72),
          r("b4", "4", 75));

  @Test
  void equalsTheTextbooksAnalysisOfVariance() {
    Additive found = Additive.of(CATALYST, 0.95);
    assertThat(found.ssLevels()).isCloseTo(22.75, within(1e-10));
    assertThat(found.ssError()).isCloseTo(3.25, within(1e-10));
    assertThat(found.dfError()).isEqualTo(5);
    assertThat(known(found.f())).isCloseTo(11.67, within(5e-3));
    assertThat(known(found.p())).isCloseTo(0.0107, within(5e-5));
    assertThat(found.notEstimable()).isEmpty();
    assertThat(found.additivity()).isNull();
  }

  /** Adjusted means 71.375, 71.625, 72.000, 75.000, each ± 0.4868; differences ± 0.6982. */
  @ParameterizedTest
  @CsvSource({"1, 71.375", "2, 71.625", "3, 72.000", "4, 75.000"})
  void equalsTheTextbooksAdjustedMeans(String level, double mean) {
    Additive found = Additive.of(CATALYST, 0.95);
    AdjustedMean adjusted = there(found.mean(level));
    assertThat(adjusted.mean()).isCloseTo(mean, within(1e-10));
    assertThat(known(adjusted.error())).isCloseTo(0.4868, within(5e-5));
    assertThat(adjusted.blocks()).isEqualTo(3);
    for (Difference difference : found.differences()) {
      assertThat(known(difference.error())).isCloseTo(0.6982, within(5e-5));
    }
  }

  @Test
  void differencesTurnAndAreAdjustedWithinTheirFamily() {
    Additive found = Additive.of(CATALYST, 0.95);
    Difference up = there(found.difference("4", "1"));
    assertThat(up.estimate()).isCloseTo(3.625, within(1e-10));
    assertThat(up.estimate()).isEqualTo(-there(found.difference("1", "4")).estimate());
    assertThat(there(up.interval()).low()).isPositive();
    assertThat(known(up.holm())).isCloseTo(6 * known(up.p()), within(1e-12));
    Difference alone = found.differencesFrom("1").get(2);
    assertThat(alone.first()).isEqualTo("4");
    assertThat(known(alone.holm())).isCloseTo(3 * known(up.p()), within(1e-12));
    assertThat(found.difference("4", "none")).isNull();
    assertThat(found.mean("none")).isNull();
  }

  /** Two pairs of students who share no setting: only differences within a pair can be told. */
  @Test
  void disconnectedGroupsAreNamed() {
    Additive found =
        Additive.of(
            List.of(
                r("a", "x", 1),
                r("a", "y", 2.5),
                r("b", "x", 2),
                r("b", "y", 3),
                r("c", "z", 7),
                r("c", "w", 9),
                r("d", "z", 6),
                r("d", "w", 8.5)),
            0.95);
    assertThat(found.groups()).containsExactly(List.of("x", "y"), List.of("z", "w"));
    assertThat(found.notEstimable())
        .containsExactlyInAnyOrder(
            new Pair("x", "z"), new Pair("x", "w"), new Pair("y", "z"), new Pair("y", "w"));
    assertThat(found.difference("x", "z")).isNull();
    assertThat(there(found.difference("y", "x")).estimate()).isCloseTo(1.25, within(1e-12));
    assertThat(there(found.difference("w", "z")).estimate()).isCloseTo(2.25, within(1e-12));
    assertThat(found.dfError()).isEqualTo(2);
    assertThat(there(found.mean("w")).mean()).isCloseTo(8.75, within(1e-12));
  }

  /** Everyone sewed one setting only: students and settings cannot be told apart. */
  @Test
  void fullyConfoundedTellsNoDifference() {
    Additive found =
        Additive.of(List.of(r("a", "x", 1), r("a", "x", 2), r("b", "y", 5), r("b", "y", 7)), 0.95);
    assertThat(found.differences()).isEmpty();
    assertThat(found.notEstimable()).containsExactly(new Pair("x", "y"));
    assertThat(found.f()).isNull();
    assertThat(known(found.residualSd())).isCloseTo(Math.sqrt(2.5 / 2), within(1e-12));
  }

  @Test
  void onePieceOneLevelOrNoScatterGiveNoFalseCertainty() {
    Additive piece = Additive.of(List.of(r("a", "x", 1)), 0.95);
    assertThat(piece.residualSd()).isNull();
    assertThat(there(piece.mean("x")).interval()).isNull();
    Additive level = Additive.of(List.of(r("a", "x", 1), r("b", "x", 2), r("b", "x", 3)), 0.95);
    assertThat(level.differences()).isEmpty();
    assertThat(there(level.mean("x")).mean()).isCloseTo(1.75, within(1e-12));
    Additive same =
        Additive.of(
            List.of(r("a", "x", 0.1), r("a", "y", 0.1), r("b", "x", 0.1), r("b", "y", 0.1)), 0.95);
    assertThat(same.residualSd()).isZero();
    assertThat(same.f()).isNull();
    assertThat(there(same.difference("x", "y")).interval()).isNull();
    assertThat(there(same.difference("x", "y")).p()).isNull();
    Additive saturated = Additive.of(List.of(r("a", "x", 1), r("a", "y", 4)), 0.95);
    assertThat(saturated.dfError()).isZero();
    assertThat(there(saturated.difference("y", "x")).estimate()).isCloseTo(3, within(1e-12));
    assertThat(there(saturated.difference("y", "x")).error()).isNull();
  }

  @Test
  void refusesNothing() {
    assertThatIllegalArgumentException().isThrownBy(() -> Additive.of(List.of(), 0.95));
    assertThatIllegalArgumentException().isThrownBy(() -> Additive.of(CATALYST, 1));
  }
}
