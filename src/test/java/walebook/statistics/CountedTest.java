package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Counted and summed-up values against the same ones in a list, where libraries do the work. */
class CountedTest {
  private static final int ROUNDS = 300;

  private final Random random = new Random(41);

  private List<Double> values() {
    List<Double> values = new ArrayList<>();
    int n = 1 + random.nextInt(40);
    int marks = 1 + random.nextInt(30);
    for (int i = 0; i < n; i++) {
      values.add((random.nextInt(marks) - marks / 2) / 4.0);
    }
    return values;
  }

  private static Counted counted(List<Double> values) {
    Counted counted = new Counted();
    values.forEach(counted::add);
    return counted;
  }

  /** Quartiles by commons-statistics, definition 7 of Hyndman and Fan. */
  @Test
  void theFiveNumbersAreThoseOfTheList() {
    for (int i = 0; i < ROUNDS; i++) {
      List<Double> values = values();
      FiveNumbers list = FiveNumbers.of(values);
      FiveNumbers counted = FiveNumbers.of(counted(values));
      assertThat(counted.n()).isEqualTo(list.n());
      assertThat(counted.least()).isEqualTo(list.least());
      assertThat(counted.lowerQuartile()).isCloseTo(list.lowerQuartile(), within(1e-12));
      assertThat(counted.median()).isCloseTo(list.median(), within(1e-12));
      assertThat(counted.upperQuartile()).isCloseTo(list.upperQuartile(), within(1e-12));
      assertThat(counted.greatest()).isEqualTo(list.greatest());
    }
  }

  /** Medians by commons-statistics. */
  @Test
  void theRobustScaleIsThatOfTheList() {
    for (int i = 0; i < ROUNDS; i++) {
      List<Double> values = values();
      Robust list = Robust.of(values);
      Robust counted = Robust.of(counted(values));
      assertThat(counted.n()).isEqualTo(list.n());
      assertThat(counted.from()).isEqualTo(list.from());
      assertThat(counted.median()).isCloseTo(list.median(), within(1e-12));
      assertThat(counted.scale()).isCloseTo(list.scale(), within(1e-12));
    }
  }

  /** Mean and variance by Hipparchus. */
  @Test
  void momentsAreThoseOfTheList() {
    for (int i = 0; i < ROUNDS; i++) {
      List<Double> values = values();
      values.replaceAll(value -> value + 1000);
      Moments one = new Moments();
      Moments other = new Moments();
      values.forEach(value -> (random.nextBoolean() ? one : other).add(value));
      one.addAll(other);
      same(one.summary(), Summary.of(values));
      same(counted(values).moments().summary(), Summary.of(values));
    }
  }

  private static void same(Summary found, Summary list) {
    assertThat(found.n()).isEqualTo(list.n());
    assertThat(found.mean()).isCloseTo(list.mean(), within(1e-9));
    assertThat(found.least()).isEqualTo(list.least());
    assertThat(found.greatest()).isEqualTo(list.greatest());
    assertThat(found.sd() == null).isEqualTo(list.sd() == null);
    if (found.sd() != null) {
      assertThat(found.sd()).isCloseTo(Objects.requireNonNull(list.sd()), within(1e-9));
    }
  }

  @Test
  void theProductLimitIsThatOfTheList() {
    for (int i = 0; i < ROUNDS; i++) {
      List<Double> gave = values();
      List<Double> held = random.nextBoolean() ? values() : List.of();
      List<Lifetime> all = new ArrayList<>();
      gave.forEach(value -> all.add(Lifetime.endedAt(value)));
      held.forEach(value -> all.add(Lifetime.heldTo(value)));
      assertThat(ProductLimit.of(counted(gave), counted(held), 0.95))
          .isEqualTo(ProductLimit.of(all, 0.95));
    }
  }

  /** The fit of the list is itself held against Hipparchus's least squares elsewhere. */
  @Test
  void theFitOfSharesIsThatOfTheList() {
    for (int i = 0; i < ROUNDS; i++) {
      List<Response> all = new ArrayList<>();
      Map<String, Moments> cells = new LinkedHashMap<>();
      int n = 1 + random.nextInt(40);
      for (int k = 0; k < n; k++) {
        String block = "b" + random.nextInt(4);
        String level = "l" + random.nextInt(4);
        double value = 40 + random.nextInt(80) / 2.0;
        all.add(new Response(block, level, value));
        cells.computeIfAbsent(block + " " + level, key -> new Moments()).add(value);
      }
      Shares shares = new Shares();
      List<String> blocks = List.of("b0", "b1", "b2", "b3");
      List<String> levels = all.stream().map(Response::level).distinct().toList();
      cells.forEach(
          (cell, values) ->
              shares.add(
                  blocks.indexOf(cell.substring(0, 2)), levels.indexOf(cell.substring(3)), values));
      same(Additive.ofShares(shares, blocks, levels, 0.9, 0.9), Additive.of(all, 0.9));
    }
  }

  /** So many blocks that rows are turned into triangles on the way, and some without a value. */
  @Test
  void theFitOfVeryManySharesIsThatOfTheList() {
    List<Response> all = new ArrayList<>();
    Shares shares = new Shares();
    List<String> blocks = new ArrayList<>();
    List<String> levels = List.of("l0", "l1", "l2", "l3", "l4");
    for (int block = 0; block < 3000; block++) {
      blocks.add("b" + block);
      double hand = random.nextInt(20);
      for (int level = 0; level < levels.size(); level++) {
        for (int k = random.nextInt(3); k > 0; k--) {
          double value = 40 + hand + 3 * level + random.nextInt(16) / 2.0;
          all.add(new Response(blocks.get(block), levels.get(level), value));
          shares.add(block, level, value);
        }
      }
      shares.add(block, 0, new Moments());
    }
    Additive found = Additive.ofShares(shares, blocks, levels, 0.9, 0.99);
    Additive list = Additive.of(all, 0.9, 0.99);
    same(found, list);
    assertThat(found.blocks()).hasSameElementsAs(list.blocks());
    assertThat(found.ssLevels()).isCloseTo(list.ssLevels(), within(1e-6));
    for (Difference each : list.differences()) {
      Difference other = Objects.requireNonNull(found.difference(each.first(), each.second()));
      assertThat(other.estimate()).isCloseTo(each.estimate(), within(1e-9));
      assertThat(Objects.requireNonNull(other.error()))
          .isCloseTo(Objects.requireNonNull(each.error()), within(1e-9));
    }
  }

  private static void same(Additive found, Additive list) {
    assertThat(found.n()).isEqualTo(list.n());
    assertThat(found.dfError()).isEqualTo(list.dfError());
    assertThat(found.ssError()).isCloseTo(list.ssError(), within(1e-6));
    for (AdjustedMean mean : list.means()) {
      AdjustedMean other = Objects.requireNonNull(found.mean(mean.level()));
      assertThat(other.mean()).isCloseTo(mean.mean(), within(1e-9));
      same(other.raw(), mean.raw());
      assertThat(other.interval() == null).isEqualTo(mean.interval() == null);
    }
  }

  @Test
  void nothingAtAllIsRefused() {
    assertThatThrownBy(() -> FiveNumbers.of(new Counted()))
        .isInstanceOf(IllegalArgumentException.class);
    Shares none = new Shares();
    none.add(0, 0, new Moments());
    assertThatThrownBy(() -> Additive.ofShares(none, List.of("b"), List.of("l"), 0.9, 0.9))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Counted().add(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
