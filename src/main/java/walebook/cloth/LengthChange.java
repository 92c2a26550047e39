package walebook.cloth;

import walebook.quantity.Show;
import walebook.working.Message;
import walebook.working.WorkingBuilder;

/** The arithmetic shared by every change of length in per cent, and its lines on the board. */
public final class LengthChange {
  private LengthChange() {}

  /** 100 (after − before) ÷ before, in per cent. */
  public static double percent(double before, double after) {
    return 100 * (after - before) / before;
  }

  /** {@code 100 × (150 − 100) ÷ 100 = 50.0 %}. */
  public static String inNumbers(double before, double after) {
    return "100 × (%s − %s) ÷ %s = %s"
        .formatted(n(after), n(before), n(before), Show.percent(percent(before, after)));
  }

  /** Two lines: the reading's own uncertainty, and what it makes of the percentage. */
  public static void uncertaintySteps(
      WorkingBuilder board, String of, double before, double after, double readTo) {
    double u = ReadingUncertainty.ofResolution(readTo);
    board
        .step(
            Message.of("cloth.reading.step"),
            "u = d ÷ √12",
            "%s ÷ √12 = %s mm".formatted(n(readTo), Show.fixed(u, 3)))
        .step(
            Message.of("cloth.uncertainty.step"),
            "u(%s) = (100 ÷ before) × √(u² + (after ÷ before)² × u²)".formatted(of),
            "(100 ÷ %s) × √(%s² + (%s ÷ %s)² × %s²) = %s points"
                .formatted(
                    n(before),
                    Show.fixed(u, 3),
                    n(after),
                    n(before),
                    Show.fixed(u, 3),
                    Show.fixed(ReadingUncertainty.ofChange(before, after, u, u), 2)));
  }

  private static String n(double value) {
    return Show.upTo(value, 2);
  }
}
