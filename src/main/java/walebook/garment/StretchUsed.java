package walebook.garment;

import java.util.List;
import walebook.cloth.Decision;
import walebook.problem.Answer;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Band;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Verdict;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** How much of its stretch a cloth has used up when the garment is worn: 100 ε ÷ S. */
public final class StretchUsed {
  private StretchUsed() {}

  /** Share of the stretch used, in per cent. */
  public static double share(double strainPercent, double stretchPercent) {
    return 100 * strainPercent / stretchPercent;
  }

  /** The share's standard uncertainty in points: 100 ε ÷ S² × u(S), the derivative of the share. */
  public static double uncertainty(double strainPercent, GrainStretch stretch) {
    return share(strainPercent, stretch.percent()) / stretch.percent() * stretch.uncertainty();
  }

  /** Met when share + U ≤ limit, not met when share − U &gt; limit, else too close to call. */
  public static Verdict verdict(double share, double expanded, double limit) {
    return switch (Decision.verdict(limit, expanded, share)) {
      case MET -> Verdict.MET;
      case NOT_MET -> Verdict.NOT_MET;
      default -> Verdict.TOO_CLOSE;
    };
  }

  /**
   * Works out the share used and its comfort band.
   *
   * @param bodyMm girth of the body, over 0
   * @param finishedMm girth of the finished garment, over 0
   * @param stretch of the cloth in the direction that goes round
   * @param wear how long it is worn
   * @param bands the reference table of comfort bands
   */
  public static Answer<Working> of(
      double bodyMm, double finishedMm, GrainStretch stretch, Wear wear, List<ComfortBand> bands) {
    return new GarmentNeeds()
        .girth("body", bodyMm)
        .girth("finished", finishedMm)
        .then(() -> work(bodyMm, finishedMm, stretch, wear, bands));
  }

  private static Working work(
      double body, double finished, GrainStretch stretch, Wear wear, List<ComfortBand> bands) {
    double strain = Ease.wornStrain(body, finished);
    double limit = ComfortBand.limit(bands, wear);
    WorkingBuilder board =
        Working.named("stretch-used", Message.of("garment.used.title"))
            .assume(Message.of("garment.assume.comfortable-pull"))
            .source(Source.Kind.DEFINITION, "worn strain over the cloth's stretch")
            .source(Source.Kind.STANDARD, "JCGM 106, 8.3: guarded acceptance and rejection");
    Ease.strainStep(board, body, finished);
    Ease.caution(board, Ease.percent(body, finished));
    if (strain == 0) {
      return board
          .result(Measured.of(0, Unit.PERCENT))
          .verdict(Verdict.MET)
          .says(Message.of("garment.used.says-none"));
    }
    if (stretch.percent() == 0) {
      return board
          .verdict(Verdict.NOT_MET)
          .says(Message.of("garment.used.says-stiff", Show.percent(strain)));
    }
    double share = share(strain, stretch.percent());
    double u = uncertainty(strain, stretch);
    ComfortBand band = Band.holding(bands, share);
    Verdict verdict = verdict(share, 2 * u, limit);
    return board
        .step(
            Message.of("garment.used.step"),
            "share = 100 × ε ÷ S",
            "100 × %s ÷ %s = %s".formatted(n(strain), n(stretch.percent()), Show.percent(share)))
        .step(
            Message.of("garment.used.step-limit"),
            "met: share + U ≤ limit; not met: share − U > limit; else too close",
            "U = 2 × %s ÷ %s × %s = %s points; limit %s"
                .formatted(
                    n(share),
                    n(stretch.percent()),
                    n(stretch.uncertainty()),
                    Show.fixed(2 * u, 1),
                    Show.percent(limit)))
        .result(Measured.of(share, Unit.PERCENT, u))
        .verdict(verdict)
        .source(Source.Kind.COMMON_PRACTICE, band.source())
        .says(
            Message.of(
                sentence(verdict),
                Show.percent(share),
                band.name(),
                band.advice(),
                Show.percent(limit)));
  }

  private static String sentence(Verdict verdict) {
    return switch (verdict) {
      case MET -> "garment.used.says-met";
      case NOT_MET -> "garment.used.says-not-met";
      case TOO_CLOSE, NOT_KNOWN -> "garment.used.says-close";
    };
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }
}
