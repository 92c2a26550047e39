package walebook.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static walebook.Seeded.between;

import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import walebook.Seeded;

/**
 * Bands on curved openings against plain geometry: lengths are summed along a polyline of small
 * steps, so that nothing of the program's own formula is in them.
 */
class BandCurveTest {
  private static final int STEPS = 20_000;

  private record Point(double x, double y, double z) {
    double to(Point other) {
      return Math.sqrt(
          (x - other.x) * (x - other.x)
              + (y - other.y) * (y - other.y)
              + (z - other.z) * (z - other.z));
    }
  }

  /** Length of a closed curve given by its angle. */
  private static double length(DoubleFunction<Point> curve) {
    double length = 0;
    Point last = curve.apply(0);
    for (int i = 1; i <= STEPS; i++) {
      Point next = curve.apply(2 * Math.PI * i / STEPS);
      length += last.to(next);
      last = next;
    }
    return length;
  }

  /** A point of an oval, moved inwards along the curve's own normal. */
  private static Point oval(double a, double b, double inwards, double t) {
    double norm = Math.hypot(b * Math.cos(t), a * Math.sin(t));
    return new Point(
        a * Math.cos(t) - inwards * b * Math.cos(t) / norm,
        b * Math.sin(t) - inwards * a * Math.sin(t) / norm,
        0);
  }

  @Test
  void theFreeEdgeOfAFlatBandOnAnOval() {
    Seeded.cases(
        41,
        random -> {
          double a = between(random, 70, 120);
          double b = between(random, 70, 120);
          double width = between(random, 5, 30);
          double opening = length(t -> oval(a, b, 0, t));
          double free = length(t -> oval(a, b, width, t));
          double flat = new BandPlan(opening, 0.8, width, 6, 6).flatRatio(2 * Math.PI);
          assertThat(flat * opening).isCloseTo(free, within(0.01));
        });
  }

  @Test
  void theFreeEdgeOfABandThatStandsOnASlope() {
    // A ring of radius r whose band climbs inwards at a slope: each point of the free edge lies
    // one band's width up the cone, which is cos φ inwards and sin φ upwards.
    Seeded.cases(
        42,
        random -> {
          double radius = between(random, 70, 120);
          double width = between(random, 5, 30);
          double slope = between(random, 0, 80);
          double phi = Math.toRadians(slope);
          double opening = length(t -> new Point(radius * Math.cos(t), radius * Math.sin(t), 0));
          double up = radius - width * Math.cos(phi);
          double free =
              length(t -> new Point(up * Math.cos(t), up * Math.sin(t), width * Math.sin(phi)));
          double flat = new BandPlan(opening, 0.8, width, 6, 6).flatRatio(BandFlat.turn(slope));
          assertThat(flat * opening).isCloseTo(free, within(0.01));
        });
  }

  @Test
  void aNecklineCutDeeperOrLess() {
    // Less allowance taken than the pattern's moves the seam line towards the neck's middle.
    Seeded.cases(
        43,
        random -> {
          double a = between(random, 70, 120);
          double b = between(random, 70, 120);
          double pattern = between(random, 5, 15);
          double sewn = between(random, 0, 15);
          double opening = length(t -> oval(a, b, 0, t));
          double moved = length(t -> oval(a, b, pattern - sewn, t));
          double told =
              NecklineChange.of(pattern, sewn, opening, 2 * Math.PI, null).value().value();
          assertThat(told).isCloseTo(moved, within(0.01));
        });
  }

  @Test
  void theWiderTheBandTheShorterItLies() {
    Seeded.cases(
        44,
        random -> {
          double opening = between(random, 300, 800);
          double width = between(random, 5, 30);
          double turn = between(random, 0, 2 * Math.PI);
          double wider = width + between(random, 0, 10);
          assertThat(new BandPlan(opening, 0.8, wider, 6, 6).flatRatio(turn))
              .isLessThanOrEqualTo(new BandPlan(opening, 0.8, width, 6, 6).flatRatio(turn));
        });
  }
}
