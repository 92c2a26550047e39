package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import walebook.words.Words;

class DotPlotTest {
  private static final String LONG =
      "three-step zigzag with a very long description of needle, thread and presser foot";

  private final Words words = Words.english();

  @Test
  void dotsStandWithinTheAxisAndNoneHidesAnother() {
    Random random = new Random(11);
    for (int turn = 0; turn < 40; turn++) {
      List<DotRow.Dot> dots = new ArrayList<>();
      for (int i = 0; i < 30; i++) {
        dots.add(new DotRow.Dot(50 + 20 * random.nextGaussian(), i % 4 == 0));
      }
      Picture picture =
          new DotPlot("seam stretch, %", List.of(DotRow.of(LONG, dots)), null).at(700, words);
      List<Shape.Circle> circles = circles(picture);
      assertThat(circles).hasSize(30);
      for (int i = 0; i < circles.size(); i++) {
        Shape.Circle one = circles.get(i);
        assertThat(one.x()).isBetween(0.0, picture.width());
        assertThat(one.y()).isBetween(0.0, picture.height());
        for (Shape.Circle other : circles.subList(0, i)) {
          assertThat(Math.hypot(one.x() - other.x(), one.y() - other.y())).isGreaterThan(8.7);
        }
      }
    }
  }

  @Test
  void aPileOfEqualReadingsStaysLow() {
    List<DotRow.Dot> dots = Collections.nCopies(400, new DotRow.Dot(50, false));
    Picture picture = new DotPlot("%", List.of(DotRow.of("a", dots)), null).at(640, words);
    // No more than are seen: a dot on its like is not.
    assertThat(circles(picture)).hasSizeBetween(20, 40).doesNotHaveDuplicates();
    assertThat(picture.height()).isLessThan(320);
    assertThat(picture.shapes().stream())
        .anyMatch(shape -> shape instanceof Shape.Text text && text.says().equals("400"));
  }

  @Test
  void inAFullPileThoseThatHeldAreSeenBesideThoseThatGave() {
    List<DotRow.Dot> dots = new ArrayList<>(Collections.nCopies(4000, new DotRow.Dot(50, false)));
    dots.addAll(Collections.nCopies(4000, new DotRow.Dot(50, true)));
    dots.add(new DotRow.Dot(90, false));
    Picture picture = new DotPlot("%", List.of(DotRow.of("a", dots)), null).at(640, words);
    List<Shape.Circle> circles = circles(picture);
    assertThat(circles).hasSizeBetween(40, 80).doesNotHaveDuplicates();
    assertThat(circles).anyMatch(circle -> circle.fill() == Role.CARD);
    assertThat(circles.get(circles.size() - 1).y()).isCloseTo(circles.get(0).y(), within(1e-9));
  }

  @Test
  void onePieceAloneHasAnAxisOfNumbersThatDiffer() {
    List<DotRow.Dot> one = List.of(new DotRow.Dot(39.5238, false));
    Picture picture = new DotPlot("%", List.of(DotRow.of("a", one)), null).at(640, words);
    List<String> ticks =
        picture.shapes().stream()
            .filter(Shape.Text.class::isInstance)
            .map(shape -> ((Shape.Text) shape).says())
            .filter(says -> says.matches("[0-9.]+"))
            .toList();
    assertThat(ticks).contains("36", "40", "44").doesNotHaveDuplicates();
  }

  @Test
  void distancesOfDotsAreThoseOfTheValues() {
    List<DotRow.Dot> dots =
        List.of(new DotRow.Dot(10, false), new DotRow.Dot(30, false), new DotRow.Dot(80, true));
    List<Shape.Circle> circles =
        circles(new DotPlot("%", List.of(DotRow.of("a", dots)), 50.0).at(640, words));
    double perUnit = (circles.get(1).x() - circles.get(0).x()) / 20;
    assertThat(circles.get(2).x() - circles.get(0).x()).isCloseTo(70 * perUnit, within(1e-6));
  }

  @Test
  void heldIsOpenAndGaveIsFilled() {
    List<DotRow.Dot> dots = List.of(new DotRow.Dot(10, false), new DotRow.Dot(30, true));
    List<Shape.Circle> circles =
        circles(new DotPlot("%", List.of(DotRow.of("a", dots)), null).at(640, words));
    assertThat(circles.get(0).fill()).isEqualTo(Role.SERIES_1);
    assertThat(circles.get(1).fill()).isEqualTo(Role.CARD);
  }

  /** Open as one that held, but without its arrow: nothing says that it lies higher. */
  @Test
  void whatStandsApartIsOpenAndHasNoArrow() {
    DotRow.Dot filled = new DotRow.Dot(10, false);
    Picture gave = plotted(filled, new DotRow.Dot(30, false));
    Picture apart = plotted(filled, new DotRow.Dot(30, false, true));
    Picture held = plotted(filled, new DotRow.Dot(30, true));
    assertThat(circles(apart).get(1).fill()).isEqualTo(Role.CARD);
    assertThat(circles(apart).get(1).fill()).isEqualTo(circles(held).get(1).fill());
    assertThat(apart.shapes()).hasSameSizeAs(gave.shapes());
    assertThat(held.shapes()).hasSize(gave.shapes().size() + 1);
  }

  private Picture plotted(DotRow.Dot... dots) {
    return new DotPlot("%", List.of(DotRow.of("a", List.of(dots))), null).at(640, words);
  }

  @Test
  void longLabelsEndInAnEllipsisAndStayInside() {
    for (double width : new double[] {300, 420, 640, 1200}) {
      Picture picture =
          new DotPlot("%", List.of(DotRow.of(LONG + LONG, List.of())), null).at(width, words);
      List<Shape.Text> texts =
          picture.shapes().stream()
              .filter(Shape.Text.class::isInstance)
              .map(Shape.Text.class::cast)
              .toList();
      assertThat(texts).anyMatch(text -> text.says().endsWith("…"));
      for (Shape.Text text : texts) {
        assertThat(text.left()).isGreaterThanOrEqualTo(-0.01);
        assertThat(text.left() + TextWidth.of(text.says(), text.size()))
            .isLessThanOrEqualTo(picture.width() + 0.01);
      }
    }
  }

  @Test
  void whatStandsLastInALabelIsReadOnASecondLine() {
    DotRow row =
        DotRow.of("Breakwater rib · four-thread overlock · length 2.5 · feed 1.3", List.of());
    List<Shape.Text> texts =
        new DotPlot("%", List.of(row), null)
            .at(640, words).shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .map(Shape.Text.class::cast)
                .toList();
    assertThat(texts).noneMatch(text -> text.says().endsWith("…"));
    assertThat(texts).anyMatch(text -> text.says().endsWith("feed 1.3") && text.left() >= 0);
  }

  @Test
  void anIntervalFarBeyondWhatWasMeasuredLeavesTheDotsReadable() {
    DotRow row =
        new DotRow(
            "a",
            List.of(new DotRow.Dot(40, false), new DotRow.Dot(60, false)),
            50.,
            -900.,
            1000.,
            0);
    Picture picture = new DotPlot("%", List.of(row), null).at(640, words);
    List<Shape.Circle> circles = circles(picture);
    assertThat(circles.get(1).x() - circles.get(0).x()).isGreaterThan(100);
    assertThat(picture.shapes().stream())
        .filteredOn(each -> each instanceof Shape.Text text && text.says().equals("…"))
        .hasSize(2);
  }

  @Test
  void aScaleOfCountsHasWholeNumbersOnly() {
    List<DotRow.Dot> dots = List.of(new DotRow.Dot(1, false), new DotRow.Dot(2, true));
    Picture picture = new DotPlot("n", List.of(DotRow.of("a", dots)), null).at(900, words);
    assertThat(picture.shapes().stream())
        .noneMatch(each -> each instanceof Shape.Text text && text.says().contains("."))
        .anyMatch(each -> each instanceof Shape.Text text && text.says().equals("2"));
  }

  private static List<Shape.Circle> circles(Picture picture) {
    return picture.shapes().stream()
        .filter(Shape.Circle.class::isInstance)
        .map(Shape.Circle.class::cast)
        .toList();
  }
}
