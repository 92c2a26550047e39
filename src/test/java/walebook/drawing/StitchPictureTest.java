package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.words.Words;

class StitchPictureTest {
  private final Words words = Words.english();

  @ParameterizedTest
  @CsvSource({"2.5, 1.5", "0.5, 3", "7, 0.3", "4, 2.5"})
  void holesOfAZigzagStandAtWidthAndLength(double width, double length) {
    StitchPicture stitch = new StitchPicture(StitchForm.ZIGZAG, width, length);
    List<Shape.Circle> holes = holes(stitch.at(400, words));
    double along = holes.get(1).x() - holes.get(0).x();
    double swing = Math.abs(holes.get(1).y() - holes.get(0).y());
    assertThat(swing / along).isCloseTo(width / length, within(1e-9));
    assertThat(holes.get(2).y()).isEqualTo(holes.get(0).y());
    assertThat(holes).hasSizeGreaterThanOrEqualTo(7);
  }

  @Test
  void threeStepsMakeOneSwing() {
    StitchPicture stitch = new StitchPicture(StitchForm.THREE_STEP_ZIGZAG, 6, 2);
    List<Shape.Circle> holes = holes(stitch.at(400, words));
    double step = holes.get(1).y() - holes.get(0).y();
    double along = holes.get(1).x() - holes.get(0).x();
    assertThat(step / along).isCloseTo(6.0 / 3 / 2, within(1e-9));
    assertThat(holes.get(3).y() - holes.get(0).y()).isCloseTo(3 * step, within(1e-9));
    assertThat(holes.get(6).y()).isCloseTo(holes.get(0).y(), within(1e-9));
  }

  @Test
  void everyFormDrawsInsideItsPicture() {
    for (StitchForm form : StitchForm.values()) {
      Picture picture = new StitchPicture(form, 5, 2.5).at(240, words);
      for (Shape.Circle hole : holes(picture)) {
        assertThat(hole.x()).isBetween(0.0, picture.width());
        assertThat(hole.y()).isBetween(0.0, picture.height());
      }
    }
  }

  private static List<Shape.Circle> holes(Picture picture) {
    return picture.shapes().stream()
        .filter(Shape.Circle.class::isInstance)
        .map(Shape.Circle.class::cast)
        .toList();
  }
}
