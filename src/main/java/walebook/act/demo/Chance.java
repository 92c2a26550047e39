package walebook.act.demo;

import java.util.List;
import java.util.Random;

/** Everything that happens by chance in the demo, drawn from one seed. */
final class Chance {
  private final Random random;

  Chance(long seed) {
    random = new Random(seed);
  }

  Random source() {
    return random;
  }

  double normal(double deviation) {
    return random.nextGaussian() * deviation;
  }

  boolean happens(double probability) {
    return random.nextDouble() < probability;
  }

  <T> T pick(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }
}
