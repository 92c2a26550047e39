package walebook;

import java.util.Random;
import java.util.function.Consumer;

/** Runs a property over many made-up cases and names the seed of the one that fails. */
public final class Seeded {
  private static final int CASES = 400;

  private Seeded() {}

  /** Checks a property; each case has a generator of its own, so that a seed repeats it alone. */
  public static void cases(long firstSeed, Consumer<Random> property) {
    for (long seed = firstSeed; seed < firstSeed + CASES; seed++) {
      try {
        property.accept(new Random(seed));
      } catch (AssertionError | RuntimeException e) {
        throw new AssertionError("seed " + seed + ": " + e.getMessage(), e);
      }
    }
  }

  /** A number between two others. */
  public static double between(Random random, double from, double to) {
    return from + (to - from) * random.nextDouble();
  }
}
