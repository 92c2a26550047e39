package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import walebook.working.Message;

/**
 * What carries meaning can be told apart without colour: contrast by WCAG 2.1, relative luminance
 * (success criterion 1.4.3 text 4.5 : 1, 1.4.11 graphics 3 : 1).
 */
class GreyTest {
  static List<Palette> palettes() {
    return List.of(Palette.LIGHT, Palette.DARK, Palette.PRINT);
  }

  private static double luminance(Palette palette, Role role) {
    int rgb = Integer.parseInt(palette.colour(role).substring(1), 16);
    return 0.2126 * linear(rgb >> 16 & 255)
        + 0.7152 * linear(rgb >> 8 & 255)
        + 0.0722 * linear(rgb & 255);
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  private static double contrast(Palette palette, Role one, Role other) {
    double first = luminance(palette, one);
    double second = luminance(palette, other);
    return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
  }

  @ParameterizedTest
  @MethodSource("palettes")
  void numbersReadOnTheFilledPartOfACellAsOnTheCard(Palette palette) {
    for (Role ground : List.of(Role.CARD, Role.WASH)) {
      assertThat(contrast(palette, Role.INK, ground)).isGreaterThan(4.5);
      assertThat(contrast(palette, Role.SOFT, ground)).isGreaterThan(4.5);
    }
  }

  @ParameterizedTest
  @MethodSource("palettes")
  void everyMarkStandsOutFromTheCardAndFromTheShadeOfAnInterval(Palette palette) {
    for (int series = 0; series < 5; series++) {
      assertThat(contrast(palette, Role.series(series), Role.CARD)).isGreaterThan(3);
      assertThat(contrast(palette, Role.series(series), Role.WASH)).isGreaterThan(3);
    }
    assertThat(contrast(palette, Role.NOT_MET, Role.CARD)).isGreaterThan(3);
    assertThat(contrast(palette, Role.ACCENT, Role.CARD)).isGreaterThan(3);
  }

  @Test
  void seriesDifferInShapeNotInShadeAlone() {
    List<String> shapes =
        List.of(0, 1, 2, 3, 4).stream()
            .map(
                series -> {
                  Sketch sketch = new Sketch();
                  DotMark.draw(sketch, 20, 20, 4, series, false, Role.INK);
                  return sketch
                      .picture(40, 40, Message.of("drawing.value.says"))
                      .shapes()
                      .toString();
                })
            .toList();
    assertThat(shapes).doesNotHaveDuplicates();
  }
}
