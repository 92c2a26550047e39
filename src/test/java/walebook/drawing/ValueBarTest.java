package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import walebook.words.Words;

class ValueBarTest {
  @Test
  void valueAndIntervalStandToScale() {
    Picture picture = new ValueBar(5.0, 0.0, 8.0, -10, 10, 0.0).at(400, Words.english());
    Shape.Line rail = only(picture, Shape.Line.class);
    Shape.Rect band = only(picture, Shape.Rect.class);
    Shape.Circle value = only(picture, Shape.Circle.class);
    double whole = rail.x2() - rail.x1();
    assertThat((value.x() - rail.x1()) / whole).isCloseTo(0.75, within(1e-9));
    assertThat((band.x() - rail.x1()) / whole).isCloseTo(0.5, within(1e-9));
    assertThat(band.width() / whole).isCloseTo(0.4, within(1e-9));
  }

  @Test
  void refusesAScaleOrAnIntervalOutOfOrder() {
    assertThatThrownBy(() -> new ValueBar(1.0, null, null, 3, 3, null))
        .hasMessageContaining("from");
    assertThatThrownBy(() -> new ValueBar(1.0, 3.0, 2.0, 0, 5, null)).hasMessageContaining("low");
  }

  private static <S extends Shape> S only(Picture picture, Class<S> kind) {
    return picture.shapes().stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .findFirst()
        .orElseThrow();
  }
}
