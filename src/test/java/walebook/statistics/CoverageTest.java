package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static walebook.statistics.Figures.known;
import static walebook.statistics.Figures.there;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import walebook.statistics.Line.Point;

/** 2,000 made classes with known truth: intervals hold it as often as they say. */
class CoverageTest {
  private static final int CLASSES = 2000;

  /** Four standard errors of a share of 0.95 among the classes. */
  private static final double MARGIN = 4 * Math.sqrt(0.95 * 0.05 / CLASSES);

  private static void assertNominal(String what, int held) {
    assertThat((double) held / CLASSES).as(what).isBetween(0.95 - MARGIN, 0.95 + MARGIN);
  }

  @Test
  void meansOfFewReadings() {
    Random random = new Random(1);
    int held = 0;
    for (int round = 0; round < CLASSES; round++) {
      List<Double> values = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        values.add(52 + 3 * random.nextGaussian());
      }
      held += there(Summary.of(values).tInterval(0.95)).contains(52) ? 1 : 0;
    }
    assertNominal("t-interval", held);
  }

  /** Rates drawn evenly from 0 to 1: Wilson covers at its level on average, exact at least so. */
  @Test
  void ratesOfFewPieces() {
    Random random = new Random(2);
    int wilson = 0;
    int exact = 0;
    for (int round = 0; round < CLASSES; round++) {
      double rate = random.nextDouble();
      int count = (int) random.doubles(12).filter(u -> u < rate).count();
      wilson += new Proportion(count, 12).wilson(0.95).contains(rate) ? 1 : 0;
      exact += new Proportion(count, 12).exact(0.95).contains(rate) ? 1 : 0;
    }
    assertNominal("Wilson", wilson);
    assertThat((double) exact / CLASSES).isGreaterThan(0.95 - MARGIN);
  }

  @Test
  void biasesOfPeople() {
    Random random = new Random(3);
    double[] truth = {2, -1, 0.5, -1.5};
    int held = 0;
    for (int round = 0; round < CLASSES; round++) {
      List<Sample> samples = new ArrayList<>();
      for (int i = 0; i < truth.length; i++) {
        List<Double> values = new ArrayList<>();
        for (int k = 0; k < 2 + i; k++) {
          values.add(150 + truth[i] + random.nextGaussian());
        }
        samples.add(new Sample("p" + i, values));
      }
      Member first = Agreement.of(samples, 0.95).members().get(0);
      held += there(first.biasInterval()).contains(truth[0]) ? 1 : 0;
    }
    assertNominal("bias", held);
  }

  /**
   * People drawn at random, 2 to 5 readings each: components average to what they were made with.
   */
  @Test
  void componentsOfUnevenClasses() {
    Random random = new Random(9);
    double within = 0;
    double between = 0;
    for (int round = 0; round < CLASSES; round++) {
      List<Sample> samples = new ArrayList<>();
      for (int i = 0; i < 8; i++) {
        double person = 150 + 2 * random.nextGaussian();
        List<Double> values = new ArrayList<>();
        for (int k = 0; k < 2 + i % 4; k++) {
          values.add(person + random.nextGaussian());
        }
        samples.add(new Sample("p" + i, values));
      }
      Agreement found = Agreement.of(samples, 0.95);
      within += Math.pow(known(found.repeatabilitySd()), 2) / CLASSES;
      between += known(found.betweenVariance()) / CLASSES;
    }
    assertThat(within).isCloseTo(1, within(4 * Math.sqrt(2.0 / 20 / CLASSES)));
    assertThat(between).isCloseTo(4, within(4 * 2.4 / Math.sqrt(CLASSES)));
  }

  /** The band is asked at every tenth of the range at once; there its cover is a little wider. */
  @Test
  void linesAndTheirBands() {
    Random random = new Random(4);
    int mean = 0;
    int band = 0;
    int next = 0;
    for (int round = 0; round < CLASSES; round++) {
      List<Point> points = new ArrayList<>();
      for (int i = 0; i < 9; i++) {
        double x = 10 + 8 * i;
        points.add(new Point(x, 5 + 0.8 * x + 4 * random.nextGaussian()));
      }
      Line line = there(Line.fit(points));
      mean += there(line.meanAt(30, 0.95)).contains(29) ? 1 : 0;
      double fresh = 29 + 4 * random.nextGaussian();
      next += there(line.nextAt(30, 0.95)).contains(fresh) ? 1 : 0;
      boolean all = true;
      for (double x = -200; x <= 300; x += 10) {
        all &= there(line.bandAt(x, 0.95)).contains(5 + 0.8 * x);
      }
      band += all ? 1 : 0;
    }
    assertNominal("mean at x", mean);
    assertNominal("next at x", next);
    assertNominal("band", band);
  }

  /** Ends at exponential distances, watching stopped at others: about a third are censored. */
  @Test
  void sharesThatLast() {
    Random random = new Random(5);
    int held = 0;
    int median = 0;
    for (int round = 0; round < CLASSES; round++) {
      List<Lifetime> all = new ArrayList<>();
      for (int i = 0; i < 40; i++) {
        double end = -Math.log(1 - random.nextDouble());
        double stop = -2 * Math.log(1 - random.nextDouble());
        all.add(end <= stop ? Lifetime.endedAt(end) : Lifetime.heldTo(stop));
      }
      ProductLimit found = ProductLimit.of(all, 0.95);
      Interval at = null;
      for (var step : found.steps()) {
        at = step.value() <= 0.5 ? step.interval() : at;
      }
      held += there(at).contains(Math.exp(-0.5)) ? 1 : 0;
      ProductLimit.Limits limits = found.quantileLimits(0.5);
      boolean above = limits.low() == null || limits.low() <= Math.log(2);
      boolean below = limits.high() == null || limits.high() >= Math.log(2);
      median += above && below ? 1 : 0;
    }
    assertThat((double) held / CLASSES).as("product limit").isBetween(0.93, 0.97);
    assertThat((double) median / CLASSES).as("median").isBetween(0.93, 0.97);
  }

  @Test
  void differencesOfRates() {
    Random random = new Random(6);
    int held = 0;
    for (int round = 0; round < CLASSES; round++) {
      double one = random.nextDouble();
      double two = random.nextDouble();
      int first = (int) random.doubles(15).filter(u -> u < one).count();
      int second = (int) random.doubles(10).filter(u -> u < two).count();
      TwoRates rates = new TwoRates(new Proportion(first, 15), new Proportion(second, 10));
      held += rates.newcombe(0.95).contains(one - two) ? 1 : 0;
    }
    assertThat((double) held / CLASSES).as("Newcombe").isBetween(0.94, 0.975);
  }
}
