package walebook.cloth;

import java.util.ArrayList;
import java.util.List;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** Mass per unit area of a cloth from a weighed swatch, and between its units. */
public final class ClothMass {
  /** ASTM D3776 Option C asks for 100 cm² in all. */
  private static final double SMALLEST_MM2 = 10_000;

  private ClothMass() {}

  /**
   * Works out mass per unit area from a swatch.
   *
   * @param massG what it weighs, over 0
   * @param aMm one side, over 0
   * @param bMm the other side, over 0
   * @param scaleToG what the scale reads to
   * @param readToMm what the rule reads to
   */
  public static Answer<Working> of(
      double massG, double aMm, double bMm, double scaleToG, double readToMm) {
    List<Problem> found = new ArrayList<>();
    positive(found, "mass", massG, "1.8");
    positive(found, "side-a", aMm, "100 mm");
    positive(found, "side-b", bMm, "100 mm");
    found.addAll(ReadTo.check("scale-to", scaleToG));
    found.addAll(ReadTo.check("read-to", readToMm));
    if (!found.isEmpty()) {
      return Answer.bad(found);
    }
    double mass = AreaMass.ofSwatch(massG, aMm, bMm);
    double u =
        mass
            * ReadingUncertainty.combined(
                ReadingUncertainty.ofResolution(scaleToG) / massG,
                ReadingUncertainty.ofResolution(readToMm) / aMm,
                ReadingUncertainty.ofResolution(readToMm) / bMm);
    WorkingBuilder board =
        Working.named("mass", Message.of("cloth.mass.title"))
            .step(
                Message.of("cloth.mass.step"),
                "M = m ÷ (a × b)",
                "%s g ÷ (%s m × %s m) = %s g/m²"
                    .formatted(n(massG), n(aMm / 1000), n(bMm / 1000), Show.fixed(mass, 1)))
            .step(
                Message.of("cloth.mass.step-uncertainty"),
                "u(M) = M × √((u(m) ÷ m)² + (u ÷ a)² + (u ÷ b)²)",
                "with u = d ÷ √12: %s g/m²".formatted(Show.fixed(u, 2)))
            .step(Message.of("cloth.mass.step-ounces"), "M ÷ 33.9057", ounces(mass))
            .result(Measured.of(mass, Unit.GRAM_PER_M2, u))
            .source(Source.Kind.STANDARD, "ASTM D3776, Option C; ISO 3801");
    if (aMm * bMm < SMALLEST_MM2) {
      board.assume(Message.of("cloth.assume.small-swatch"));
    }
    board.assume(Message.of("cloth.assume.flat-swatch"));
    return Answer.good(
        board.says(
            Message.of(
                "cloth.mass.says",
                Show.fixed(mass, 0),
                Show.fixed(2 * u, 0),
                Show.fixed(AreaMass.toOunces(mass), 1))));
  }

  /** Works out what g/m² are in oz/yd², or the other way. */
  public static Answer<Working> converted(double value, boolean fromOunces) {
    if (!(Double.isFinite(value) && value > 0)) {
      return Answer.bad(Problem.refuse("mass.not-positive", Place.field("mass"), n(value), "180"));
    }
    double grams = fromOunces ? AreaMass.fromOunces(value) : value;
    WorkingBuilder board =
        Working.named("mass-units", Message.of("cloth.mass-units.title"))
            .step(
                Message.of("cloth.mass-units.step-factor"),
                "1 oz/yd² = 28.349523125 g ÷ (0.9144 m)²",
                "28.349523125 ÷ 0.83612736 = 33.9057 g/m²")
            .result(Measured.of(grams, Unit.GRAM_PER_M2))
            .source(Source.Kind.STANDARD, "international yard and pound agreement of 1959, exact")
            .assume(Message.of("cloth.assume.square-yard"));
    if (fromOunces) {
      board.step(
          Message.of("cloth.mass-units.step-grams"),
          "oz/yd² × 33.9057",
          "%s × 33.9057 = %s g/m²".formatted(n(value), Show.fixed(grams, 2)));
    } else {
      board.step(Message.of("cloth.mass.step-ounces"), "M ÷ 33.9057", ounces(grams));
    }
    return Answer.good(
        board.says(
            Message.of(
                "cloth.mass-units.says",
                Show.fixed(grams, 1),
                Show.fixed(AreaMass.toOunces(grams), 2))));
  }

  private static String ounces(double grams) {
    return "%s ÷ 33.9057 = %s oz/yd²"
        .formatted(Show.fixed(grams, 1), Show.fixed(AreaMass.toOunces(grams), 2));
  }

  private static void positive(List<Problem> found, String field, double value, String wanted) {
    if (!(Double.isFinite(value) && value > 0)) {
      found.add(Problem.refuse("mass.not-positive", Place.field(field), n(value), wanted));
    }
  }

  private static String n(double value) {
    return Show.upTo(value, 4);
  }
}
