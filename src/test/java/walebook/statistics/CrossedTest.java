package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static walebook.statistics.Figures.there;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CrossedTest {

  /**
   * Ten parts, three appraisers, three trials: the worked example of the Measurement Systems
   * Analysis reference manual (AIAG), widely reprinted; data and results from memory.
   */
  private static final double[][] PARTS = {
    {0.29, -0.56, 1.34, 0.47, -0.80, 0.02, 0.59, -0.31, 2.26, -1.36},
    {0.41, -0.68, 1.17, 0.50, -0.92, -0.11, 0.75, -0.20, 1.99, -1.25},
    {0.64, -0.58, 1.27, 0.64, -0.84, -0.21, 0.66, -0.17, 2.01, -1.31},
    {0.08, -0.47, 1.19, 0.01, -0.56, -0.20, 0.47, -0.63, 1.80, -1.68},
    {0.25, -1.22, 0.94, 1.03, -1.20, 0.22, 0.55, 0.08, 2.12, -1.62},
    {0.07, -0.68, 1.34, 0.20, -1.28, 0.06, 0.83, -0.34, 2.19, -1.50},
    {0.04, -1.38, 0.88, 0.14, -1.46, -0.29, 0.02, -0.46, 1.77, -1.49},
    {-0.11, -1.13, 1.09, 0.20, -1.07, -0.67, 0.01, -0.56, 1.45, -1.77},
    {-0.15, -0.96, 0.67, 0.11, -1.45, -0.49, 0.21, -0.49, 1.87, -2.16}
  };

  private static List<Response> parts() {
    List<Response> all = new ArrayList<>();
    for (int row = 0; row < PARTS.length; row++) {
      for (int part = 0; part < PARTS[row].length; part++) {
        all.add(new Response("part " + part, "appraiser " + row / 3, PARTS[row][part]));
      }
    }
    return all;
  }

  /** Interaction pooled: equipment 0.199933, appraiser 0.226838, both 0.30237, part 1.042327. */
  @Test
  void equalsThePrintedComponents() {
    Crossed found = there(Crossed.additive(parts()));
    assertThat(found.repeatabilitySd()).isCloseTo(0.199933, within(5e-7));
    assertThat(found.operator().sd()).isCloseTo(0.226838, within(5e-7));
    assertThat(found.reproducibilitySd()).isCloseTo(0.30237, within(5e-6));
    assertThat(found.item().sd()).isCloseTo(1.042327, within(5e-7));
    assertThat(found.repeat().df()).isEqualTo(78);
  }

  /** Mean squares printed: part 9.81799, appraiser 1.58363, both 0.01994, equipment 0.04598. */
  @Test
  void equalsThePrintedMeanSquaresWithInteraction() {
    Crossed found = there(Crossed.withInteraction(parts()));
    Component both = there(found.interaction());
    assertThat(found.repeat().estimate()).isCloseTo(0.04598, within(5e-6));
    assertThat(both.estimate()).isCloseTo((0.01994 - 0.04598) / 3, within(5e-6));
    assertThat(both.clamped()).isTrue();
    assertThat(both.variance()).isZero();
    assertThat(found.operator().estimate()).isCloseTo((1.58363 - 0.01994) / 30, within(1e-6));
    assertThat(found.item().estimate()).isCloseTo((9.81799 - 0.01994) / 9, within(2e-6));
  }

  /** Interaction printed: 0.3590 on 18 against 2.7589 on 60, F 0.434. */
  @Test
  void equalsThePrintedTestOfInteraction() {
    Additivity found = there(Additive.of(parts(), 0.95).additivity());
    assertThat(found.ssLeft()).isCloseTo(0.3590, within(5e-5));
    assertThat(found.dfLeft()).isEqualTo(18);
    assertThat(found.ssPure()).isCloseTo(2.7589, within(5e-5));
    assertThat(found.dfPure()).isEqualTo(60);
    assertThat(found.f()).isCloseTo(0.434, within(5e-4));
  }

  @Test
  void whatCannotBeSeparatedIsNull() {
    List<Response> all = new ArrayList<>(parts());
    assertThat(Crossed.withInteraction(all.subList(0, 89))).isNull();
    assertThat(Crossed.additive(all.subList(0, 89))).isNotNull();
    assertThat(Crossed.additive(all.subList(0, 30))).isNull();
    assertThat(
            Crossed.additive(
                List.of(
                    new Response("a", "x", 1), new Response("a", "x", 2),
                    new Response("b", "y", 1), new Response("b", "y", 2))))
        .isNull();
    assertThat(Crossed.additive(List.of(new Response("a", "x", 1)))).isNull();
  }

  /** Made classes on an uneven layout: components average to the variances they were made with. */
  @Test
  void unevenLayoutsAreUnbiasedOnAverage() {
    Random random = new Random(11);
    double operator = 0;
    double item = 0;
    double repeat = 0;
    int rounds = 2000;
    for (int round = 0; round < rounds; round++) {
      double[] people = random.doubles(5).map(u -> 2 * random.nextGaussian()).toArray();
      double[] things = random.doubles(6).map(u -> 3 * random.nextGaussian()).toArray();
      List<Response> all = new ArrayList<>();
      for (int i = 0; i < 6; i++) {
        for (int o = 0; o < 5; o++) {
          int times = (i + o) % 3 == 0 ? 0 : 1 + (i * o) % 2;
          for (int k = 0; k < times; k++) {
            double value = 150 + people[o] + things[i] + random.nextGaussian();
            all.add(new Response("item " + i, "person " + o, value));
          }
        }
      }
      Crossed found = there(Crossed.additive(all));
      operator += found.operator().estimate() / rounds;
      item += found.item().estimate() / rounds;
      repeat += found.repeat().estimate() / rounds;
    }
    assertThat(repeat).isCloseTo(1, within(0.05));
    assertThat(operator).isCloseTo(4, within(4 * 3.2 / Math.sqrt(rounds)));
    assertThat(item).isCloseTo(9, within(4 * 6.5 / Math.sqrt(rounds)));
  }
}
