package walebook.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.words.Words;
import walebook.working.Band;
import walebook.working.Verdict;
import walebook.working.Working;

class BandTest {
  private static final double CIRCLE = 2 * Math.PI;

  /** A guild's rule for ribbing, two thirds to three quarters of 16 in: 10.67 to 12 in. */
  @ParameterizedTest
  @CsvSource({"0.6666667, 270.93, 50", "0.75, 304.8, 33.3333"})
  void ribbingByThePublishedRule(double ratio, double length, double strain) {
    BandPlan plan = new BandPlan(406.4, ratio, 19.05, 0, 0);
    assertThat(plan.lengthMm()).isCloseTo(length, within(0.01));
    assertThat(plan.strain()).isCloseTo(strain, within(1e-3));
  }

  @Test
  void cutMeasures() {
    // Published rule, twice the finished width and two allowances: 1 1/2 in becomes 3 1/2 in.
    assertThat(new BandPlan(560, 0.8, 38.1, 6, 6.35).cutWidthMm()).isCloseTo(88.9, within(1e-9));
    // Arithmetic: 560 × 0.7756 + 2 × 6.
    assertThat(new BandPlan(560, 0.7756, 20, 6, 6).cutLengthMm()).isCloseTo(446.3, within(0.05));
  }

  /** Arithmetic for a flat circle, fold = N − 2πw; 16 in with 3/4 in lies in the published rule. */
  @ParameterizedTest
  @CsvSource({"560, 20, 434.34, 0.7756", "406.4, 19.05, 286.71, 0.7055"})
  void flatRatioOfACircle(double opening, double width, double fold, double ratio) {
    BandPlan plan = new BandPlan(opening, 0.8, width, 6, 6);
    assertThat(plan.flatRatio(CIRCLE)).isCloseTo(ratio, within(5e-5));
    assertThat(plan.flatRatio(CIRCLE) * opening).isCloseTo(fold, within(5e-3));
    assertThat(plan.flatRatio(CIRCLE)).isBetween(2.0 / 3, 0.7757);
  }

  /** Common practice, worked examples with turns of 6 (crew) and 5 (scoop). */
  @ParameterizedTest
  @CsvSource({"500, 20, 6, 0.76", "620, 25, 6, 0.76", "620, 15, 6, 0.85", "700, 15, 5, 0.89"})
  void flatRatioByShape(double opening, double width, double turn, double ratio) {
    assertThat(new BandPlan(opening, 0.8, width, 6, 6).flatRatio(turn))
        .isCloseTo(ratio, within(0.006));
  }

  @Test
  void aSlopeTakesTheTurnOfItsCone() {
    // A ring on a cone, cut open and laid flat, is an arc of its slant: its angle by arc ÷ radius.
    for (double slope : List.of(0.0, 20.0, 45.0, 70.0)) {
      double cosine = Math.cos(Math.toRadians(slope));
      double radius = 100;
      double slant = radius / cosine;
      double angle = 2 * Math.PI * radius / slant;
      assertThat(BandFlat.turn(slope)).isCloseTo(angle, within(1e-9));
    }
  }

  /** A band of 3/4 is stretched 33.3 %: beyond 32.9 for certain at U 0.2 points, not at U 1.5. */
  @ParameterizedTest
  @CsvSource({"0.1, true", "0.75, false"})
  void moreThanItsClothCanIsSaidOnlyWhereItIsCertain(double uncertainty, boolean beyond) {
    Working working =
        BandLength.of(
            new BandPlan(560, 0.75, 20, 6, 6),
            BandRatio.Place.NECK,
            new GrainStretch(32.9, uncertainty),
            Rows.ROWS.bandRatios(),
            Rows.ROWS.comfort());
    assertThat(working.verdict()).isEqualTo(Verdict.NOT_MET);
    assertThat(Words.english().say(working.says()).contains("more than its cloth stretches at all"))
        .isEqualTo(beyond);
  }

  @Test
  void aBandLiesStandsOrPulls() {
    assertThat(fit(0.80)).isEqualTo("lies");
    assertThat(fit(0.84)).isEqualTo("stands");
    assertThat(fit(0.69)).isEqualTo("pulls");
    // The ends belong to lying flat: more than 0.05 over, more than 0.08 under.
    assertThat(Band.holding(Rows.ROWS.bandFits(), 0.05).key()).isEqualTo("lies");
    assertThat(Band.holding(Rows.ROWS.bandFits(), -0.08).key()).isEqualTo("lies");
  }

  private static String fit(double ratio) {
    BandPlan plan = new BandPlan(560, ratio, 20, 6, 6);
    Working working = BandFlat.of(plan, CIRCLE, Rows.ROWS.bandFits());
    String key = Band.holding(Rows.ROWS.bandFits(), ratio - working.value()).key();
    assertThat(working.verdict() == Verdict.MET).isEqualTo(key.equals("lies"));
    return key;
  }

  @Test
  void strainAgainstTheBandsOwnCloth() {
    // Common practice: a ratio of 0.70 needs 43 %; more than 60 % of 50 %, less than that of 110 %.
    BandPlan plan = new BandPlan(560, 0.7, 20, 6, 6);
    assertThat(plan.strain()).isCloseTo(42.857, within(1e-3));
    assertThat(length(plan, new GrainStretch(50, 0.5))).isEqualTo(Verdict.NOT_MET);
    assertThat(length(plan, new GrainStretch(110, 0.5))).isEqualTo(Verdict.MET);
    assertThat(length(plan, new GrainStretch(71.4, 1))).isEqualTo(Verdict.TOO_CLOSE);
    assertThat(length(new BandPlan(560, 1, 20, 6, 6), new GrainStretch(0, 0)))
        .isEqualTo(Verdict.MET);
    assertThat(length(plan, new GrainStretch(0, 0))).isEqualTo(Verdict.NOT_MET);
    assertThat(
            BandLength.of(
                    plan, BandRatio.Place.NECK, null, Rows.ROWS.bandRatios(), Rows.ROWS.comfort())
                .verdict())
        .isEqualTo(Verdict.NOT_KNOWN);
  }

  private static @Nullable Verdict length(BandPlan plan, GrainStretch stretch) {
    return BandLength.of(
            plan, BandRatio.Place.NECK, stretch, Rows.ROWS.bandRatios(), Rows.ROWS.comfort())
        .verdict();
  }

  @Test
  void aBandMustPassOverTheHead() {
    // ANSUR II: female head P95 597 mm. 434 mm × 1.5 = 651 passes, × 1.3 = 564 does not.
    assertThat(BandOverHead.of(434, 597, new GrainStretch(50, 0.5)).verdict())
        .isEqualTo(Verdict.MET);
    assertThat(BandOverHead.of(434, 597, new GrainStretch(30, 0.5)).verdict())
        .isEqualTo(Verdict.NOT_MET);
    assertThat(BandOverHead.of(434, 597, new GrainStretch(37.5, 0.5)).verdict())
        .isEqualTo(Verdict.TOO_CLOSE);
    assertThat(BandOverHead.of(434, 597, null).verdict()).isEqualTo(Verdict.NOT_KNOWN);
    assertThat(BandOverHead.of(600, 597, null).verdict()).isEqualTo(Verdict.MET);
  }

  @Test
  void quarterMarks() {
    // Arithmetic: 434.34 mm joined, in four.
    List<BandMark> marks = QuarterMarks.of(560, 434.34, 4);
    assertThat(marks)
        .extracting(mark -> Math.round(mark.bandMm() * 100) / 100.0)
        .containsExactly(0.0, 108.59, 217.17, 325.76);
    assertThat(marks).extracting(BandMark::openingMm).containsExactly(0.0, 140.0, 280.0, 420.0);
    // The back neck is shorter than a quarter, so the mark lies in front of the shoulder.
    assertThat(QuarterMarks.worked(560, 434.34, 4, 95.0).value().says().key())
        .isEqualTo("garment.quarters.says-front");
    assertThat(QuarterMarks.worked(560, 434.34, 4, 290.0).isGood()).isFalse();
  }

  @Test
  void segmentsTakeTheirShareAndTheSumComesOut() {
    // Even strain: every part at the same ratio.
    List<Segment> even = List.of(new Segment(90, 1), new Segment(190, 1), new Segment(280, 1));
    assertThat(SegmentMarks.parts(even, 448))
        .usingComparatorForType(
            (a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b), Double.class)
        .containsExactly(72.0, 152.0, 224.0);
    // By hand: λ = (600 − 540) ÷ (1 × 400 + 3 × 200) = 0.06; 400 × 0.94, 200 × 0.82.
    List<Segment> curved = List.of(new Segment(400, 1), new Segment(200, 3));
    assertThat(SegmentMarks.parts(curved, 540).get(0)).isCloseTo(376, within(1e-9));
    assertThat(SegmentMarks.parts(curved, 540).get(1)).isCloseTo(164, within(1e-9));
  }

  @Test
  void segmentsThatCannotBeAreTold() {
    assertThat(codes(List.of(100.0, 100.0), List.of(), 300, 250)).containsExactly("marks.sum");
    assertThat(codes(List.of(100.0, 100.0), List.of(1.0), 200, 180))
        .containsExactly("marks.uneven");
    assertThat(codes(List.of(100.0, 100.0), List.of(0.0, 0.0), 200, 180))
        .containsExactly("marks.weights");
    assertThat(codes(List.of(100.0, 100.0), List.of(0.0, 1.0), 200, 90))
        .containsExactly("marks.weights");
    assertThat(codes(List.of(100.0, -100.0), List.of(), 200, 90)).contains("number.not-positive");
    assertThat(codes(List.of(), List.of(), 200, 90)).contains("number.out-of-range");
  }

  private static List<String> codes(
      List<Double> lengths, List<Double> weights, double opening, double band) {
    return SegmentMarks.worked(lengths, weights, opening, band).problems().stream()
        .map(problem -> problem.code())
        .toList();
  }
}
