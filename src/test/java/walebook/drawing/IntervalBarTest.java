package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import walebook.words.Words;

class IntervalBarTest {
  @Test
  void shareAndIntervalStandToScale() {
    Picture picture = new IntervalBar(5, 20, 10, 50).at(400, Words.english());
    Shape.Line rail = only(picture, Shape.Line.class);
    Shape.Rect band = only(picture, Shape.Rect.class);
    Shape.Circle share = only(picture, Shape.Circle.class);
    double whole = rail.x2() - rail.x1();
    assertThat((band.x() - rail.x1()) / whole).isCloseTo(0.10, within(1e-9));
    assertThat(band.width() / whole).isCloseTo(0.40, within(1e-9));
    assertThat((share.x() - rail.x1()) / whole).isCloseTo(0.25, within(1e-9));
  }

  @Test
  void refusesAnIntervalOutOfOrder() {
    assertThatThrownBy(() -> new IntervalBar(1, 2, 60, 40))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new IntervalBar(3, 2, 0, 40)).hasMessageContaining("hits");
  }

  private static <S extends Shape> S only(Picture picture, Class<S> kind) {
    return picture.shapes().stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .findFirst()
        .orElseThrow();
  }
}
