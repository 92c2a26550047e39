package walebook.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.working.Working;

class StretchTest {

  @ParameterizedTest(name = "{3}")
  @CsvSource({
    "100, 150, 50, common practice: a 10 cm gauge reaching 15 is 50 %",
    "100, 130, 30, common practice: a 10 cm gauge reaching 13 is 30 %",
    "101.6, 127, 25, teaching newsletter on stretch percentages: 4 in to 5 in",
    "101.6, 254, 150, the same newsletter: 4 in to 10 in",
    "101.6, 203.2, 100, sewing column: 4 in to 8 in along a fold",
    "254, 279.4, 10, US Navy rate training manual 14218 p. 227: 10 in to 11 in",
    "127, 149.225, 17.5, Armstrong Patternmaking for Fashion Design ch. 27: 5 in to 5 7/8 in",
    "127, 158.75, 25, the same chapter (from memory): 5 in to 6 1/4 in",
    "127, 190.5, 50, the same chapter (from memory): 5 in to 7 1/2 in",
    "127, 254, 100, the same chapter (from memory): 5 in to 10 in",
    "100, 100, 0, definition: nothing gained",
  })
  void stretchesAsPublished(double gauge, double stretched, double percent, String source) {
    assertThat(Stretch.of(gauge, stretched, 1).value().value())
        .as(source)
        .isCloseTo(percent, within(1e-9));
  }

  @ParameterizedTest(name = "{4}")
  @CsvSource({
    "100, 150, 0.5, 0.9014, GUM first order by hand: both lengths with u 0.5 mm",
    "50, 75, 0.5, 1.8028, the same on half the gauge: twice the uncertainty",
  })
  void uncertaintyFollowsGum(
      double gauge, double stretched, double u, double expected, String source) {
    Working working = Stretch.of(gauge, stretched, u * Math.sqrt(12)).value();
    assertThat(uncertainty(working)).as(source).isCloseTo(expected, within(5e-5));
  }

  @Test
  void resolutionOfOneMillimetre() {
    // GUM 4.3.7: rectangular distribution of full width 1.
    assertThat(ReadingUncertainty.ofResolution(1)).isCloseTo(0.2887, within(5e-5));
  }

  @Test
  void boardReadsAsATeacherWritesIt() {
    Working working = Stretch.of(100, 150, 1).value();
    assertThat(working.steps().get(0).formula()).isEqualTo("S = 100 × (L1 − L0) ÷ L0");
    assertThat(working.steps().get(0).numbers()).isEqualTo("100 × (150 − 100) ÷ 100 = 50.0 %");
    assertThat(working.says().args()).containsExactly("50.0 %", "1.0");
  }

  @ParameterizedTest
  @CsvSource({"0, 150", "-100, 150", "NaN, 150", "100, 0", "100, -5", "100, Infinity"})
  void impossibleLengthsAreRefused(double gauge, double stretched) {
    Answer<Working> answer = Stretch.of(gauge, stretched, 1);
    assertThat(answer.isGood()).isFalse();
    assertThat(answer.problems()).allMatch(Problem::refuses);
  }

  @Test
  void shorterThanTheGaugeIsAskedAboutAndGivesNoResult() {
    Answer<Working> answer = Stretch.of(100, 95, 1);
    assertThat(answer.isGood()).isFalse();
    assertThat(answer.problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.refuses()).isFalse();
              assertThat(problem.code()).isEqualTo("reading.stretched-shorter");
            });
  }

  @Test
  void unlikelyLengthsGiveAResultAndAQuestion() {
    Answer<Working> answer = Stretch.of(100, 620, 1);
    assertThat(answer.isGood()).isTrue();
    assertThat(answer.problems())
        .extracting(Problem::code)
        .containsExactly("reading.stretched-far");
    assertThat(Stretch.of(12, 18, 1).problems())
        .extracting(Problem::code)
        .containsExactly("reading.gauge-unlikely");
  }

  @Test
  void ruleThatReadsToLessThanNothingIsRefused() {
    assertThat(Stretch.of(100, 150, -1).problems())
        .extracting(Problem::code)
        .containsExactly("reading.read-to");
  }

  static double uncertainty(Working working) {
    Measured result = working.result();
    if (result == null || result.standardUncertainty() == null) {
      throw new AssertionError("no uncertainty");
    }
    return result.standardUncertainty();
  }
}
