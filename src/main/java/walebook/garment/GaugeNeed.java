package walebook.garment;

import org.jspecify.annotations.Nullable;
import walebook.cloth.Decision;
import walebook.cloth.LengthChange;
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
 * The gauge printed on a pattern: cloth of this length must reach that one.
 *
 * @param fromMm length before stretching, over 0
 * @param toMm length that it must reach, not shorter
 */
public record GaugeNeed(double fromMm, double toMm) {
  /** Hardly any cloth is stretched further by hand. */
  private static final double FARTHEST_PERCENT = 250;

  public GaugeNeed {
    if (!(fromMm > 0 && toMm >= fromMm && Double.isFinite(toMm))) {
      throw new IllegalArgumentException("fromMm must be over 0 and toMm not shorter");
    }
  }

  /** What the pattern asks for, in per cent. */
  public double percent() {
    return LengthChange.percent(fromMm, toMm);
  }

  /**
   * Checks a cloth against a pattern's gauge.
   *
   * @param stretch of the cloth in the direction of the gauge; null when it has no readings
   */
  public static Answer<Working> of(double fromMm, double toMm, @Nullable GrainStretch stretch) {
    return new GarmentNeeds()
        .positive("gauge-from", fromMm, "100 mm")
        .positive("gauge-to", toMm, "150 mm")
        .also(
            toMm < fromMm,
            Problem.refuse(
                "gauge.shorter", Place.field("gauge-to"), Show.mm(toMm), Show.mm(fromMm)))
        .also(
            LengthChange.percent(fromMm, toMm) > FARTHEST_PERCENT,
            Problem.ask(
                "gauge.far",
                Place.field("gauge-to"),
                Show.mm(toMm),
                Show.percent(LengthChange.percent(fromMm, toMm))))
        .then(() -> new GaugeNeed(fromMm, toMm).check(stretch));
  }

  /** The check of a cloth, not known yet without readings. */
  public Working check(@Nullable GrainStretch stretch) {
    WorkingBuilder board =
        Working.named("pattern-gauge", Message.of("garment.gauge.title"))
            .step(
                Message.of("garment.gauge.step"),
                "S_req = 100 × (to − from) ÷ from",
                LengthChange.inNumbers(fromMm, toMm))
            .result(Measured.of(percent(), Unit.PERCENT))
            .assume(Message.of("garment.assume.gauge-grain"))
            .source(Source.Kind.DEFINITION, "the pattern's gauge as a percentage")
            .source(Source.Kind.STANDARD, "JCGM 106, 8.3: guarded acceptance and rejection");
    if (stretch == null) {
      return board
          .verdict(Verdict.NOT_KNOWN)
          .says(Message.of("garment.gauge.says-unknown", Show.percent(percent())));
    }
    Verdict verdict = Decision.verdict(stretch.percent(), stretch.expanded(), percent());
    return board
        .step(
            Message.of("garment.gauge.step-decide"),
            Decision.rule(),
            Decision.inNumbers(stretch.percent(), stretch.expanded(), percent()))
        .verdict(verdict)
        .says(
            Message.of(
                sentence(verdict),
                Show.percent(percent()),
                Show.percent(stretch.percent()),
                Show.fixed(stretch.expanded(), 1)));
  }

  private static String sentence(Verdict verdict) {
    return switch (verdict) {
      case MET -> "garment.gauge.says-met";
      case NOT_MET -> "garment.gauge.says-not-met";
      case TOO_CLOSE, NOT_KNOWN -> "garment.gauge.says-close";
    };
  }
}
