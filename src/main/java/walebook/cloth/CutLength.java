package walebook.cloth;

import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;

/** The length to cut so that a wanted length is there after washing: L ÷ (1 + D ÷ 100). */
public final class CutLength {
  private CutLength() {}

  /** The length to cut in mm. */
  public static double mm(double wantedMm, double changePercent) {
    return wantedMm / (1 + changePercent / 100);
  }

  /**
   * Works out the length to cut.
   *
   * @param wantedMm the length wanted after washing, over 0
   * @param changePercent the dimensional change along that grain, over −100
   */
  public static Answer<Working> of(double wantedMm, double changePercent) {
    if (!(Double.isFinite(wantedMm) && wantedMm > 0)) {
      return Answer.bad(
          Problem.refuse(
              "reading.not-positive", Place.field("wanted"), Show.mm(wantedMm), "1000 mm"));
    }
    if (!(Double.isFinite(changePercent) && changePercent > -100)) {
      return Answer.bad(
          Problem.refuse(
              "wash.change", Place.field("change"), Show.percent(changePercent), "−5 %"));
    }
    double cut = mm(wantedMm, changePercent);
    return Answer.good(
        Working.named("cut-length", Message.of("cloth.cut.title"))
            .step(
                Message.of("cloth.cut.step"),
                "cut = L ÷ (1 + D ÷ 100)",
                "%s ÷ (1 + (%s) ÷ 100) = %s"
                    .formatted(Show.upTo(wantedMm, 2), Show.upTo(changePercent, 2), Show.mm(cut)))
            .result(Measured.of(cut, Unit.MM))
            .assume(Message.of("cloth.assume.one-grain"))
            .assume(Message.of("cloth.assume.same-wash"))
            .source(Source.Kind.STANDARD, "ISO 5077, its formula turned round")
            .says(Message.of("cloth.cut.says", Show.mm(cut), Show.mm(wantedMm))));
  }
}
