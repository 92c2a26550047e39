package walebook.seam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.Seeded;
import walebook.working.Working;

class ExtensionFitTest {
  // NIST StRD Norris (linear, lower difficulty): x, y of 36 observations, certified values
  // beside the checks; data and values from memory, which the agreement to 11 digits confirms.
  private static final double[] NORRIS = {
    0.2, 0.1, 337.4, 338.8, 118.2, 118.1, 884.6, 888.0, 10.1, 9.2, 226.5, 228.1, 666.3, 668.5,
    996.3, 998.5, 448.6, 449.1, 777.0, 778.9, 558.2, 559.2, 0.4, 0.3, 0.6, 0.1, 775.5, 778.1,
    666.9, 668.8, 338.0, 339.3, 447.5, 448.9, 11.6, 10.8, 556.0, 557.7, 228.1, 228.3, 995.8, 998.0,
    887.6, 888.8, 120.2, 119.6, 0.3, 0.3, 0.3, 0.6, 556.8, 557.6, 339.1, 339.3, 887.2, 888.0,
    999.0, 998.5, 779.0, 778.9, 11.1, 10.2, 118.3, 117.6, 229.2, 228.9, 669.1, 668.4, 448.9, 449.2,
    0.5, 0.2
  };

  @Test
  void norris() {
    ExtensionFit fit = fit(NORRIS, 0);
    assertThat(fit.intercept()).isCloseTo(-0.262323073774029, within(1e-11));
    assertThat(fit.slope()).isCloseTo(1.00211681802045, within(1e-13));
    assertThat(fit.interceptError()).isCloseTo(0.232818234301152, within(1e-10));
    assertThat(fit.slopeError()).isCloseTo(0.429796848199937e-3, within(1e-12));
    assertThat(fit.residual()).isCloseTo(0.884796396144373, within(1e-10));
  }

  @Test
  void showsNothingBeforeThereAreEnoughPieces() {
    double[] five = {0, 20, 10, 30, 20, 41, 30, 50, 40, 59};
    ExtensionFit early = fit(five, 3);
    assertThat(early.isEnough()).isFalse();
    Working working = early.working(null);
    assertThat(working.result()).isNull();
    assertThat(working.says().args()).containsExactly("5", "5", "6", "3", "3");
    assertThatThrownBy(() -> early.at(10, 95)).isInstanceOf(IllegalStateException.class);
  }

  @Test
  void twoSettingsAreNotEnough() {
    double[] twoSettings = {0, 20, 0, 22, 0, 21, 30, 50, 30, 52, 30, 51};
    assertThat(fit(twoSettings, 0).isEnough()).isFalse();
  }

  @Test
  void heldPiecesAreCountedAndLeftOut() {
    double[] six = {0, 20, 10, 30, 20, 41, 30, 50, 40, 59, 50, 70};
    Working without = fit(six, 0).working(null);
    Working with = fit(six, 4).working(null);
    assertThat(with.value()).isEqualTo(without.value());
    assertThat(with.says().args().get(3)).isEqualTo("4");
  }

  @Test
  void bandIsNarrowestInTheMiddle() {
    double[] six = {0, 20, 10, 30, 20, 41, 30, 50, 40, 59, 50, 70};
    ExtensionFit fit = fit(six, 0);
    assertThat(width(fit.at(25, 95))).isLessThan(width(fit.at(0, 95)));
    assertThat(width(fit.at(25, 95))).isLessThan(width(fit.at(60, 95)));
    assertThat(width(fit.at(25, 99))).isGreaterThan(width(fit.at(25, 95)));
    assertThat(fit.working(25.0).value()).isCloseTo(fit.at(25, 95).middle(), within(1e-12));
  }

  @Test
  void findsALineThatIsThere() {
    Seeded.cases(
        1,
        random -> {
          double a = Seeded.between(random, 0, 40);
          double b = Seeded.between(random, 0.2, 2);
          double[] points = new double[16];
          for (int i = 0; i < 8; i++) {
            points[2 * i] = 10.0 * i;
            points[2 * i + 1] = a + b * 10 * i;
          }
          ExtensionFit fit = fit(points, 0);
          assertThat(fit.intercept()).isCloseTo(a, within(1e-9));
          assertThat(fit.slope()).isCloseTo(b, within(1e-11));
        });
  }

  private static double width(ExtensionFit.Band band) {
    return band.high() - band.low();
  }

  private static ExtensionFit fit(double[] pairs, int held) {
    List<ExtensionFit.Point> points = new ArrayList<>();
    for (int i = 0; i < pairs.length; i += 2) {
      points.add(new ExtensionFit.Point(pairs[i], pairs[i + 1]));
    }
    return new ExtensionFit(points, held);
  }
}
