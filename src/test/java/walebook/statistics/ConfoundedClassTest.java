package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static walebook.statistics.Figures.known;
import static walebook.statistics.Figures.there;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * 2,000 made classes where the practised sewed mostly one setting and beginners mostly another: raw
 * means mislead, adjusted ones recover the truth.
 */
class ConfoundedClassTest {
  private static final int CLASSES = 2000;
  private static final double MARGIN = 4 * Math.sqrt(0.95 * 0.05 / CLASSES);
  private static final double[] SETTING = {0, 4, 1};
  private static final double[] SKILL = {12, 10, 8, -8, -10, -12};

  /** Pieces of each setting in each student's hands: the skilled favour the first setting. */
  private static final int[][] PIECES = {
    {3, 1, 0}, {3, 0, 1}, {2, 1, 1}, {1, 2, 1}, {0, 3, 1}, {0, 2, 2}
  };

  private static List<Response> made(Random random, double[] setting) {
    List<Response> all = new ArrayList<>();
    for (int j = 0; j < SKILL.length; j++) {
      for (int i = 0; i < setting.length; i++) {
        for (int k = 0; k < PIECES[j][i]; k++) {
          double value = 100 + SKILL[j] + setting[i] + 3 * random.nextGaussian();
          all.add(new Response("student " + j, "setting " + i, value));
        }
      }
    }
    return all;
  }

  @Test
  void adjustedMeansRecoverWhatRawMeansHide() {
    Random random = new Random(7);
    double raw = 0;
    double adjusted = 0;
    double mean = 0;
    int held = 0;
    int meanHeld = 0;
    for (int round = 0; round < CLASSES; round++) {
      Additive found = Additive.of(made(random, SETTING), 0.95);
      AdjustedMean first = there(found.mean("setting 0"));
      AdjustedMean second = there(found.mean("setting 1"));
      raw += (second.raw().mean() - first.raw().mean()) / CLASSES;
      Difference difference = there(found.difference("setting 1", "setting 0"));
      adjusted += difference.estimate() / CLASSES;
      mean += second.mean() / CLASSES;
      held += there(difference.interval()).contains(4) ? 1 : 0;
      meanHeld += there(second.interval()).contains(104) ? 1 : 0;
    }
    assertThat(raw).as("the raw difference has the wrong sign").isLessThan(-4);
    assertThat(adjusted).isCloseTo(4, within(0.2));
    assertThat(mean).isCloseTo(104, within(0.2));
    assertThat((double) held / CLASSES).isBetween(0.95 - MARGIN, 0.95 + MARGIN);
    assertThat((double) meanHeld / CLASSES).isBetween(0.95 - MARGIN, 0.95 + MARGIN);
  }

  /** With nothing to find, one class in twenty may show something, not more. */
  @Test
  void holmKeepsFalseFindingsRare() {
    Random random = new Random(8);
    int any = 0;
    int f = 0;
    for (int round = 0; round < CLASSES; round++) {
      Additive found = Additive.of(made(random, new double[] {0, 0, 0}), 0.95);
      any += found.differences().stream().anyMatch(d -> known(d.holm()) <= 0.05) ? 1 : 0;
      f += known(found.p()) <= 0.05 ? 1 : 0;
    }
    assertThat((double) any / CLASSES).isBetween(0.02, 0.05 + MARGIN);
    assertThat((double) f / CLASSES).isBetween(0.05 - MARGIN, 0.05 + MARGIN);
  }
}
