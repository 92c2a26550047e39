package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.words.Words;

class HkPlotTest {
  /**
   * h = 1.5, -0.3 and -1.2 against ±1.15, the value of ASTM E691 for three laboratories at 0.5 %
   * (from memory); k = 0.6, 1.6 and none against 1.55 as an example.
   */
  private static final HkPlot PLOT =
      new HkPlot(
          List.of(
              new HkPlot.Row("Ada", 1.5, 0.6, 1.55),
              new HkPlot.Row("Bo", -0.3, 1.6, 1.55),
              new HkPlot.Row("Cy", -1.2, null, null)),
          1.15);

  private final Words words = Words.english();

  @Test
  void valuesStandToScaleOnBothSidesOfNought() {
    Picture picture = PLOT.at(640, words);
    List<Shape.Line> stems =
        all(picture, Shape.Line.class).stream()
            .filter(each -> each.y1() == each.y2() && each.x1() != each.x2())
            .toList();
    assertThat(stems).hasSize(5);
    // Ada's h, Ada's k, Bo's h, Bo's k, Cy's h: each as long as its value.
    double perH = (stems.get(0).x2() - stems.get(0).x1()) / 1.5;
    double perK = (stems.get(1).x2() - stems.get(1).x1()) / 0.6;
    assertThat(perH).isPositive();
    assertThat(perK).isPositive();
    assertThat(stems.get(2).x2() - stems.get(2).x1()).isCloseTo(-0.3 * perH, within(1e-9));
    assertThat(stems.get(3).x2() - stems.get(3).x1()).isCloseTo(1.6 * perK, within(1e-9));
    assertThat(stems.get(4).x2() - stems.get(4).x1()).isCloseTo(-1.2 * perH, within(1e-9));
  }

  @Test
  void whatLiesBeyondChanceIsASquareAndSaidSo() {
    Picture picture = PLOT.at(640, words);
    assertThat(all(picture, Shape.Circle.class)).hasSize(2);
    assertThat(words.say(picture.says()))
        .contains("3 people", "2 off the room", "1 with own readings");
    assertThat(all(picture, Shape.Text.class).stream().map(Shape.Text::says))
        .contains("1.50", "−0.30", "1.60", "−1.20", "–");
  }

  private static <S extends Shape> List<S> all(Picture picture, Class<S> kind) {
    return picture.shapes().stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
