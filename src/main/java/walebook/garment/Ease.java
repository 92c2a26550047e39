package walebook.garment;

import java.util.List;
import walebook.cloth.LengthChange;
import walebook.problem.Answer;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** Ease counted both ways, and how far the cloth is stretched when worn; girths in mm. */
public final class Ease {
  private Ease() {}

  /** Ease in mm: finished less body; negative when the garment is smaller than the body. */
  public static double mm(double bodyMm, double finishedMm) {
    return finishedMm - bodyMm;
  }

  /** Ease in per cent of the body. */
  public static double percent(double bodyMm, double finishedMm) {
    return LengthChange.percent(bodyMm, finishedMm);
  }

  /** Worn strain ε = 100 (body − finished) ÷ finished, in per cent of the garment; else 0. */
  public static double wornStrain(double bodyMm, double finishedMm) {
    return finishedMm < bodyMm ? LengthChange.percent(finishedMm, bodyMm) : 0;
  }

  /** The smallest garment that goes round a body when the cloth stretches by so many per cent. */
  public static double leastFinished(double bodyMm, double stretchPercent) {
    return bodyMm / (1 + stretchPercent / 100);
  }

  /**
   * Works out ease, and the strain that it asks of the cloth.
   *
   * @param bodyMm girth of the body, over 0
   * @param finishedMm girth of the finished garment, over 0
   * @param fits the reference table of ease by fit
   */
  public static Answer<Working> of(double bodyMm, double finishedMm, List<EaseFit> fits) {
    return new GarmentNeeds()
        .girth("body", bodyMm)
        .girth("finished", finishedMm)
        .then(() -> work(bodyMm, finishedMm, fits));
  }

  private static Working work(double body, double finished, List<EaseFit> fits) {
    double ease = mm(body, finished);
    double percent = percent(body, finished);
    double strain = wornStrain(body, finished);
    EaseFit fit = EaseFit.holding(fits, ease, percent);
    WorkingBuilder board =
        Working.named("ease", Message.of("garment.ease.title"))
            .step(
                Message.of("garment.ease.step-mm"),
                "E = finished − body",
                "%s − %s = %s".formatted(n(finished), n(body), Show.mm(ease)))
            .step(
                Message.of("garment.ease.step-percent"),
                "E % = 100 × (finished − body) ÷ body",
                LengthChange.inNumbers(body, finished))
            .result(Measured.of(ease, Unit.MM))
            .assume(Message.of("garment.assume.relaxed-girth"))
            .source(Source.Kind.DEFINITION, "finished girth less body girth")
            .source(Source.Kind.COMMON_PRACTICE, fit.source());
    strainStep(board, body, finished);
    if (ease < 0) {
      board.assume(Message.of("garment.assume.two-percentages"));
    }
    caution(board, percent);
    return board.says(
        ease < 0
            ? Message.of(
                "garment.ease.says-negative",
                Show.mm(ease),
                Show.percent(percent),
                Show.percent(strain),
                fit.name(),
                fit.advice())
            : Message.of(
                "garment.ease.says-positive",
                Show.mm(ease),
                Show.percent(percent),
                fit.name(),
                fit.advice()));
  }

  /** The line for ε, also when the garment hangs without being stretched. */
  static void strainStep(WorkingBuilder board, double body, double finished) {
    board.step(
        Message.of("garment.ease.step-strain"),
        "ε = 100 × (body − finished) ÷ finished, 0 when finished ≥ body",
        finished < body
            ? LengthChange.inNumbers(finished, body)
            : "%s ≥ %s: %s".formatted(n(finished), n(body), Show.percent(0)));
  }

  /** Very close garments come with a warning, pressing ones with a stronger one. */
  static void caution(WorkingBuilder board, double easePercent) {
    if (easePercent < -15) {
      board.caution(GarmentCaution.TIGHT.caution());
    }
    if (easePercent < -25) {
      board.caution(GarmentCaution.MEDICAL.caution());
    }
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }
}
