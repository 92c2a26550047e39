package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HolmTest {

  /** S. Holm, Scandinavian Journal of Statistics 6 (1979) 65–70; the steps done by hand. */
  @Test
  void stepsDown() {
    List<Double> adjusted = Holm.adjust(List.of(0.04, 0.01, 0.03, 0.005));
    double[] wanted = {0.06, 0.03, 0.06, 0.02};
    for (int i = 0; i < wanted.length; i++) {
      assertThat(adjusted.get(i)).isCloseTo(wanted[i], within(1e-12));
    }
  }

  @Test
  void liesBetweenTheBareValueAndBonferroniAndKeepsTheOrder() {
    Random random = new Random(5);
    for (int round = 0; round < 200; round++) {
      List<Double> p = random.doubles(1 + random.nextInt(12)).boxed().toList();
      List<Double> adjusted = Holm.adjust(p);
      for (int i = 0; i < p.size(); i++) {
        assertThat(adjusted.get(i)).isBetween(p.get(i), Math.min(1, p.size() * p.get(i)));
        for (int j = 0; j < p.size(); j++) {
          if (p.get(i) < p.get(j)) {
            assertThat(adjusted.get(i)).isLessThanOrEqualTo(adjusted.get(j));
          }
        }
      }
    }
  }

  @Test
  void emptyStaysEmptyAndNonsenseIsRefused() {
    assertThat(Holm.adjust(List.of())).isEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> Holm.adjust(List.of(1.5)));
  }
}
