package walebook.garment;

import walebook.cloth.ReadingUncertainty;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;

/** Length that a cloth loses when it is stretched sideways, measured, and what to cut for it. */
public final class LengthLost {
  /** A rule of ours: what keeps less than half of its length was likely read or typed wrong. */
  private static final double LEAST_LEFT = 0.5;

  private LengthLost() {}

  /** The loss in per cent of the length before. */
  public static double percent(double beforeMm, double stretchedMm) {
    return 100 * (beforeMm - stretchedMm) / beforeMm;
  }

  /** The length to cut: wanted ÷ (1 − loss ÷ 100). */
  public static double cut(double wantedMm, double lossPercent) {
    return wantedMm / (1 - lossPercent / 100);
  }

  /**
   * Works out the length to cut.
   *
   * @param beforeMm along the body on the test piece, relaxed, over 0
   * @param stretchedMm the same while it is stretched sideways as far as when worn, over 0
   * @param wantedMm the length wanted when worn, over 0
   * @param readToMm what the lengths are read to, not negative
   */
  public static Answer<Working> of(
      double beforeMm, double stretchedMm, double wantedMm, double readToMm) {
    return new GarmentNeeds()
        .positive("before", beforeMm, "100 mm")
        .positive("sideways", stretchedMm, "94 mm")
        .positive("wanted", wantedMm, "800 mm")
        .notNegative("read-to", readToMm, "1 mm")
        .also(
            stretchedMm > beforeMm,
            Problem.ask(
                "length.grew-sideways",
                Place.field("sideways"),
                Show.mm(stretchedMm),
                Show.mm(beforeMm)))
        .also(
            stretchedMm > 0 && stretchedMm < beforeMm * LEAST_LEFT,
            Problem.ask(
                "length.lost-most",
                Place.field("sideways"),
                Show.mm(stretchedMm),
                Show.mm(beforeMm)))
        .then(() -> work(beforeMm, stretchedMm, wantedMm, readToMm));
  }

  private static Working work(double before, double stretched, double wanted, double readTo) {
    double loss = percent(before, stretched);
    double cut = cut(wanted, loss);
    double u = ReadingUncertainty.ofResolution(readTo);
    double uLoss = ReadingUncertainty.ofChange(before, stretched, u, u);
    double uCut = cut / (1 - loss / 100) * uLoss / 100;
    return Working.named("length-lost", Message.of("garment.lost.title"))
        .step(
            Message.of("garment.lost.step-loss"),
            "loss = 100 × (before − stretched) ÷ before",
            "100 × (%s − %s) ÷ %s = %s"
                .formatted(n(before), n(stretched), n(before), Show.percent(loss)))
        .step(
            Message.of("garment.lost.step-cut"),
            "cut = wanted ÷ (1 − loss ÷ 100)",
            "%s ÷ (1 − %s ÷ 100) = %s".formatted(n(wanted), n(loss), Show.mm(cut)))
        .step(
            Message.of("garment.lost.step-uncertainty"),
            "u(cut) = cut ÷ (1 − loss ÷ 100) × u(loss) ÷ 100",
            "%s ÷ (1 − %s ÷ 100) × %s ÷ 100 = %s"
                .formatted(n(cut), n(loss), Show.fixed(uLoss, 2), Show.mm(uCut)))
        .result(Measured.of(cut, Unit.MM, uCut))
        .assume(Message.of("garment.assume.same-strain"))
        .source(Source.Kind.MEASURED_HERE, "the loss is read on this cloth's test piece")
        .source(Source.Kind.STANDARD, "JCGM 100 (GUM), 4.3.7 and 5.1.2")
        .says(
            Message.of(
                "garment.lost.says",
                Show.mm(cut),
                Show.mm(wanted),
                Show.percent(loss),
                Show.fixed(2 * uCut, 0)));
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }
}
