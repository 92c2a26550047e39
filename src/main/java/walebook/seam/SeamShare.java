package walebook.seam;

import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** The seam's stretch as a share of the cloth's in the same direction; 100 % keeps pace. */
public final class SeamShare {
  private SeamShare() {}

  /** 100 S_seam ÷ S_cloth; null when the cloth does not stretch. */
  public static @Nullable Double percent(double seamPercent, double clothPercent) {
    return clothPercent > 0 ? 100 * seamPercent / clothPercent : null;
  }

  /**
   * Works out the share.
   *
   * @param seamPercent the seam's stretch, or the bound to which it held
   * @param end whether it gave or held
   * @param clothPercent the cloth's stretch in the same direction, at the same pull
   * @return the working; without a value when the seam held or the cloth does not stretch
   */
  public static Answer<Working> of(double seamPercent, SeamEnd end, double clothPercent) {
    Needs needs =
        new Needs()
            .notNegative("seam-stretch", seamPercent, "60 %")
            .notNegative("cloth-stretch", clothPercent, "80 %");
    if (needs.failed()) {
      return Answer.bad(needs.problems());
    }
    WorkingBuilder board =
        Working.named("seam-share", Message.of("seam.share.title"))
            .assume(Message.of("seam.assume.same-pull"))
            .source(Source.Kind.STANDARD, "ASTM D6193, 4.2.2: seam against the cloth it joins");
    Double share = percent(seamPercent, clothPercent);
    if (share == null) {
      return Answer.good(board.says(Message.of("seam.share.says-undefined")));
    }
    board.step(
        Message.of("seam.share.step"),
        end == SeamEnd.GAVE ? "100 × S_seam ÷ S_cloth" : "≥ 100 × S_seam ÷ S_cloth",
        "100 × %s ÷ %s = %s".formatted(n(seamPercent), n(clothPercent), Show.percent(share)));
    if (end == SeamEnd.HELD) {
      return Answer.good(
          board
              .assume(Message.of("seam.assume.held-is-bound"))
              .says(Message.of("seam.share.says-held", Show.percent(share))));
    }
    return Answer.good(
        board
            .result(Measured.of(share, Unit.PERCENT))
            .says(Message.of("seam.share.says", Show.percent(share))));
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }
}
