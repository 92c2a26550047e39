package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.kit.ClothToBuy;
import walebook.kit.CutPiece;
import walebook.kit.CuttingPlan;
import walebook.kit.Placed;
import walebook.kit.Roll;
import walebook.quantity.Unit;
import walebook.words.Words;

class CuttingPlanPictureTest {
  private static final Words WORDS = Words.english();
  private static final CuttingPlan PLAN =
      ClothToBuy.of(
              "jersey",
              List.of(
                  new CutPiece(
                      "strips, long side course-wise, cut with great care", 9, 200, 100, false),
                  new CutPiece("cuffs", 4, 150, 120, true),
                  new CutPiece("tabs", 20, 12, 9, true)),
              new Roll(700, 5, 0, 0, 100),
              1)
          .value()
          .plan();

  private static List<Shape.Rect> rects(Picture picture) {
    return picture.shapes().stream()
        .filter(Shape.Rect.class::isInstance)
        .map(Shape.Rect.class::cast)
        .toList();
  }

  @Test
  void everyPieceIsDrawnToOneScaleInsideTheCloth() {
    Picture picture = new CuttingPlanPicture("Jersey", PLAN, Unit.CM).at(700, WORDS);
    List<Shape.Rect> rects = rects(picture);
    Shape.Rect cloth = rects.get(0);
    double scale = cloth.width() / PLAN.alongMm();
    assertThat(cloth.height()).isCloseTo(PLAN.acrossMm() * scale, within(1e-6));
    assertThat(rects).hasSize(1 + PLAN.placed().size());
    for (int i = 0; i < PLAN.placed().size(); i++) {
      Placed placed = PLAN.placed().get(i);
      Shape.Rect drawn = rects.get(i + 1);
      assertThat(drawn.width()).isCloseTo(placed.alongMm() * scale, within(1e-6));
      assertThat(drawn.height()).isCloseTo(placed.acrossMm() * scale, within(1e-6));
      assertThat(drawn.x()).isBetween(cloth.x() - 1e-6, cloth.x() + cloth.width());
      assertThat(drawn.y()).isBetween(cloth.y() - 1e-6, cloth.y() + cloth.height());
      // Told apart by outline and letter: one fill for all, so a photocopy shows the same.
      assertThat(drawn.pen()).isNotNull();
      assertThat(drawn.fill()).isEqualTo(Role.CARD);
    }
  }

  @Test
  void textsStayInsideAtAnyWidthAndNothingIsLeftUnsaid() {
    for (double width : new double[] {0, 300, 560, 1200}) {
      for (Unit unit : List.of(Unit.MM, Unit.CM, Unit.INCH)) {
        Picture picture = new CuttingPlanPicture("Jersey", PLAN, unit).at(width, WORDS);
        for (Shape shape : picture.shapes()) {
          if (shape instanceof Shape.Text text) {
            double wide = TextWidth.of(text.says(), text.size());
            assertThat(text.left()).isGreaterThanOrEqualTo(-0.5);
            assertThat(text.left() + wide)
                .as(text.says())
                .isLessThanOrEqualTo(picture.width() + 0.5);
            assertThat(text.y()).isBetween(8.0, picture.height());
            assertThat(text.says()).doesNotContain("{", "[", "NaN");
          }
        }
        assertThat(WORDS.say(picture.says())).contains("33 pieces").doesNotContain("{", "[");
      }
    }
  }

  @Test
  void theNameOfAPieceIsNeverCutShort() {
    for (double width : new double[] {300, 560, 1200}) {
      Picture picture = new CuttingPlanPicture("Jersey", PLAN, Unit.CM).at(width, WORDS);
      String all =
          picture.shapes().stream()
              .filter(Shape.Text.class::isInstance)
              .map(each -> ((Shape.Text) each).says())
              .collect(java.util.stream.Collectors.joining(" "));
      assertThat(all)
          .contains("strips, long side course-wise, cut with great care, 20 cm across and 10 cm")
          .doesNotContain("…");
    }
  }

  @Test
  void aLongClothAndANarrowScrapKeepTheirShape() {
    CuttingPlan scrap = new CuttingPlan(List.of(), 900, 30, 0, List.of());
    Picture tall = new CuttingPlanPicture("scrap", scrap, Unit.MM).at(400, WORDS);
    Shape.Rect cloth = rects(tall).get(0);
    assertThat(cloth.height() / cloth.width()).isCloseTo(30, within(1e-6));
    assertThat(cloth.height()).isLessThanOrEqualTo(300);
    assertThatThrownBy(
            () ->
                new CuttingPlanPicture(
                    "none", new CuttingPlan(List.of(), 900, 0, 0, List.of()), Unit.MM))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void lettersGoOnAfterZ() {
    assertThat(CuttingPlanPicture.letter(0)).isEqualTo("A");
    assertThat(CuttingPlanPicture.letter(25)).isEqualTo("Z");
    assertThat(CuttingPlanPicture.letter(26)).isEqualTo("AA");
    assertThat(CuttingPlanPicture.letter(27)).isEqualTo("AB");
  }
}
