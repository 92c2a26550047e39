package walebook.cloth;

import java.util.ArrayList;
import java.util.List;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.working.Message;
import walebook.working.Source;
import walebook.working.Working;
import walebook.working.WorkingBuilder;

/**
 * Recovery of a cloth. Three numbers go by that name; the first is the result, the others are shown
 * beside it under their own labels.
 */
public final class Recovery {
  private Recovery() {}

  /** R = 100 (L1 − L2) ÷ (L1 − L0), the share of the extension that came back; L1 over L0. */
  public static double ofExtension(double gauge, double stretched, double released) {
    return 100 * (stretched - released) / (stretched - gauge);
  }

  /** 100 − G, recovered elongation, of the length before stretching. */
  public static double ofOriginal(double gauge, double released) {
    return 100 - LengthChange.percent(gauge, released);
  }

  /** 100 L0 ÷ L2, the old length as a share of the new. */
  public static double ofLength(double gauge, double released) {
    return 100 * gauge / released;
  }

  /**
   * Works out recovery in per cent.
   *
   * @param gaugeMm L0, over 0
   * @param stretchedMm L1
   * @param releasedMm L2
   * @param readToMm d, what the lengths are read to
   * @return the working; without a value when L1 = L0; no result when L2 is over L1 or L1 under L0,
   *     which is asked about
   */
  public static Answer<Working> of(
      double gaugeMm, double stretchedMm, double releasedMm, double readToMm) {
    List<Problem> found = new ArrayList<>(ReadingCheck.of(gaugeMm, stretchedMm, releasedMm));
    found.addAll(ReadTo.check("read-to", readToMm));
    if (ReadingCheck.stops(found)) {
      return Answer.bad(found);
    }
    WorkingBuilder board = Working.named("recovery", Message.of("cloth.recovery.title"));
    Message says =
        stretchedMm == gaugeMm
            ? Message.of("cloth.recovery.says-undefined", Show.mm(gaugeMm))
            : share(board, gaugeMm, stretchedMm, releasedMm, readToMm);
    otherTwo(board, gaugeMm, releasedMm);
    return new Answer.Good<>(
        board
            .assume(Message.of("cloth.assume.rest-time"))
            .assume(Message.of("cloth.assume.three-recoveries"))
            .source(
                Source.Kind.PUBLISHED,
                "(S − G) ÷ S, as in textile testing texts; ASTM D3107 (cited from memory)")
            .source(
                Source.Kind.STANDARD,
                "recovered elongation 100 − C: EN 14704-1, now ISO 20932-1 (cited from memory)")
            .source(Source.Kind.STANDARD, "JCGM 100 (GUM), 4.3.7 and 5.1.2")
            .says(says),
        found);
  }

  private static Message share(
      WorkingBuilder board, double gauge, double stretched, double released, double readTo) {
    double percent = ofExtension(gauge, stretched, released);
    double u = ReadingUncertainty.ofResolution(readTo);
    double uPercent = ReadingUncertainty.ofRecovery(gauge, stretched, released, u, u, u);
    board
        .step(
            Message.of("cloth.recovery.step"),
            "R = 100 × (L1 − L2) ÷ (L1 − L0)",
            "100 × (%s − %s) ÷ (%s − %s) = %s"
                .formatted(
                    n(stretched), n(released), n(stretched), n(gauge), Show.percent(percent)))
        .step(
            Message.of("cloth.reading.step"),
            "u = d ÷ √12",
            "%s ÷ √12 = %s mm".formatted(n(readTo), Show.fixed(u, 3)))
        .step(
            Message.of("cloth.uncertainty.step"),
            "u(R) = (100 ÷ e) × u × √(1 + ((L2 − L0) ÷ e)² + ((L1 − L2) ÷ e)²), e = L1 − L0",
            "(100 ÷ %s) × %s × √(1 + (%s ÷ %s)² + (%s ÷ %s)²) = %s points"
                .formatted(
                    n(stretched - gauge),
                    Show.fixed(u, 3),
                    n(released - gauge),
                    n(stretched - gauge),
                    n(stretched - released),
                    n(stretched - gauge),
                    Show.fixed(uPercent, 2)))
        .result(Measured.of(percent, Unit.PERCENT, uPercent));
    String key = percent > 100 ? "cloth.recovery.says-over" : "cloth.recovery.says";
    return Message.of(key, Show.percent(percent), Show.fixed(2 * uPercent, 1));
  }

  private static void otherTwo(WorkingBuilder board, double gauge, double released) {
    board
        .step(
            Message.of("cloth.recovery.step-original"),
            "D = 100 − 100 × (L2 − L0) ÷ L0",
            "100 − 100 × (%s − %s) ÷ %s = %s"
                .formatted(
                    n(released), n(gauge), n(gauge), Show.percent(ofOriginal(gauge, released))))
        .step(
            Message.of("cloth.recovery.step-length"),
            "100 × L0 ÷ L2",
            "100 × %s ÷ %s = %s %%"
                .formatted(n(gauge), n(released), Show.fixed(ofLength(gauge, released), 2)));
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }
}
