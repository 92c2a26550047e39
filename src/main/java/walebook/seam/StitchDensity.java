package walebook.seam;

import walebook.problem.Answer;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;

/** Stitches in a centimetre and in an inch of seam. */
public final class StitchDensity {
  private StitchDensity() {}

  /** 10 ÷ l, l in mm. */
  public static double perCm(double lengthMm) {
    return Unit.CM.inBase() / lengthMm;
  }

  /** 25.4 ÷ l, l in mm. */
  public static double perInch(double lengthMm) {
    return Unit.INCH.inBase() / lengthMm;
  }

  /** Works out both; the result is per cm. */
  public static Answer<Working> of(double lengthMm) {
    Needs needs = new Needs().positive("length", lengthMm, "2.5 mm");
    if (needs.failed()) {
      return Answer.bad(needs.problems());
    }
    String l = Show.upTo(lengthMm, 2);
    return Answer.good(
        Working.named("stitch-density", Message.of("seam.density.title"))
            .step(
                Message.of("seam.density.step-cm"),
                "10 ÷ l",
                "10 ÷ %s = %s per cm".formatted(l, Show.upTo(perCm(lengthMm), 2)))
            .step(
                Message.of("seam.density.step-inch"),
                "25.4 ÷ l",
                "25.4 ÷ %s = %s per inch".formatted(l, Show.upTo(perInch(lengthMm), 2)))
            .result(Measured.of(perCm(lengthMm), Unit.PER_CM))
            .assume(Message.of("seam.assume.sewn-stitch"))
            .source(Source.Kind.DEFINITION, "stitches per length; the inch is 25.4 mm exactly")
            .says(
                Message.of(
                    "seam.density.says",
                    Show.upTo(perCm(lengthMm), 1),
                    Show.upTo(perInch(lengthMm), 1))));
  }
}
