package walebook.statistics;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Least squares on numbers that are hard for it: J. W. Longley, J. Am. Stat. Assoc. 62 (1967)
 * 819–841, employment and gross national product of 16 years, and the same far from nought.
 */
class LongleyTest {
  /** Longley's gross national product, milliards; from memory. */
  private static final double[] GNP = {
    234.289, 259.426, 258.054, 284.599, 328.975, 346.999, 365.385, 363.112, 397.469, 419.180,
    442.769, 444.546, 482.704, 502.601, 518.173, 554.894
  };

  /** Longley's people employed, millions; from memory. */
  private static final double[] EMPLOYED = {
    60.323, 61.122, 60.171, 61.187, 63.221, 63.639, 64.989, 63.761, 66.019, 67.857, 68.169, 66.513,
    68.655, 69.564, 69.331, 70.551
  };

  private static Line line(double shift) {
    List<Line.Point> points = new ArrayList<>();
    for (int i = 0; i < GNP.length; i++) {
      points.add(new Line.Point(GNP[i] + shift, EMPLOYED[i]));
    }
    return requireNonNull(Line.fit(points));
  }

  /** The regression of employment on product as statistics programs print it; from memory. */
  @Test
  void equalsTheLineThatIsPrintedForLongleysData() {
    Line line = line(0);
    assertThat(line.intercept()).isCloseTo(51.843590, within(5e-7));
    assertThat(line.interceptError()).isCloseTo(0.681372, within(5e-7));
    assertThat(line.slope()).isCloseTo(0.034752, within(5e-7));
    assertThat(line.slopeError()).isCloseTo(0.001706, within(5e-7));
    assertThat(line.residualSd()).isCloseTo(0.6566, within(5e-5));
    assertThat(requireNonNull(line.rSquared())).isCloseTo(0.9674, within(5e-5));
  }

  /** A shift of all x changes no slope; products of raw sums would lose it here. */
  @Test
  void keepsTheSlopeFarFromNought() {
    assertThat(line(1e9).slope()).isCloseTo(line(0).slope(), within(1e-7));
    assertThat(line(1e9).residualSd()).isCloseTo(line(0).residualSd(), within(1e-5));
  }

  /** A shift of all values changes no difference between settings, nor its doubt. */
  @Test
  void keepsTwoWayDifferencesFarFromNought() {
    Additive near = Additive.of(unbalanced(0), 0.95);
    Additive far = Additive.of(unbalanced(1e9), 0.95);
    assertThat(far.differences()).hasSameSizeAs(near.differences());
    for (int i = 0; i < near.differences().size(); i++) {
      assertThat(far.differences().get(i).estimate())
          .isCloseTo(near.differences().get(i).estimate(), within(1e-5));
    }
    assertThat(requireNonNull(far.residualSd()))
        .isCloseTo(requireNonNull(near.residualSd()), within(1e-5));
  }

  /** Longley's years as blocks of four, settings in an unbalanced turn. */
  private static List<Response> unbalanced(double shift) {
    List<Response> values = new ArrayList<>();
    for (int i = 0; i < EMPLOYED.length; i++) {
      String level = "s" + (i % 3 == 0 ? 0 : i % 5 % 2 + 1);
      values.add(new Response("b" + i / 4, level, EMPLOYED[i] + shift));
    }
    return values;
  }
}
