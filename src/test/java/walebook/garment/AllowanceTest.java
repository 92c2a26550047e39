package walebook.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static walebook.Seeded.between;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.Seeded;
import walebook.problem.Place;
import walebook.quantity.ReadNumber;
import walebook.quantity.Unit;
import walebook.working.Working;

class AllowanceTest {

  /** Arithmetic from two cut edges a seam; 10 to 6 mm at 1, 2 and 4 seams is common practice. */
  @ParameterizedTest
  @CsvSource({
    "15, 6, 1, 18",
    "15, 6, 2, 36",
    "10, 6, 1, 8",
    "10, 6, 2, 16",
    "10, 6, 4, 32",
    "15.875, 15, 2, 3.5",
    "10, 12.7, 1, -5.4",
    "10, 10, 2, 0"
  })
  void girthGainsTwoEdgesForEachSeam(double pattern, double sewn, int seams, double change) {
    assertThat(AllowanceChange.of(pattern, sewn, seams, null, null).value().value())
        .isCloseTo(change, within(1e-9));
  }

  /** The inch of 25.4 mm exactly (international yard and pound agreement, 1959). */
  @ParameterizedTest
  @CsvSource({
    "1/4 in, 6.35",
    "3/8 in, 9.525",
    "1/2 in, 12.7",
    "5/8 in, 15.875",
    "1 in, 25.4",
    "1.5 cm, 15"
  })
  void allowancesInInchesAreExact(String typed, double mm) {
    assertThat(ReadNumber.length(typed, Unit.MM, Place.field("allowance")).value())
        .isCloseTo(mm, within(1e-9));
  }

  @Test
  void parallelCurvesAgainstAPolygonMovedPointByPoint() {
    // The same change found without the formula: each point of a half ellipse is moved along the
    // curve's normal, and the polygons before and after are measured.
    Seeded.cases(
        31,
        random -> {
          double a = between(random, 60, 150);
          double b = between(random, 60, 150);
          double d = between(random, -9, 9);
          double before = moved(a, b, 0);
          assertThat(moved(a, b, d) - before)
              .isCloseTo(CurvedEdge.change(d, Math.PI), within(2e-3));
          assertThat(moved(a, b, -d))
              .isCloseTo(CurvedEdge.neckline(before, d, Math.PI), within(2e-3));
        });
  }

  private static double moved(double a, double b, double d) {
    int steps = 6000;
    DoubleUnaryOperator norm = t -> Math.hypot(b * Math.cos(t), a * Math.sin(t));
    double length = 0;
    double lastX = 0;
    double lastY = 0;
    for (int i = 0; i <= steps; i++) {
      double t = Math.PI * i / steps;
      double x = a * Math.cos(t) + d * b * Math.cos(t) / norm.applyAsDouble(t);
      double y = b * Math.sin(t) + d * a * Math.sin(t) / norm.applyAsDouble(t);
      length += i == 0 ? 0 : Math.hypot(x - lastX, y - lastY);
      lastX = x;
      lastY = y;
    }
    return length;
  }

  @Test
  void capAndArmholeDriftApart() {
    // 15 mm sewn at 6 mm: d = 9; cap turning 90° and armhole 180° drift by 9 × 3π ÷ 2.
    Working working = CurvedEdge.capAndArmhole(15, 6, 90, 180).value();
    assertThat(working.value()).isCloseTo(9 * 1.5 * Math.PI, within(1e-9));
  }

  /** Common practice: a crew neck gets smaller by about 24 mm for 4 mm, 54 mm for 9 mm. */
  @ParameterizedTest
  @CsvSource({"10, 6, 24", "15, 6, 54"})
  void necklineGetsSmaller(double pattern, double sewn, double smaller) {
    assertThat(NecklineChange.of(pattern, sewn, 560, 6, 450.0).value().value())
        .isCloseTo(560 - smaller, within(1e-9));
  }

  @Test
  void aNecklineThatWouldVanishIsRefused() {
    assertThat(NecklineChange.of(60, 0, 300, 6, null).isGood()).isFalse();
    assertThat(AllowanceChange.of(0, 300, 2, 900.0, 900.0).isGood()).isFalse();
  }

  @Test
  void overlockerTellsTheWrongWayInNumbers() {
    Working working = Overlocker.of(15, 6, 2, 90, 180).value();
    assertThat(working.value()).isCloseTo(36, within(1e-9));
    assertThat(working.steps()).hasSize(5);
    assertThat(working.cautions()).hasSize(1);
    assertThat(Overlocker.of(6, 7, 2, 90, 180).value().value()).isCloseTo(-4, within(1e-9));
    assertThat(Overlocker.of(6, 6, 2, 90, 180).value().says().key())
        .isEqualTo("garment.overlocker.says-same");
  }

  @Test
  void trimmingRestoresEveryGirth() {
    Seeded.cases(
        700,
        random -> {
          double pattern = between(random, 6, 20);
          double sewn = between(random, 0, pattern);
          AllowancePlan trimmed = new AllowancePlan(pattern, sewn, true, 1.6, 3);
          GirthPlan girth = new GirthPlan(Girth.CHEST, 900.0, between(random, 600, 1200), 2);
          assertThat(girth.sewnMm(trimmed.edgeGain())).isEqualTo(girth.finishedMm());
          AllowancePlan untrimmed = new AllowancePlan(pattern, sewn, false, 1.6, 3);
          assertThat(girth.sewnMm(untrimmed.edgeGain())).isGreaterThanOrEqualTo(girth.finishedMm());
        });
    // What is too narrow cannot be trimmed right.
    assertThat(new AllowancePlan(6, 10, true, 0, 0).edgeGain()).isEqualTo(-4);
  }
}
