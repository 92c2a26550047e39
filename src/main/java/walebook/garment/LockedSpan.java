package walebook.garment;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.cloth.Decision;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Verdict;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/**
 * Details that lock the cloth: a stitched-down span does not stretch. Joined by travelling stitches
 * the span is end to end, sewn and tied off one by one it is the sum of the motifs.
 */
public final class LockedSpan {
  private LockedSpan() {}

  /** What is left of a stretch: S (1 − locked ÷ L), in per cent. */
  public static double left(double stretchPercent, double lockedMm, double lineMm) {
    return stretchPercent * (1 - lockedMm / lineMm);
  }

  /** The locked length in mm. */
  public static double locked(List<Double> motifsMm, List<Double> gapsMm, boolean joined) {
    double motifs = motifsMm.stream().mapToDouble(Double::doubleValue).sum();
    double gaps = gapsMm.stream().mapToDouble(Double::doubleValue).sum();
    return joined ? motifs + gaps : motifs;
  }

  /**
   * Works out what is left, both ways of sewing.
   *
   * @param lineMm L, the line that must stretch, over 0
   * @param motifsMm the stitched-down spans along it, each over 0
   * @param gapsMm the gaps between them, one fewer, none negative
   * @param joined whether travelling stitches join them
   * @param stretch of the cloth along the line
   * @param needPercent what the line must stretch; null when not asked
   */
  public static Answer<Working> of(
      double lineMm,
      List<Double> motifsMm,
      List<Double> gapsMm,
      boolean joined,
      GrainStretch stretch,
      @Nullable Double needPercent) {
    GarmentNeeds needs =
        new GarmentNeeds()
            .positive("line", lineMm, "460 mm")
            .between("motifs", motifsMm.size(), 1, 40)
            .also(
                gapsMm.size() != motifsMm.size() - 1,
                Problem.refuse(
                    "locked.gaps",
                    Place.field("gaps"),
                    Integer.toString(gapsMm.size()),
                    Integer.toString(motifsMm.size() - 1)))
            .also(
                locked(motifsMm, gapsMm, true) > lineMm,
                Problem.refuse(
                    "locked.longer",
                    Place.field("motifs"),
                    Show.mm(locked(motifsMm, gapsMm, true)),
                    Show.mm(lineMm)));
    motifsMm.forEach(span -> needs.positive("motifs", span, "60; 60"));
    gapsMm.forEach(gap -> needs.notNegative("gaps", gap, "25"));
    return needs.then(() -> work(lineMm, motifsMm, gapsMm, joined, stretch, needPercent));
  }

  private static Working work(
      double line,
      List<Double> motifs,
      List<Double> gaps,
      boolean joined,
      GrainStretch stretch,
      @Nullable Double need) {
    double end = locked(motifs, gaps, true);
    double single = locked(motifs, gaps, false);
    double left = left(stretch.percent(), joined ? end : single, line);
    double u = left(stretch.uncertainty(), joined ? end : single, line);
    WorkingBuilder board =
        Working.named("locked-span", Message.of("garment.locked.title"))
            .step(
                Message.of("garment.locked.step-joined"),
                "locked = Σ motifs + Σ gaps; S × (1 − locked ÷ L)",
                numbers(stretch.percent(), end, line))
            .step(
                Message.of("garment.locked.step-single"),
                "locked = %s; S × (1 − locked ÷ L)".formatted(sum(motifs)),
                numbers(stretch.percent(), single, line))
            .result(Measured.of(left, Unit.PERCENT, u))
            .assume(Message.of("garment.assume.locked-dead"))
            .source(Source.Kind.DEFINITION, "a stitched-down span does not stretch");
    if (need == null) {
      return board.says(
          Message.of(
              joined ? "garment.locked.says-joined" : "garment.locked.says-single",
              Show.percent(left),
              Show.percent(stretch.percent())));
    }
    Verdict verdict = Decision.verdict(left, 2 * u, need);
    return board
        .step(
            Message.of("garment.gauge.step-decide"),
            Decision.rule(),
            Decision.inNumbers(left, 2 * u, need))
        .verdict(verdict)
        .says(Message.of(sentence(verdict), Show.percent(left), Show.percent(need)));
  }

  private static String sum(List<Double> motifs) {
    return motifs.stream().map(LockedSpan::n).collect(Collectors.joining(" + "));
  }

  private static String numbers(double stretch, double locked, double line) {
    return "%s; %s × (1 − %s ÷ %s) = %s"
        .formatted(
            Show.mm(locked),
            n(stretch),
            n(locked),
            n(line),
            Show.percent(left(stretch, locked, line)));
  }

  private static String sentence(Verdict verdict) {
    return switch (verdict) {
      case MET -> "garment.locked.says-met";
      case NOT_MET -> "garment.locked.says-not-met";
      case TOO_CLOSE, NOT_KNOWN -> "garment.locked.says-close";
    };
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }
}
