package walebook.garment;

import walebook.problem.Answer;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** Drafting with negative ease: the girth to cut for a wanted worn strain, body ÷ (1 + ε ÷ 100). */
public final class NegativeEase {
  private NegativeEase() {}

  /** By how much a girth may be reduced at a strain: ε ÷ (100 + ε) of the body, in per cent. */
  public static double reduction(double strainPercent) {
    return 100 * strainPercent / (100 + strainPercent);
  }

  /**
   * Works out the girth to cut, before allowances.
   *
   * @param bodyMm girth of the body, over 0
   * @param strainPercent how far the cloth shall be stretched when worn, 0 to 200
   */
  public static Answer<Working> of(double bodyMm, double strainPercent) {
    return new GarmentNeeds()
        .girth("body", bodyMm)
        .between("strain", strainPercent, 0, 200)
        .then(() -> work(bodyMm, strainPercent));
  }

  private static Working work(double body, double strain) {
    double cut = Ease.leastFinished(body, strain);
    double reduction = reduction(strain);
    WorkingBuilder board =
        Working.named("negative-ease", Message.of("garment.draft.title"))
            .step(
                Message.of("garment.draft.step-girth"),
                "finished = body ÷ (1 + ε ÷ 100)",
                "%s ÷ (1 + %s ÷ 100) = %s"
                    .formatted(Show.upTo(body, 2), Show.upTo(strain, 2), Show.mm(cut)))
            .step(
                Message.of("garment.draft.step-reduction"),
                "ρ = 100 × ε ÷ (100 + ε)",
                "100 × %s ÷ (100 + %s) = %s"
                    .formatted(Show.upTo(strain, 2), Show.upTo(strain, 2), Show.percent(reduction)))
            .result(Measured.of(cut, Unit.MM))
            .assume(Message.of("garment.assume.no-allowances"))
            .assume(Message.of("garment.assume.length-lost"))
            .source(Source.Kind.DEFINITION, "worn strain solved for the finished girth");
    Ease.caution(board, -reduction);
    return board.says(Message.of("garment.draft.says", Show.mm(cut), Show.percent(reduction)));
  }
}
