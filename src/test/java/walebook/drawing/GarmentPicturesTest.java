package walebook.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import walebook.Seeded;
import walebook.garment.AllowancePlan;
import walebook.garment.BandChoice;
import walebook.garment.BandPlan;
import walebook.garment.BandRatio;
import walebook.garment.ClothStretch;
import walebook.garment.GarmentQuestion;
import walebook.garment.Girth;
import walebook.garment.GirthPlan;
import walebook.garment.GrainRound;
import walebook.garment.GrainStretch;
import walebook.garment.OpeningEdge;
import walebook.garment.OpeningPlan;
import walebook.garment.QuarterMarks;
import walebook.garment.Wear;
import walebook.quantity.Unit;
import walebook.tables.SharedTables;
import walebook.words.Words;

class GarmentPicturesTest {
  private static final Words WORDS = Words.english();
  private static final BandPlan BAND = new BandPlan(560, 0.7756, 20, 6, 6);

  static List<Drawing> drawings() {
    GrainStretch far = new GrainStretch(60, 0.5);
    GrainStretch near = new GrainStretch(15, 0.5);
    return List.of(
        new RingsPicture(900, 800, Unit.CM),
        new RingsPicture(900, 1100, Unit.INCH),
        new RingsPicture(900, 900, Unit.MM),
        new PatternPiecePicture(new ClothStretch(near, far), GrainRound.COURSE),
        new PatternPiecePicture(new ClothStretch(near, far), GrainRound.WALE),
        new PatternPiecePicture(new ClothStretch(null, null), GrainRound.COURSE),
        new AllowancePicture(15, 6, Math.toRadians(100), Math.toRadians(170)),
        new AllowancePicture(6, 15, Math.PI, Math.PI),
        new AllowancePicture(0, 0, 0, 0),
        new BandPicture(BAND, QuarterMarks.of(560, BAND.lengthMm(), 4)),
        new BandPicture(new BandPlan(200, 1.2, 30, 6, 6), QuarterMarks.of(200, 240, 8)),
        new LockedPicture(400, List.of(60.0, 80.0, 40.0), List.of(30.0, 20.0)),
        new LockedPicture(100, List.of(100.0), List.of()));
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void everythingStaysInsideAtAnyWidthAndIsToldInWords(Drawing drawing) {
    for (double width : new double[] {0, drawing.leastWidth(), 500, 1200}) {
      Picture picture = drawing.at(width, WORDS);
      for (Shape shape : picture.shapes()) {
        if (shape instanceof Shape.Text text) {
          double wide = TextWidth.of(text.says(), text.size());
          assertThat(text.left()).as(text.says()).isGreaterThanOrEqualTo(-0.5);
          assertThat(text.left() + wide).as(text.says()).isLessThanOrEqualTo(picture.width() + 0.5);
          assertThat(text.y()).isBetween(8.0, picture.height());
          assertThat(text.says()).doesNotContain("{", "}", "[", "NaN");
        }
        if (shape instanceof Shape.Line line) {
          for (double y : new double[] {line.y1(), line.y2()}) {
            assertThat(y).isBetween(0.0, picture.height());
          }
          for (double x : new double[] {line.x1(), line.x2()}) {
            assertThat(x).isBetween(-0.5, picture.width() + 0.5);
          }
        }
      }
      assertThat(WORDS.say(picture.says())).doesNotContain("{", "}", "[", "NaN");
      assertThat(Svg.of(picture, Palette.LIGHT, WORDS)).doesNotContain("NaN");
    }
  }

  @Test
  void ringsAreInProportion() {
    Seeded.cases(
        9,
        random -> {
          double body = Seeded.between(random, 100, 1500);
          double garment = Seeded.between(random, 100, 1500);
          List<Shape.Circle> rings =
              new RingsPicture(body, garment, Unit.MM)
                  .at(320, WORDS).shapes().stream()
                      .filter(Shape.Circle.class::isInstance)
                      .map(Shape.Circle.class::cast)
                      .filter(circle -> circle.pen() != null)
                      .toList();
          assertThat(rings).hasSize(2);
          assertThat(rings.get(1).radius() / rings.get(0).radius())
              .isCloseTo(garment / body, within(1e-9));
        });
  }

  @Test
  void ringsAreToldApartWithoutColour() {
    List<Pen.Dash> dashes =
        new RingsPicture(900, 800, Unit.MM)
            .at(320, WORDS).shapes().stream()
                .filter(Shape.Circle.class::isInstance)
                .map(shape -> ((Shape.Circle) shape).pen())
                .filter(pen -> pen != null)
                .map(Pen::dash)
                .toList();
    assertThat(dashes).containsExactly(Pen.Dash.SOLID, Pen.Dash.DASHED);
  }

  @Test
  void bandMarksStandAtTheirPlaces() {
    Picture picture =
        new BandPicture(BAND, QuarterMarks.of(560, BAND.lengthMm(), 4)).at(560, WORDS);
    List<Double> places =
        picture.shapes().stream()
            .filter(Shape.Line.class::isInstance)
            .map(Shape.Line.class::cast)
            .filter(line -> line.pen().role() == Role.ACCENT)
            .map(Shape.Line::x1)
            .toList();
    assertThat(places).hasSize(4);
    double quarter = BAND.lengthMm() / 4 * (560 - 28) / 560;
    for (int i = 1; i < 4; i++) {
      assertThat(places.get(i) - places.get(i - 1)).isCloseTo(quarter, within(1e-6));
    }
    assertThat(
            picture.shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .map(Shape.Text.class::cast)
                .filter(text -> text.role() == Role.ACCENT)
                .map(Shape.Text::says))
        .hasSize(4)
        .startsWith("0 mm")
        .noneMatch(text -> text.endsWith(".0"));
  }

  @Test
  void whatDoesNotFitIsRefused() {
    assertThatThrownBy(() -> new RingsPicture(0, 800, Unit.MM))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new LockedPicture(100, List.of(60.0, 60.0), List.of(0.0)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new AllowancePicture(15, -1, 1, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aGarmentHasThePicturesThatItsNumbersFill() {
    SharedTables tables = SharedTables.read();
    GarmentQuestion question =
        new GarmentQuestion(
            tables.garment().kinds().stream()
                .filter(each -> each.key().equals("fitted-top"))
                .findFirst()
                .orElseThrow(),
            null,
            new ClothStretch(null, new GrainStretch(60, 0.5)),
            GrainRound.COURSE,
            Wear.DAY,
            10,
            List.of(
                new GirthPlan(Girth.CHEST, 920.0, 880.0, 2),
                new GirthPlan(Girth.WAIST, 760.0, null, 2)),
            List.of(
                new OpeningPlan(OpeningEdge.NECKLINE, Girth.HEAD, 520.0, 575.0, 6, 0, List.of())),
            new AllowancePlan(15, 6, true, 1.7, 3),
            List.of(
                new BandChoice(
                    OpeningEdge.NECKLINE, BAND, BandRatio.Place.NECK, 6, null, Girth.HEAD, null)));
    List<GarmentPictures.One> all = GarmentPictures.of(question, Unit.CM);
    assertThat(all.stream().map(GarmentPictures.One::kind))
        .containsExactly(
            GarmentPictures.Kind.RINGS,
            GarmentPictures.Kind.RINGS,
            GarmentPictures.Kind.PIECE,
            GarmentPictures.Kind.ALLOWANCE,
            GarmentPictures.Kind.BAND);
    assertThat(all.stream().map(each -> WORDS.say(each.about())))
        .startsWith("chest or bust", "neckline over head");
    // Trimmed, the seam stays on the pattern's own line.
    assertThat(all.get(3).drawing()).isEqualTo(new AllowancePicture(15, 15, 1.7, 3));
    all.forEach(each -> everythingStaysInsideAtAnyWidthAndIsToldInWords(each.drawing()));
  }

  @Test
  void withoutASleeveTheStraightEdgeStandsAlone() {
    double tall = new AllowancePicture(15, 6, 1.7, 3).at(270, WORDS).height();
    double alone = new AllowancePicture(15, 6, 0, 0).at(270, WORDS).height();
    assertThat(alone).isLessThan(tall / 2);
  }
}
