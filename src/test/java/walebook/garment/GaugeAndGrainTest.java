package walebook.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.problem.Problem;
import walebook.working.Verdict;
import walebook.working.Working;

class GaugeAndGrainTest {

  /**
   * Published teaching examples: 4 in to 5 in is 25 %, 4 in to 10 in is 150 %; others arithmetic.
   */
  @ParameterizedTest
  @CsvSource({"101.6, 127, 25", "101.6, 254, 150", "101.6, 203.2, 100", "100, 100, 0"})
  void aGaugeAsksForAPercentage(double from, double to, double percent) {
    assertThat(GaugeNeed.of(from, to, null).value().value()).isCloseTo(percent, within(1e-9));
  }

  @Test
  void aClothIsDecidedWithAGuardBand() {
    GaugeNeed need = new GaugeNeed(100, 150);
    assertThat(need.check(new GrainStretch(52, 0.5)).verdict()).isEqualTo(Verdict.MET);
    assertThat(need.check(new GrainStretch(50.5, 0.5)).verdict()).isEqualTo(Verdict.TOO_CLOSE);
    assertThat(need.check(new GrainStretch(48, 0.5)).verdict()).isEqualTo(Verdict.NOT_MET);
    assertThat(need.check(null).verdict()).isEqualTo(Verdict.NOT_KNOWN);
  }

  @Test
  void aGaugeThatCannotBeIsToldOrAskedAbout() {
    assertThat(GaugeNeed.of(100, 90, null).problems())
        .extracting(Problem::code)
        .containsExactly("gauge.shorter");
    assertThat(GaugeNeed.of(100, 400, null).problems())
        .extracting(Problem::code)
        .containsExactly("gauge.far");
    assertThat(GaugeNeed.of(0, 90, null).isGood()).isFalse();
  }

  @Test
  void aOneWayClothPassesOneWay() {
    // A made-up one-way jersey: 60 % along the courses, 15 % along the wales; ease −12.5 % worn.
    Working working = way(new GrainStretch(60, 0.5), new GrainStretch(15, 0.5));
    assertThat(working.verdict()).isEqualTo(Verdict.MET);
    assertThat(working.says().key()).isEqualTo("garment.way.says-course");
    assertThat(way(new GrainStretch(15, 0.5), new GrainStretch(60, 0.5)).says().key())
        .isEqualTo("garment.way.says-wale");
    assertThat(way(new GrainStretch(15, 0.5), new GrainStretch(16, 0.5)).verdict())
        .isEqualTo(Verdict.NOT_MET);
    assertThat(way(new GrainStretch(60, 0.5), new GrainStretch(70, 0.5)).says().key())
        .isEqualTo("garment.way.says-both");
    assertThat(way(null, new GrainStretch(15, 0.5)).verdict()).isEqualTo(Verdict.NOT_KNOWN);
  }

  private static Working way(@Nullable GrainStretch course, @Nullable GrainStretch wale) {
    return WhichWay.of(
            900, 800, null, new ClothStretch(wale, course), Wear.DAY, Rows.ROWS.comfort())
        .value();
  }
}
