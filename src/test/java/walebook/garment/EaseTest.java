package walebook.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.working.Caution;
import walebook.working.Verdict;
import walebook.working.Working;

class EaseTest {

  /** Arithmetic from the definitions E = A − B and D = 100 (B ÷ A − 1). */
  @ParameterizedTest
  @CsvSource({
    "960, 864, -96, -10, 11.1111",
    "1000, 800, -200, -20, 25",
    "900, 800, -100, -11.1111, 12.5",
    "900, 600, -300, -33.3333, 50",
    "900, 1000, 100, 11.1111, 0",
    "900, 900, 0, 0, 0"
  })
  void easeAndStrainCountFromDifferentGirths(
      double body, double finished, double ease, double percent, double strain) {
    assertThat(Ease.mm(body, finished)).isCloseTo(ease, within(1e-9));
    assertThat(Ease.percent(body, finished)).isCloseTo(percent, within(1e-4));
    assertThat(Ease.wornStrain(body, finished)).isCloseTo(strain, within(1e-4));
    assertThat(Ease.of(body, finished, Rows.ROWS.fits()).value().value()).isEqualTo(ease);
  }

  /** ANSUR II (NATICK/TR-15/007): male head P95, female mean hips and heel–ankle girth. */
  @ParameterizedTest
  @CsvSource({"601, 500, 20.2", "1021.25, 780, 30.93", "310.32, 240, 29.30"})
  void demandOfBodiesMeasuredInASurvey(double over, double opening, double demand) {
    assertThat(Ease.wornStrain(over, opening)).isCloseTo(demand, within(0.005));
  }

  @Test
  void reductionThatAStretchAllows() {
    // Arithmetic: ρ = Su ÷ (100 + Su); 50 % allows a third, so that 900 mm becomes 600 mm.
    assertThat(NegativeEase.reduction(50)).isCloseTo(33.3333, within(1e-4));
    assertThat(Ease.leastFinished(900, 50)).isCloseTo(600, within(1e-9));
    assertThat(NegativeEase.of(900, 50).value().value()).isCloseTo(600, within(1e-9));
  }

  @Test
  void shareOfStretchUsed() {
    // Common practice, a worked example: hips 100 cm, garment 88 cm, cloth 35 %: 39 % used.
    Working working =
        StretchUsed.of(1000, 880, new GrainStretch(35, 0.5), Wear.DAY, Rows.ROWS.comfort()).value();
    assertThat(working.value()).isCloseTo(39, within(0.05));
    assertThat(working.verdict()).isEqualTo(Verdict.MET);
  }

  @Test
  void comfortLimitsAsCommonlyUsed() {
    // Common practice: at most 60 % of the stretch for all day, 75 % for sport.
    assertThat(ComfortBand.limit(Rows.ROWS.comfort(), Wear.DAY)).isEqualTo(60);
    assertThat(ComfortBand.limit(Rows.ROWS.comfort(), Wear.SPORT)).isEqualTo(75);
    // 12.5 % of 18 % is 69.4 %: too much for the day, right for sport.
    GrainStretch stretch = new GrainStretch(18, 0.1);
    assertThat(StretchUsed.of(900, 800, stretch, Wear.DAY, Rows.ROWS.comfort()).value().verdict())
        .isEqualTo(Verdict.NOT_MET);
    assertThat(StretchUsed.of(900, 800, stretch, Wear.SPORT, Rows.ROWS.comfort()).value().verdict())
        .isEqualTo(Verdict.MET);
    assertThat(
            StretchUsed.of(900, 800, new GrainStretch(20.8, 1), Wear.DAY, Rows.ROWS.comfort())
                .value()
                .verdict())
        .isEqualTo(Verdict.TOO_CLOSE);
  }

  @Test
  void uncertaintyOfTheShareIsItsSlope() {
    // A numeric derivative of 100 ε ÷ S, GUM 5.1.2.
    double slope = (StretchUsed.share(12.5, 50 + 1e-4) - StretchUsed.share(12.5, 50 - 1e-4)) / 2e-4;
    assertThat(StretchUsed.uncertainty(12.5, new GrainStretch(50, 1)))
        .isCloseTo(Math.abs(slope), within(1e-6));
  }

  @Test
  void clothThatDoesNotStretchIsNotDividedBy() {
    Working working =
        StretchUsed.of(900, 800, new GrainStretch(0, 0), Wear.DAY, Rows.ROWS.comfort()).value();
    assertThat(working.verdict()).isEqualTo(Verdict.NOT_MET);
    assertThat(working.result()).isNull();
  }

  @Test
  void girthsInAnotherUnitAreAskedAbout() {
    Answer<Working> small = Ease.of(90, 80, Rows.ROWS.fits());
    assertThat(small.isGood()).isTrue();
    assertThat(small.problems()).extracting(Problem::code).containsOnly("girth.small");
    assertThat(small.problems().get(0).wanted()).isEqualTo("90 cm");
    assertThat(Ease.of(9000, 8000, Rows.ROWS.fits()).problems())
        .extracting(Problem::code)
        .containsOnly("girth.large");
    for (double bad : List.of(0.0, -5.0, Double.NaN, Double.POSITIVE_INFINITY)) {
      Answer<Working> refused = Ease.of(900, bad, Rows.ROWS.fits());
      assertThat(refused.isGood()).isFalse();
      assertThat(refused.problems())
          .extracting(Problem::code)
          .containsExactly("girth.not-positive");
    }
  }

  @Test
  void veryCloseGarmentsComeWithCautions() {
    assertThat(Ease.of(900, 800, Rows.ROWS.fits()).value().cautions()).isEmpty();
    assertThat(Ease.of(900, 740, Rows.ROWS.fits()).value().cautions())
        .extracting(Caution::key)
        .containsExactly("tight-garment");
    assertThat(Ease.of(900, 600, Rows.ROWS.fits()).value().cautions())
        .extracting(Caution::key)
        .containsExactly("tight-garment", "compression-medical");
  }
}
