package walebook.garment;

import walebook.cloth.CutLength;
import walebook.problem.Answer;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;

/** What the first wash makes of a garment sewn from unwashed cloth, and what to cut instead. */
public final class WashFirst {
  private WashFirst() {}

  /** A girth or length after the wash, in mm. */
  public static double after(double mm, double changePercent) {
    return mm * (1 + changePercent / 100);
  }

  /**
   * Works it out for girth and length.
   *
   * @param finishedMm girth wanted after the wash, over 0
   * @param roundPercent the cloth's change in the direction that goes round, over −100
   * @param lengthMm length wanted after the wash, over 0
   * @param alongPercent the cloth's change in the other direction, over −100
   */
  public static Answer<Working> of(
      double finishedMm, double roundPercent, double lengthMm, double alongPercent) {
    return new GarmentNeeds()
        .girth("finished", finishedMm)
        .between("round-change", roundPercent, -60, 60)
        .positive("wanted", lengthMm, "600 mm")
        .between("along-change", alongPercent, -60, 60)
        .then(() -> work(finishedMm, roundPercent, lengthMm, alongPercent));
  }

  private static Working work(double girth, double round, double length, double along) {
    double cutGirth = CutLength.mm(girth, round);
    double cutLength = CutLength.mm(length, along);
    return Working.named("wash-first", Message.of("garment.wash.title"))
        .step(
            Message.of("garment.wash.step-after"),
            "after = girth × (1 + D ÷ 100)",
            "%s × (1 + (%s) ÷ 100) = %s"
                .formatted(n(girth), n(round), Show.mm(after(girth, round))))
        .step(
            Message.of("garment.wash.step-girth"),
            "cut = girth ÷ (1 + D ÷ 100)",
            "%s ÷ (1 + (%s) ÷ 100) = %s".formatted(n(girth), n(round), Show.mm(cutGirth)))
        .step(
            Message.of("garment.wash.step-length"),
            "cut = length ÷ (1 + D ÷ 100)",
            "%s ÷ (1 + (%s) ÷ 100) = %s".formatted(n(length), n(along), Show.mm(cutLength)))
        .result(Measured.of(cutGirth, Unit.MM))
        .assume(Message.of("garment.assume.wash-best"))
        .assume(Message.of("garment.assume.wash-grains"))
        .source(Source.Kind.STANDARD, "ISO 5077, its formula turned round")
        .says(
            Message.of(
                "garment.wash.says",
                Show.mm(after(girth, round)),
                Show.mm(cutGirth),
                Show.mm(cutLength)));
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }
}
