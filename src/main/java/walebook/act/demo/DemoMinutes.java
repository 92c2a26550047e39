package walebook.act.demo;

import java.util.Random;
import org.jspecify.annotations.Nullable;
import walebook.record.MachineKind;
import walebook.record.Method;

/**
 * How long an invented piece took, drawn from its code alone, so that all else of the demo stays as
 * it was. Invented, in the order of what a short piece takes: an overlocker is about half as quick
 * again, a hem is pinned and turned on the way, and now and then a seam is begun anew.
 */
final class DemoMinutes {
  private static final double SEWING = 5.2;
  private static final double OVERLOCK = 3.1;
  private static final double COVERSTITCH = 4.4;
  private static final double FORGOTTEN = 0.15;
  private static final double BEGUN_ANEW = 0.04;

  private DemoMinutes() {}

  /** Minutes to the half, null where nobody looked at the clock. */
  static @Nullable Double of(Attempt attempt, double skill, String code) {
    Random own = new Random(code.hashCode());
    boolean forgotten = own.nextDouble() < FORGOTTEN;
    double usual = usual(attempt.machine().kind());
    double hem = attempt.method() == Method.HEM ? 1.4 : 1;
    double tape = attempt.stabiliser().isEmpty() ? 1 : 1.25;
    double anew = own.nextDouble() < BEGUN_ANEW ? 2 : 1;
    double hands = (1.45 - 0.6 * skill) * Math.exp(0.18 * own.nextGaussian());
    double halves = Math.max(1, Math.rint(2 * usual * hem * tape * anew * hands));
    return forgotten ? null : Double.valueOf(halves / 2);
  }

  private static double usual(MachineKind kind) {
    return switch (kind) {
      case SEWING -> SEWING;
      case OVERLOCKER -> OVERLOCK;
      case COVERSTITCH -> COVERSTITCH;
    };
  }
}
