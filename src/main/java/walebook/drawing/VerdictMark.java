package walebook.drawing;

import java.util.List;
import java.util.Objects;
import walebook.words.Words;
import walebook.working.Message;
import walebook.working.Verdict;

/**
 * The mark of a verdict, told by its shape: disc with tick, half disc, barred ring, dashed ring.
 */
public record VerdictMark(Verdict verdict) implements Drawing {
  public VerdictMark {
    Objects.requireNonNull(verdict, "verdict");
  }

  /** The key of a verdict's word. */
  public static String key(Verdict verdict) {
    return switch (verdict) {
      case MET -> "common.verdict.met";
      case TOO_CLOSE -> "common.verdict.too-close";
      case NOT_MET -> "common.verdict.not-met";
      case NOT_KNOWN -> "common.verdict.not-known";
    };
  }

  /**
   * The key of a verdict's word.
   *
   * @param reckonedOnly whether what is met rests on reckoning alone
   */
  public static String key(Verdict verdict, boolean reckonedOnly) {
    return reckonedOnly && verdict == Verdict.MET ? "common.verdict.met-reckoned" : key(verdict);
  }

  /** The colour of a verdict, which only ever stands beside its mark and word. */
  public static Role role(Verdict verdict) {
    return switch (verdict) {
      case MET -> Role.MET;
      case TOO_CLOSE -> Role.TOO_CLOSE;
      case NOT_MET -> Role.NOT_MET;
      case NOT_KNOWN -> Role.SOFT;
    };
  }

  @Override
  public double leastWidth() {
    return 12;
  }

  @Override
  public double ownWidth() {
    return 22;
  }

  @Override
  public Picture at(double width, Words words) {
    double side = takenWidth(width);
    Sketch sketch = new Sketch();
    draw(sketch, side / 2, side / 2, side / 2 - side / 16);
    return sketch.picture(side, side, new Message(key(verdict), List.of()));
  }

  private void draw(Sketch sketch, double x, double y, double r) {
    Role role = role(verdict);
    double pen = Math.max(1.4, r / 5);
    double inner = r - pen / 2;
    switch (verdict) {
      case MET -> {
        sketch.disc(x, y, r, role);
        PathLine tick =
            PathLine.from(x - r * 0.45, y + r * 0.05)
                .to(x - r * 0.12, y + r * 0.4)
                .to(x + r * 0.5, y - r * 0.36);
        sketch.path(tick, null, Pen.solid(Role.CARD, pen * 1.1));
      }
      case TOO_CLOSE -> {
        double k = inner * 4 / 3;
        PathLine half =
            PathLine.from(x, y - inner).curve(x - k, y - inner, x - k, y + inner, x, y + inner);
        sketch.path(half.close(), role, null);
        sketch.ring(x, y, inner, Pen.solid(role, pen));
      }
      case NOT_MET -> {
        sketch.ring(x, y, inner, Pen.solid(role, pen));
        sketch.line(x - r * 0.5, y, x + r * 0.5, y, Pen.solid(role, pen * 1.2));
      }
      case NOT_KNOWN -> sketch.ring(x, y, inner, Pen.dashed(role, pen * 0.7));
    }
  }
}
