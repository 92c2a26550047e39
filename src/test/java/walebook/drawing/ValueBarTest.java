package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.words.Words;

class ValueBarTest {
  private static final DotRow ROW =
      new DotRow("a", List.of(new DotRow.Dot(5, false), new DotRow.Dot(9, true)), 5.0, 0.0, 8.0, 0);

  @Test
  void valueAndIntervalStandToScale() {
    Picture picture = new ValueBar(-10, 10, ROW).at(400, Words.english());
    Shape.Line rail = only(picture, Shape.Line.class);
    Shape.Rect band = only(picture, Shape.Rect.class);
    Shape.Circle value = only(picture, Shape.Circle.class);
    double whole = rail.x2() - rail.x1();
    assertThat((value.x() - rail.x1()) / whole).isCloseTo(0.75, within(1e-9));
    assertThat((band.x() - rail.x1()) / whole).isCloseTo(0.5, within(1e-9));
    assertThat(band.width() / whole).isCloseTo(0.4, within(1e-9));
  }

  @Test
  void allRowsShareOneScaleWideEnoughForAllOfThem() {
    DotRow far = new DotRow("b", List.of(new DotRow.Dot(60, false)), null, null, null, 1);
    List<ValueBar> bars = ValueBar.of(List.of(ROW, far));
    assertThat(bars).extracting(ValueBar::from).containsOnly(bars.get(0).from());
    assertThat(bars.get(0).from()).isLessThanOrEqualTo(0);
    assertThat(bars.get(1).to()).isGreaterThanOrEqualTo(60);
    assertThat(ValueBar.of(List.of(DotRow.of("none", List.of())))).hasSize(1);
  }

  @Test
  void differencesHaveNoughtBetweenTheEnds() {
    DotRow above = DotRow.of("a", List.of(new DotRow.Dot(40, false), new DotRow.Dot(60, false)));
    List<ValueBar> bars = ValueBar.aroundNought(List.of(above));
    assertThat(bars).hasSize(1);
    assertThat(bars.get(0).from()).isLessThanOrEqualTo(0);
    ValueBar both = new ValueBar(-10, 10, DotRow.of("b", List.of()));
    List<Shape.Line> lines =
        both.at(400, Words.english()).shapes().stream()
            .filter(Shape.Line.class::isInstance)
            .map(Shape.Line.class::cast)
            .toList();
    assertThat(lines.get(1).x1()).isCloseTo(200, within(1e-9));
  }

  @Test
  void refusesAScaleOutOfOrder() {
    assertThatThrownBy(() -> new ValueBar(3, 3, ROW)).hasMessageContaining("right end");
  }

  private static <S extends Shape> S only(Picture picture, Class<S> kind) {
    return picture.shapes().stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .findFirst()
        .orElseThrow();
  }
}
