package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import walebook.quantity.Unit;
import walebook.words.Words;

class WashPictureTest {
  private final Words words = Words.english();

  private static Shape.Rect rect(Picture picture, Pen.Dash dash) {
    List<Shape.Rect> found =
        picture.shapes().stream()
            .filter(Shape.Rect.class::isInstance)
            .map(Shape.Rect.class::cast)
            .filter(each -> each.pen() != null && each.pen().dash() == dash)
            .toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  @Test
  void bothSquaresStandInProportion() {
    Random random = new Random(31);
    for (int turn = 0; turn < 200; turn++) {
      double[] mm = random.doubles(4, 100, 1000).toArray();
      Picture picture =
          new WashPicture(mm[0], mm[1], mm[2], mm[3], Unit.MM)
              .at(220 + 400 * random.nextDouble(), words);
      Shape.Rect before = rect(picture, Pen.Dash.DASHED);
      Shape.Rect after = rect(picture, Pen.Dash.SOLID);
      double perMm = before.height() / mm[0];
      assertThat(after.height()).isCloseTo(mm[1] * perMm, within(1e-6));
      assertThat(before.width()).isCloseTo(mm[2] * perMm, within(1e-6));
      assertThat(after.width()).isCloseTo(mm[3] * perMm, within(1e-6));
      assertThat(before.x() + Math.max(before.width(), after.width())).isLessThan(picture.width());
      assertThat(before.y() + Math.max(before.height(), after.height()))
          .isLessThan(picture.height());
    }
  }

  @Test
  void everyLengthMayBeMissing() {
    Double[] mm = {null, 350.0};
    for (int which = 0; which < 16; which++) {
      Picture picture =
          new WashPicture(
                  mm[which & 1], mm[which >> 1 & 1], mm[which >> 2 & 1], mm[which >> 3], Unit.CM)
              .at(300, words);
      assertThat(words.say(picture.says())).doesNotContain("{").doesNotContain("[");
    }
  }

  @Test
  void aWayThatWasNotReadStaysAsItWas() {
    Picture picture = new WashPicture(500.0, 480.0, 400.0, null, Unit.MM).at(300, words);
    assertThat(rect(picture, Pen.Dash.SOLID).width())
        .isEqualTo(rect(picture, Pen.Dash.DASHED).width());
    assertThat(rect(picture, Pen.Dash.SOLID).height())
        .isLessThan(rect(picture, Pen.Dash.DASHED).height());
  }

  @Test
  void lengthsOfNoughtAreRefused() {
    assertThatThrownBy(() -> new WashPicture(0.0, null, null, null, Unit.MM))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
