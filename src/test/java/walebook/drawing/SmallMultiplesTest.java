package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.words.Words;

class SmallMultiplesTest {
  private static final SmallMultiples.Panel PANEL =
      new SmallMultiples.Panel(
          "stitch",
          new DotPlot(
              "seam stretch, %",
              List.of(
                  DotRow.of(
                      "zigzag", List.of(new DotRow.Dot(30, false), new DotRow.Dot(40, true)))),
              null));

  private final Words words = Words.english();

  @Test
  void plotsStandSideBySideWhereThereIsRoomAndUnderEachOtherWhereNot() {
    SmallMultiples four = new SmallMultiples(Collections.nCopies(4, PANEL));
    Picture wide = four.at(1100, words);
    Picture narrow = four.at(340, words);
    assertThat(narrow.height()).isGreaterThan(1.8 * wide.height());
    for (Picture each : List.of(wide, narrow)) {
      List<Shape.Circle> dots = all(each, Shape.Circle.class);
      assertThat(dots).hasSize(8);
      assertThat(dots).allMatch(dot -> dot.x() > 0 && dot.x() < each.width());
      assertThat(dots).allMatch(dot -> dot.y() > 0 && dot.y() < each.height());
      assertThat(all(each, Shape.Text.class).stream().map(Shape.Text::says))
          .filteredOn("stitch"::equals)
          .hasSize(4);
    }
    assertThat(words.say(wide.says())).contains("4 small plots", "stitch");
  }

  private static <S extends Shape> List<S> all(Picture picture, Class<S> kind) {
    return picture.shapes().stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
