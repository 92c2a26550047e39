package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.words.Words;

class ScatterBandTest {
  private static final ScatterBand PLOT =
      new ScatterBand(
          "width",
          "seam stretch, %",
          List.of(
              new ScatterBand.Point(1, 20),
              new ScatterBand.Point(2, 30),
              new ScatterBand.Point(4, 50)),
          List.of(new ScatterBand.Edge(1, 15, 20, 25), new ScatterBand.Edge(4, 45, 50, 55)));

  private final Words words = Words.english();

  @Test
  void pointsStandToScaleRightwardsAndUpwards() {
    List<Shape.Circle> dots = all(PLOT.at(520, words), Shape.Circle.class);
    assertThat(dots).hasSize(3);
    double across = dots.get(1).x() - dots.get(0).x();
    double up = dots.get(0).y() - dots.get(1).y();
    assertThat(across).isPositive();
    assertThat(up).isPositive();
    assertThat(dots.get(2).x() - dots.get(0).x()).isCloseTo(3 * across, within(1e-9));
    assertThat(dots.get(0).y() - dots.get(2).y()).isCloseTo(3 * up, within(1e-9));
  }

  @Test
  void theBandIsOneShapeWithTheLineOverItAndNoneWithoutALine() {
    List<Shape.Path> paths = all(PLOT.at(520, words), Shape.Path.class);
    assertThat(paths).extracting(Shape.Path::fill).containsExactly(Role.WASH, null);
    ScatterBand bare = new ScatterBand("a", "b", PLOT.points(), List.of());
    assertThat(all(bare.at(520, words), Shape.Path.class)).isEmpty();
    assertThat(
            all(new ScatterBand("a", "b", List.of(), List.of()).at(520, words), Shape.Circle.class))
        .isEmpty();
  }

  private static <S extends Shape> List<S> all(Picture picture, Class<S> kind) {
    return picture.shapes().stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
