package walebook.garment;

import org.jspecify.annotations.Nullable;
import walebook.cloth.Decision;
import walebook.cloth.LengthChange;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Verdict;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** Whether a stretched band passes over the head or another girth: b (1 + S ÷ 100) ≥ P. */
public final class BandOverHead {
  private BandOverHead() {}

  /** How far a band can be pulled, in mm. */
  public static double reach(double bandMm, double stretchPercent) {
    return bandMm * (1 + stretchPercent / 100);
  }

  /**
   * Works it out.
   *
   * @param bandMm b, length of the joined band, over 0
   * @param overMm P, what it must pass over, over 0
   * @param stretch of the band's cloth along the band; null when it has no readings
   */
  public static Working of(double bandMm, double overMm, @Nullable GrainStretch stretch) {
    double need = Ease.wornStrain(overMm, bandMm);
    WorkingBuilder board =
        Working.named("band-over", Message.of("garment.over.title"))
            .step(
                Message.of("garment.over.step-need"),
                "need = 100 × (P − b) ÷ b, 0 when b ≥ P",
                need == 0
                    ? "%s ≥ %s: %s"
                        .formatted(Show.upTo(bandMm, 1), Show.upTo(overMm, 1), Show.percent(0))
                    : LengthChange.inNumbers(bandMm, overMm))
            .result(Measured.of(need, Unit.PERCENT))
            .assume(Message.of("garment.assume.seam-follows"))
            .source(Source.Kind.DEFINITION, "the girth to pass against the band as it lies")
            .source(Source.Kind.STANDARD, "JCGM 106, 8.3: guarded acceptance and rejection");
    if (need == 0) {
      return board.verdict(Verdict.MET).says(Message.of("garment.over.says-larger"));
    }
    if (stretch == null) {
      return board
          .verdict(Verdict.NOT_KNOWN)
          .says(Message.of("garment.over.says-unknown", Show.percent(need)));
    }
    Verdict verdict = Decision.verdict(stretch.percent(), stretch.expanded(), need);
    double reach = reach(bandMm, stretch.percent());
    return board
        .step(
            Message.of("garment.over.step-reach"),
            "reach = b × (1 + S ÷ 100)",
            "%s × (1 + %s ÷ 100) = %s, P = %s"
                .formatted(
                    Show.upTo(bandMm, 1),
                    n(stretch.percent()),
                    Show.length(reach, Unit.MM),
                    Show.length(overMm, Unit.MM)))
        .step(
            Message.of("garment.gauge.step-decide"),
            Decision.rule(),
            Decision.inNumbers(stretch.percent(), stretch.expanded(), need))
        .verdict(verdict)
        .says(
            Message.of(
                sentence(verdict), Show.length(reach, Unit.MM), Show.length(overMm, Unit.MM)));
  }

  private static String sentence(Verdict verdict) {
    return switch (verdict) {
      case MET -> "garment.over.says-met";
      case NOT_MET -> "garment.over.says-not-met";
      case TOO_CLOSE, NOT_KNOWN -> "garment.over.says-close";
    };
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }
}
