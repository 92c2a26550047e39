package walebook.act.demo;

import java.util.ArrayList;
import java.util.List;
import walebook.record.FaultPlace;
import walebook.record.FaultSeen;
import walebook.record.FaultWhen;
import walebook.record.NeedlePoint;
import walebook.record.PullReading;
import walebook.record.SeamEnd;

/** Faults of the demo's pieces, each with a cause that can be found in the settings. */
final class DemoFaults {
  private static final double POPPED_UNDER_MM = 140;

  private final Chance chance;

  DemoFaults(Chance chance) {
    this.chance = chance;
  }

  List<FaultSeen> on(Attempt attempt, double skill, double pressedEdge, List<PullReading> pulls) {
    List<FaultSeen> seen = new ArrayList<>();
    if (pressedEdge > 2.2) {
      seen.add(
          new FaultSeen(
              "wavy-seam", FaultPlace.ALL_ALONG, pressedEdge > 4 ? 2 : 1, FaultWhen.PRESSED));
    }
    if (chance.happens(skips(attempt))) {
      seen.add(
          new FaultSeen("skipped-stitches", place(), chance.happens(0.5) ? 2 : 1, FaultWhen.SEWN));
    }
    if (chance.happens(tunnels(attempt))) {
      seen.add(new FaultSeen("tunnelling", FaultPlace.ALL_ALONG, 1, FaultWhen.SEWN));
    }
    if (attempt.needle().point() == NeedlePoint.UNIVERSAL && chance.happens(0.12)) {
      seen.add(new FaultSeen("needle-holes", FaultPlace.ALL_ALONG, 1, FaultWhen.SEWN));
    }
    if (chance.happens(0.10 * (1 - skill))) {
      seen.add(new FaultSeen("thread-nest", FaultPlace.START, 2, FaultWhen.SEWN));
    }
    boolean popped =
        pulls.stream().anyMatch(p -> p.end() == SeamEnd.GAVE && p.endMm() < POPPED_UNDER_MM);
    if (popped) {
      seen.add(
          new FaultSeen(
              "popped-stitches",
              FaultPlace.ALL_ALONG,
              chance.happens(0.6) ? 2 : 1,
              FaultWhen.STRETCHED));
    }
    return seen;
  }

  /** Elastane grips a needle whose scarf does not hold the loop for the hook. */
  private static double skips(Attempt attempt) {
    double elastane = attempt.cloth().elastane();
    return switch (attempt.needle().point()) {
      case STRETCH, TWIN_STRETCH -> 0.02 + elastane * 0.003;
      case JERSEY -> 0.05 + elastane * 0.015;
      case UNIVERSAL, SHARP -> 0.12 + elastane * 0.025;
    };
  }

  private static double tunnels(Attempt attempt) {
    double width = attempt.width() == null ? 0 : attempt.width();
    boolean light = attempt.cloth().massGm2() < 200;
    if (attempt.stitch().equals("301-twin")) {
      return light ? 0.35 : 0.1;
    }
    return width >= 3 && light ? 0.25 : 0.02;
  }

  private FaultPlace place() {
    return chance.pick(List.of(FaultPlace.START, FaultPlace.ALL_ALONG, FaultPlace.END));
  }
}
