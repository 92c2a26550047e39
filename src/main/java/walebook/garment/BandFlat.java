package walebook.garment;

import java.util.List;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Band;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Verdict;
import walebook.working.Working;

/**
 * How a band lies: its free edge wants the length N − w θ, since it runs parallel to the opening at
 * the distance w, so that the ratio 1 − w θ ÷ N lies flat by itself.
 */
public final class BandFlat {
  private BandFlat() {}

  /** The turn of an opening that slopes at an angle to the flat: 2π cos φ, in radians. */
  public static double turn(double slopeDegrees) {
    return 2 * Math.PI * Math.cos(Math.toRadians(slopeDegrees));
  }

  /**
   * Works out how it lies.
   *
   * @param plan the band
   * @param turn θ, the opening's whole turn in radians, 0 to 2π
   * @param fits the reference table of how bands lie
   * @return the working; its result is the flat ratio
   */
  public static Working of(BandPlan plan, double turn, List<BandFit> fits) {
    double flat = plan.flatRatio(turn);
    double free = plan.openingMm() - plan.widthMm() * turn;
    BandFit fit = Band.holding(fits, plan.ratio() - flat);
    boolean lies = fit.key().equals("lies");
    return Working.named("band-flat", Message.of("garment.flat.title"))
        .step(
            Message.of("garment.flat.step-edge"),
            "free edge = N − w × θ",
            "%s − %s × %s = %s"
                .formatted(
                    Show.upTo(plan.openingMm(), 1),
                    n(plan.widthMm()),
                    n(turn),
                    Show.length(free, Unit.MM)))
        .step(
            Message.of("garment.flat.step-ratio"),
            "r_flat = 1 − w × θ ÷ N",
            "1 − %s × %s ÷ %s = %s"
                .formatted(
                    n(plan.widthMm()),
                    n(turn),
                    Show.upTo(plan.openingMm(), 1),
                    Show.fixed(flat, 4)))
        .step(
            Message.of("garment.flat.step-difference"),
            "r − r_flat",
            "%s − %s = %s"
                .formatted(
                    Show.upTo(plan.ratio(), 4),
                    Show.fixed(flat, 4),
                    Show.fixed(plan.ratio() - flat, 4)))
        .result(Measured.of(flat, Unit.RATIO))
        .verdict(lies ? Verdict.MET : Verdict.NOT_MET)
        .assume(Message.of("garment.assume.turn-guide"))
        .assume(Message.of("garment.assume.no-v"))
        .source(Source.Kind.PUBLISHED, "parallel curves: length changes by distance × turning")
        .source(Source.Kind.COMMON_PRACTICE, fit.source())
        .says(
            Message.of(
                lies ? "garment.flat.says-lies" : "garment.flat.says-not",
                fit.name(),
                fit.advice(),
                Show.fixed(plan.ratio(), 2),
                Show.fixed(flat, 2)));
  }

  private static String n(double value) {
    return Show.upTo(value, 3);
  }
}
