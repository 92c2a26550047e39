package walebook.drawing;

import java.util.Objects;

/**
 * How a line is drawn.
 *
 * @param role its colour
 * @param width in picture units, above 0
 * @param dash whether it is broken
 */
public record Pen(Role role, double width, Dash dash) {

  /** Whether a line is whole or broken. */
  public enum Dash {
    SOLID,
    DASHED,
    DOTTED
  }

  public Pen {
    Objects.requireNonNull(role, "role");
    Objects.requireNonNull(dash, "dash");
    if (!(width > 0 && Double.isFinite(width))) {
      throw new IllegalArgumentException("width of a pen must be above 0: " + width);
    }
  }

  public static Pen solid(Role role, double width) {
    return new Pen(role, width, Dash.SOLID);
  }

  public static Pen dashed(Role role, double width) {
    return new Pen(role, width, Dash.DASHED);
  }

  public static Pen dotted(Role role, double width) {
    return new Pen(role, width, Dash.DOTTED);
  }

  /** Lengths of dash and gap in picture units; empty for a solid line. */
  public double[] dashes() {
    return switch (dash) {
      case SOLID -> new double[0];
      case DASHED -> new double[] {4 * Math.max(1, width), 3 * Math.max(1, width)};
      case DOTTED -> new double[] {0.1, 2.5 * Math.max(1, width)};
    };
  }
}
