package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import walebook.statistics.Line.Point;

/** Tiny, lopsided, tied and disconnected classes: numbers or nothing, never NaN or infinity. */
class NeverNaNTest {

  private static void assertPlain(long seed, @Nullable Object found) {
    assertThat(String.valueOf(found)).as("seed %d", seed).doesNotContain("NaN", "Infinity");
  }

  private static List<Response> made(Random random) {
    List<Response> all = new ArrayList<>();
    int people = 1 + random.nextInt(4);
    int settings = 1 + random.nextInt(4);
    double step = random.nextBoolean() ? 1 : 0.1;
    int range = 1 + random.nextInt(3);
    for (int i = 0; i < 1 + random.nextInt(10); i++) {
      all.add(
          new Response(
              "b" + random.nextInt(people),
              "l" + random.nextInt(settings),
              100 + step * random.nextInt(range)));
    }
    return all;
  }

  @Test
  void numbersOrNothing() {
    for (int seed = 0; seed < 3000; seed++) {
      List<Response> all = made(new Random(seed));
      assertPlain(seed, Additive.of(all, 0.95));
      assertPlain(seed, Crossed.additive(all));
      assertPlain(seed, Crossed.withInteraction(all));
      Map<String, List<Double>> byPerson = new LinkedHashMap<>();
      for (Response one : all) {
        byPerson.computeIfAbsent(one.block(), k -> new ArrayList<>()).add(one.value());
      }
      List<Sample> samples =
          byPerson.entrySet().stream().map(e -> new Sample(e.getKey(), e.getValue())).toList();
      Agreement agreement = Agreement.of(samples, 0.95);
      assertPlain(seed, agreement);
      assertPlain(seed, agreement.criticalH());
      List<Double> values = all.stream().map(Response::value).toList();
      assertPlain(seed, Summary.of(values).tInterval(0.95));
      assertPlain(seed, Robust.of(values));
      assertPlain(seed, FiveNumbers.of(values));
      assertPlain(
          seed,
          ProductLimit.of(
              values.stream().map(v -> new Lifetime(v, v.intValue() % 2 == 0)).toList(), 0.95));
      List<Point> points =
          all.stream()
              .map(r -> new Point(r.level().length() + r.level().charAt(1), r.value()))
              .toList();
      Line line = Line.fit(points);
      assertPlain(seed, line);
      assertPlain(seed, line == null ? null : line.bandAt(100, 0.95));
    }
  }

  /** Every estimable difference is listed once, every other pair as not estimable. */
  @Test
  void everyPairIsAccountedFor() {
    for (int seed = 0; seed < 500; seed++) {
      Additive found = Additive.of(made(new Random(seed)), 0.95);
      int levels = found.means().size();
      assertThat(found.differences().size() + found.notEstimable().size())
          .as("seed %d", seed)
          .isEqualTo(levels * (levels - 1) / 2);
      int within = found.groups().stream().mapToInt(g -> g.size() * (g.size() - 1) / 2).sum();
      assertThat(found.differences()).as("seed %d", seed).hasSize(within);
      assertThat(found.dfLevels()).isEqualTo(levels - found.groups().size());
      assertThat(found.n()).isEqualTo(found.dfError() + found.dfLevels() + found.blocks().size());
    }
  }
}
