package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import walebook.quantity.Unit;
import walebook.words.Words;

class GaugePictureTest {
  private final Words words = Words.english();

  @Test
  void marksStandInProportionToTheLengths() {
    Random random = new Random(20);
    for (int turn = 0; turn < 200; turn++) {
      double start = 40 + 200 * random.nextDouble();
      double stretched = start * (1 + 2 * random.nextDouble());
      double released = start * (1.001 + 0.2 * random.nextDouble());
      GaugeReading reading =
          new GaugeReading(start, stretched, GaugeReading.How.STRETCHED, released, null, null);
      List<Double> marks = marks(new GaugePicture(reading, Unit.MM).at(500, words));
      double nought = marks.get(0);
      double perMm = (marks.get(1) - nought) / start;
      assertThat(marks.get(2)).isEqualTo(nought);
      assertThat(marks.get(3) - nought).isCloseTo(stretched * perMm, within(1e-6));
      assertThat(marks.get(5) - nought).isCloseTo(released * perMm, within(1e-6));
    }
  }

  @Test
  void everyLengthMayBeMissing() {
    Double[] mm = {null, 100.0};
    for (Double start : mm) {
      for (Double stretched : mm) {
        for (Double released : mm) {
          GaugeReading reading =
              new GaugeReading(
                  start, stretched, GaugeReading.How.GAVE, released, released, stretched);
          Picture picture = new GaugePicture(reading, Unit.CM).at(300, words);
          assertThat(picture.height()).isPositive();
          assertThat(words.say(picture.says())).doesNotContain("{").doesNotContain("[");
        }
      }
    }
  }

  @Test
  void growthIsShadedOnlyBetweenStartAndReleasedMark() {
    GaugeReading grown =
        new GaugeReading(100.0, 150.0, GaugeReading.How.STRETCHED, 110.0, null, null);
    Picture picture = new GaugePicture(grown, Unit.MM).at(500, words);
    Shape.Rect shade = washes(picture).get(0);
    List<Double> marks = marks(picture);
    assertThat(shade.x()).isCloseTo(marks.get(1), within(1e-6));
    assertThat(shade.x() + shade.width()).isCloseTo(marks.get(5), within(1e-6));
    GaugeReading back =
        new GaugeReading(100.0, 150.0, GaugeReading.How.STRETCHED, 100.0, null, null);
    assertThat(washes(new GaugePicture(back, Unit.MM).at(500, words))).isEmpty();
  }

  @Test
  void lengthsBelowNoughtAreRefused() {
    assertThatThrownBy(() -> new GaugeReading(-1.0, null, GaugeReading.How.HELD, null, null, null))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("start");
  }

  private static List<Double> marks(Picture picture) {
    return picture.shapes().stream()
        .filter(Shape.Line.class::isInstance)
        .map(Shape.Line.class::cast)
        .filter(line -> line.pen().role() == Role.INK && line.pen().width() > 2)
        .map(Shape.Line::x1)
        .toList();
  }

  private static List<Shape.Rect> washes(Picture picture) {
    return picture.shapes().stream()
        .filter(Shape.Rect.class::isInstance)
        .map(Shape.Rect.class::cast)
        .filter(rect -> rect.fill() == Role.WASH)
        .toList();
  }
}
