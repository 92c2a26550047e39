package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static walebook.statistics.Figures.known;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.statistics.Robust.ScaleFrom;

class RobustTest {

  /**
   * B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers (1993): the modified z-score;
   * arithmetic for 2.1, 2.6, 2.4, 2.5, 2.3, 2.1, 2.3, 2.6, 8.2, 8.3: median 2.45, MAD 0.15.
   */
  @Test
  void findsTwoOddReadingsThatHideEachOtherFromTheMean() {
    List<Double> values = List.of(2.1, 2.6, 2.4, 2.5, 2.3, 2.1, 2.3, 2.6, 8.2, 8.3);
    Robust robust = Robust.of(values);
    assertThat(robust.median()).isCloseTo(2.45, within(1e-12));
    assertThat(robust.mad()).isCloseTo(0.15, within(1e-12));
    assertThat(known(robust.z(8.2))).isCloseTo(0.6745 * 5.75 / robust.mad(), within(1e-9));
    assertThat(values.stream().filter(robust::isOdd)).containsExactly(8.2, 8.3);
  }

  @Test
  void mostlyEqualReadingsFallBackToTheMeanDeviation() {
    Robust robust = Robust.of(List.of(5.0, 5.0, 5.0, 5.0, 5.0, 5.0, 9.0));
    assertThat(robust.from()).isEqualTo(ScaleFrom.MEAN_DEVIATION);
    assertThat(known(robust.z(9))).isCloseTo(7 / 1.253314, within(1e-9));
    assertThat(robust.isOdd(9)).isTrue();
    assertThat(robust.isOdd(5)).isFalse();
  }

  @Test
  void equalReadingsHaveNoScale() {
    Robust robust = Robust.of(List.of(5.0, 5.0));
    assertThat(robust.from()).isEqualTo(ScaleFrom.NONE);
    assertThat(robust.z(5)).isNull();
    assertThat(robust.isOdd(6)).isFalse();
  }

  @Test
  void shiftAndScaleLeaveTheScoreAlone() {
    List<Double> values = List.of(3.0, 1.0, 4.0, 1.5, 5.0, 9.0, 2.0, 6.0);
    Robust plain = Robust.of(values);
    Robust moved = Robust.of(values.stream().map(v -> 100 - 3 * v).toList());
    for (double value : values) {
      assertThat(known(moved.z(100 - 3 * value))).isCloseTo(-known(plain.z(value)), within(1e-9));
    }
  }
}
