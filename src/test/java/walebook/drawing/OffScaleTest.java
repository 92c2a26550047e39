package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.words.Words;

/** A slip of the pen in every kind of plot: the others stay readable, the slip stays in sight. */
class OffScaleTest {
  private static final double[] VALUES = {38, 41, 44, 47, 50, 53, 56, 59, 62, 65};

  private final Words words = Words.english();

  private static DotRow row(String label, boolean held, double... more) {
    List<DotRow.Dot> dots = new ArrayList<>();
    for (double each : VALUES) {
      dots.add(new DotRow.Dot(each, false));
    }
    for (double each : more) {
      dots.add(new DotRow.Dot(each, held));
    }
    return DotRow.of(label, dots);
  }

  @Test
  void theOthersKeepTheScaleAndTheSlipStandsInTheMarginWithItsFigure() {
    for (double width : new double[] {300, 640, 1200}) {
      DotPlot plot = new DotPlot("%", List.of(row("a", false), row("b", false, 395.2)), null);
      Picture picture = plot.at(width, words);
      Picture without =
          new DotPlot("%", List.of(row("a", false), row("b", false)), null).at(width, words);
      assertThat(all(picture, Shape.Circle.class)).hasSize(2 * VALUES.length);
      assertThat(span(picture)).isGreaterThan(0.6 * span(without));
      Shape.Text figure = text(picture, "395.2");
      double last =
          all(picture, Shape.Circle.class).stream().mapToDouble(Shape.Circle::x).max().orElse(0);
      assertThat(figure.left()).isGreaterThan(last + 10);
      staysInside(picture);
      assertThat(words.say(picture.says())).contains("b: 395.2");
    }
  }

  @Test
  void theCaptionIsPartOfThePictureAndSaysHowMany() {
    Picture picture = new DotPlot("%", List.of(row("a", false, 395.2)), null).at(640, words);
    assertThat(said(picture)).contains("Double arrow").contains("(1 of 11)");
    Picture without = new DotPlot("%", List.of(row("a", false)), null).at(640, words);
    assertThat(said(without)).doesNotContain("Double arrow");
  }

  @Test
  void oneThatHeldSaysThatItIsTheLeastItMayBe() {
    Picture picture = new DotPlot("%", List.of(row("a", true, 395.2)), null).at(640, words);
    assertThat(said(picture)).contains("≥ 395.2");
  }

  @Test
  void whatLiesFarBelowStandsAtTheOtherEnd() {
    Picture picture = new DotPlot("%", List.of(row("a", false, -450)), null).at(640, words);
    double first =
        all(picture, Shape.Circle.class).stream().mapToDouble(Shape.Circle::x).min().orElse(0);
    assertThat(text(picture, "−450").left()).isLessThan(first - 20);
    staysInside(picture);
  }

  @Test
  void aMiddleThatTheSlipDragsOffIsSaidToo() {
    DotRow far = new DotRow("b", List.of(new DotRow.Dot(395, false)), 395.0, null, null, 0);
    Picture picture = new DotPlot("%", List.of(row("a", false), far), null).at(640, words);
    assertThat(said(picture)).contains("395", "middle 395");
  }

  @Test
  void theIntervalThatTheSlipDragsAlongTakesNoRoom() {
    DotRow far = new DotRow("b", List.of(new DotRow.Dot(395, false)), 395.0, 360.0, 430.0, 0);
    Picture picture = new DotPlot("%", List.of(row("a", false), far), null).at(640, words);
    Picture without = new DotPlot("%", List.of(row("a", false)), null).at(640, words);
    assertThat(span(picture)).isGreaterThan(0.6 * span(without));
  }

  @Test
  void partsOfAPlotKeepTheScaleOfTheWhole() {
    DotPlot plot = new DotPlot("%", List.of(row("a", false, 395.2), row("b", false)), null);
    List<DotPlot> parts = plot.parts(1);
    assertThat(parts).hasSize(2);
    assertThat(said(parts.get(0).at(640, words))).contains("395.2");
    assertThat(said(parts.get(1).at(640, words))).doesNotContain("Double arrow");
    assertThat(all(parts.get(1).at(640, words), Shape.Circle.class)).hasSize(VALUES.length);
  }

  @Test
  void smallPlotsBesideEachOtherDoTheSame() {
    DotPlot plot = new DotPlot("%", List.of(row("a", false, 395.2)), null);
    Picture picture =
        new SmallMultiples(Collections.nCopies(2, new SmallMultiples.Panel("stitch", plot)))
            .at(900, words);
    assertThat(said(picture)).contains("395.2", "Double arrow");
    staysInside(picture);
  }

  @Test
  void barsOfATableShareTheScaleAndTheRoomForTheFigure() {
    List<DotRow> rows = List.of(row("a", false), row("b", false, 395.2));
    List<ValueBar> bars = ValueBar.of(rows);
    assertThat(ValueBar.isAnyOff(bars)).isTrue();
    assertThat(ValueBar.isAnyOff(ValueBar.of(List.of(row("a", false))))).isFalse();
    Picture one = bars.get(0).at(220, words);
    Picture other = bars.get(1).at(220, words);
    assertThat(said(other)).contains("395.2");
    assertThat(said(one)).isEmpty();
    assertThat(all(one, Shape.Circle.class)).isEqualTo(all(other, Shape.Circle.class));
    staysInside(other);
  }

  @Test
  void pointsFarUpOrFarRightStandBeyondTheEdge() {
    List<ScatterBand.Point> points = new ArrayList<>();
    for (int i = 0; i < VALUES.length; i++) {
      points.add(new ScatterBand.Point(2 + i % 3, VALUES[i]));
    }
    points.addAll(List.copyOf(points));
    points.add(new ScatterBand.Point(4, 560));
    points.add(new ScatterBand.Point(35, 50));
    ScatterBand plot =
        new ScatterBand(
            "width",
            "seam stretch, %",
            points,
            List.of(new ScatterBand.Edge(2, 0, 40, 80), new ScatterBand.Edge(35, -300, 500, 1300)));
    Picture picture = plot.at(520, words);
    assertThat(all(picture, Shape.Circle.class)).hasSize(2 * VALUES.length);
    assertThat(span(picture)).isGreaterThan(150);
    assertThat(said(picture)).contains("560", "35", "(2 of 22)");
    double highest =
        all(picture, Shape.Circle.class).stream().mapToDouble(Shape.Circle::y).min().orElse(0);
    assertThat(text(picture, "560").y()).isLessThan(highest);
    assertThat(text(picture, "35").left()).isGreaterThan(520 - 60);
    staysInside(picture);
    assertThat(words.say(picture.says())).contains("560", "35");
  }

  @Test
  void aCellFarOffDoesNotEmptyTheOthers() {
    List<List<HeatTable.Cell>> cells = new ArrayList<>();
    for (double each : new double[] {40, 50, 60, 70, 80, 900}) {
      cells.add(List.of(new HeatTable.Cell(each, 2)));
    }
    HeatTable table =
        new HeatTable("%", List.of("a", "b", "c", "d", "e", "f"), List.of("x"), cells);
    Picture picture = table.at(300, words);
    List<Double> fills =
        all(picture, Shape.Rect.class).stream()
            .filter(each -> each.fill() == Role.WASH)
            .map(Shape.Rect::height)
            .toList();
    assertThat(fills.get(2)).isBetween(0.4 * fills.get(5), 0.6 * fills.get(5));
    assertThat(said(picture)).contains("900.0", "(1 of 6)");
    staysInside(picture);
  }

  private static double span(Picture picture) {
    return all(picture, Shape.Circle.class).stream().mapToDouble(Shape.Circle::x).max().orElse(0)
        - all(picture, Shape.Circle.class).stream().mapToDouble(Shape.Circle::x).min().orElse(0);
  }

  private static void staysInside(Picture picture) {
    for (Shape.Text text : all(picture, Shape.Text.class)) {
      assertThat(text.left()).as(text.says()).isGreaterThanOrEqualTo(-0.01);
      assertThat(text.left() + TextWidth.of(text.says(), text.size()))
          .as(text.says())
          .isLessThanOrEqualTo(picture.width() + 0.01);
      assertThat(text.y()).as(text.says()).isLessThanOrEqualTo(picture.height());
    }
  }

  private static String said(Picture picture) {
    return String.join(" ", all(picture, Shape.Text.class).stream().map(Shape.Text::says).toList());
  }

  private static Shape.Text text(Picture picture, String says) {
    return all(picture, Shape.Text.class).stream()
        .filter(each -> each.says().equals(says))
        .findFirst()
        .orElseThrow();
  }

  private static <S extends Shape> List<S> all(Picture picture, Class<S> kind) {
    return picture.shapes().stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
