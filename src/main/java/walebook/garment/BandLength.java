package walebook.garment;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import walebook.cloth.LengthChange;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Verdict;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/** Length and width to cut a band, and how far it is stretched when it is sewn on. */
public final class BandLength {
  private BandLength() {}

  /**
   * Works them out.
   *
   * @param plan the band
   * @param place where it sits
   * @param stretch of the band's cloth along the band; null when it has no readings
   * @param ratios the reference table of band ratios
   * @param comfort the reference table of comfort bands, whose limit for the day counts
   * @return the working; its result is the length to cut, its verdict whether the band's cloth
   *     takes the strain
   */
  public static Working of(
      BandPlan plan,
      BandRatio.Place place,
      @Nullable GrainStretch stretch,
      List<BandRatio> ratios,
      List<ComfortBand> comfort) {
    WorkingBuilder board =
        Working.named("band", Message.of("garment.band.title"))
            .step(
                Message.of("garment.band.step-length"),
                "b = r × N",
                "%s × %s = %s"
                    .formatted(
                        Show.upTo(plan.ratio(), 4), tenth(plan.openingMm()), mm(plan.lengthMm())))
            .step(
                Message.of("garment.band.step-cut"),
                "cut length = b + 2 × joining allowance",
                "%s + 2 × %s = %s"
                    .formatted(
                        tenth(plan.lengthMm()), tenth(plan.joinMm()), mm(plan.cutLengthMm())))
            .step(
                Message.of("garment.band.step-width"),
                "cut width = 2 × w + 2 × allowance",
                "2 × %s + 2 × %s = %s"
                    .formatted(tenth(plan.widthMm()), tenth(plan.edgeMm()), mm(plan.cutWidthMm())))
            .step(
                Message.of("garment.band.step-strain"),
                "100 × (N − b) ÷ b",
                plan.ratio() < 1
                    ? LengthChange.inNumbers(plan.lengthMm(), plan.openingMm())
                    : "b ≥ N: " + Show.percent(0))
            .result(Measured.of(plan.cutLengthMm(), Unit.MM))
            .assume(Message.of("garment.assume.seam-line"))
            .assume(Message.of("garment.assume.band-recovery"))
            .source(Source.Kind.DEFINITION, "the band as a share of the opening's seam line");
    if (stretch == null) {
      return board
          .verdict(Verdict.NOT_KNOWN)
          .says(
              Message.of(
                  "garment.band.says-unknown",
                  mm(plan.cutLengthMm()),
                  mm(plan.cutWidthMm()),
                  Show.percent(plan.strain())));
    }
    Verdict verdict = strain(board, plan, stretch, ComfortBand.limit(comfort, Wear.DAY));
    usual(board, BandRatio.of(ratios, place, stretch.percent()));
    return board
        .verdict(verdict)
        .says(
            Message.of(
                verdict == Verdict.NOT_MET && isBeyond(plan, stretch)
                    ? "garment.band.says-beyond"
                    : sentence(verdict),
                mm(plan.cutLengthMm()),
                mm(plan.cutWidthMm()),
                Show.percent(plan.strain()),
                Show.percent(stretch.percent())));
  }

  private static Verdict strain(
      WorkingBuilder board, BandPlan plan, GrainStretch stretch, double limit) {
    board.source(Source.Kind.COMMON_PRACTICE, "a band keeps within the comfortable share");
    if (plan.strain() == 0 || stretch.percent() == 0) {
      return plan.strain() == 0 ? Verdict.MET : Verdict.NOT_MET;
    }
    double share = StretchUsed.share(plan.strain(), stretch.percent());
    double expanded = 2 * StretchUsed.uncertainty(plan.strain(), stretch);
    board.step(
        Message.of("garment.band.step-share"),
        "share = 100 × strain ÷ S_band ≤ limit",
        "100 × %s ÷ %s = %s, U %s points; limit %s"
            .formatted(
                n(plan.strain()),
                n(stretch.percent()),
                Show.percent(share),
                Show.fixed(expanded, 1),
                Show.percent(limit)));
    return StretchUsed.verdict(share, expanded, limit);
  }

  /** Whether it is certain that the cloth itself does not go so far. */
  private static boolean isBeyond(BandPlan plan, GrainStretch stretch) {
    return plan.strain() > stretch.percent() + stretch.expanded();
  }

  private static void usual(WorkingBuilder board, Optional<BandRatio> row) {
    row.ifPresent(
        found ->
            board
                .step(
                    Message.of("garment.band.step-usual"),
                    "%s ≤ S_band < %s".formatted(n(found.from()), n(found.below())),
                    "r %s – %s"
                        .formatted(
                            Show.fixed(found.ratioFrom(), 2), Show.fixed(found.ratioTo(), 2)))
                .source(Source.Kind.COMMON_PRACTICE, found.source()));
  }

  private static String sentence(Verdict verdict) {
    return switch (verdict) {
      case MET -> "garment.band.says-met";
      case NOT_MET -> "garment.band.says-not-met";
      case TOO_CLOSE, NOT_KNOWN -> "garment.band.says-close";
    };
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }

  /** A tape and a cutter do no better than tenths. */
  private static String tenth(double mm) {
    return Show.upTo(mm, 1);
  }

  private static String mm(double mm) {
    return Show.length(mm, Unit.MM);
  }
}
