package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.words.Words;

class HeatTableTest {
  private static final HeatTable TABLE =
      new HeatTable(
          "width by length: seam stretch, %",
          List.of("width 1", "width 2"),
          List.of("length 1.5", "length 2.5"),
          List.of(
              List.of(new HeatTable.Cell(20.0, 3), new HeatTable.Cell(40.0, 2)),
              List.of(new HeatTable.Cell(null, 0), new HeatTable.Cell(60.0, 1))));

  private final Words words = Words.english();

  @Test
  void theFillStandsAsHighAsTheNumberBetweenLeastAndMost() {
    List<Shape.Rect> fills =
        all(TABLE.at(500, words), Shape.Rect.class).stream()
            .filter(each -> each.fill() == Role.WASH)
            .toList();
    List<Shape.Rect> cells =
        all(TABLE.at(500, words), Shape.Rect.class).stream()
            .filter(each -> each.fill() == null)
            .toList();
    double whole = cells.get(0).height();
    assertThat(cells).hasSize(4);
    // 20, 40 and 60 between 20 and 60: none, half, all; the least keeps a line to be seen.
    assertThat(fills.get(0).height()).isEqualTo(2);
    assertThat(fills.get(1).height() / whole).isCloseTo(0.5, within(1e-9));
    assertThat(fills.get(2).height() / whole).isCloseTo(1, within(1e-9));
    assertThat(fills.get(1).y() + fills.get(1).height())
        .isCloseTo(cells.get(1).y() + whole, within(1e-9));
  }

  @Test
  void everyNumberStandsInItsCellWithHowManyItRestsOn() {
    List<String> says =
        all(TABLE.at(500, words), Shape.Text.class).stream().map(Shape.Text::says).toList();
    assertThat(says).contains("20.0", "n 3", "40.0", "n 2", "60.0", "n 1", "–", "width 2");
    assertThat(words.say(TABLE.at(500, words).says())).contains("2 rows, 2 columns", "3 cells");
  }

  /** What only held is no number like the others, and no empty cell either. */
  @Test
  void aBoundIsFilledLikeANumberAndMarkedAsOne() {
    HeatTable table =
        new HeatTable(
            "width by length",
            List.of("width 1"),
            List.of("length 1.5", "length 2.5"),
            List.of(
                List.of(
                    new HeatTable.Cell(40.0, 5, HeatTable.Kind.HALF),
                    new HeatTable.Cell(90.0, 3, HeatTable.Kind.AT_LEAST))));
    assertThat(all(table.at(500, words), Shape.Text.class))
        .extracting(Shape.Text::says)
        .contains("½ 40.0", "≥ 90.0");
    assertThat(all(table.at(500, words), Shape.Rect.class))
        .filteredOn(each -> each.fill() == Role.WASH)
        .hasSize(2);
  }

  @Test
  void longNamesStayInsideAtEveryWidth() {
    String name = "three-step zigzag with a very long description of needle and thread";
    HeatTable table =
        new HeatTable(
            name + name,
            List.of(name),
            List.of(name, name, name),
            List.of(
                List.of(
                    new HeatTable.Cell(1.0, 1),
                    new HeatTable.Cell(1.0, 1),
                    new HeatTable.Cell(1.0, 1))));
    for (double width : new double[] {300, 480, 900}) {
      Picture picture = table.at(width, words);
      for (Shape.Text text : all(picture, Shape.Text.class)) {
        assertThat(text.left()).isGreaterThanOrEqualTo(-0.01);
        assertThat(text.left() + TextWidth.of(text.says(), text.size()))
            .isLessThanOrEqualTo(picture.width() + 0.01);
      }
    }
  }

  @Test
  void refusesCellsThatDontFillTheTable() {
    assertThatThrownBy(() -> new HeatTable("a", List.of("b"), List.of("c"), List.of(List.of())))
        .hasMessageContaining("cells");
  }

  @Test
  void aLongNameGoesOnBelow() {
    HeatTable table =
        new HeatTable(
            "%",
            List.of("straight stitch (lockstitch)"),
            List.of("four-thread overlock with a wide bite"),
            List.of(List.of(new HeatTable.Cell(1.0, 1))));
    List<String> said =
        table.at(260, Words.english()).shapes().stream()
            .filter(Shape.Text.class::isInstance)
            .map(each -> ((Shape.Text) each).says())
            .toList();
    assertThat(said).contains("(lockstitch)").noneMatch(each -> each.endsWith("…"));
  }

  private static <S extends Shape> List<S> all(Picture picture, Class<S> kind) {
    return picture.shapes().stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
