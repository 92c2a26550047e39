package walebook.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.statistics.Additive;
import walebook.statistics.Difference;
import walebook.statistics.Holm;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;
import walebook.statistics.TwoRates;

/**
 * Compares every two settings that lie on the same ground, all of these at once at the question's
 * confidence: each difference of means has an equal share of what may go wrong, and medians have
 * the shares of their pairs together.
 */
final class ComparePairs {
  /** More pieces are only advised up to this many times those there are. */
  private static final double AT_MOST_TIMES = 4;

  /** More than a class could sew of two settings is no advice. */
  private static final double AT_MOST_PIECES = 60;

  /** Four of five draws from a normal distribution lie above its mean less this many sd. */
  private static final double FOUR_OF_FIVE = 0.8416;

  /** Below this the scatter is too badly known to reckon with. */
  private static final int FEWEST_DEGREES = 5;

  private final FairQuestion question;
  private final @Nullable Additive model;
  private final @Nullable MeasuringError measuring;
  private final double each;
  private final Map<Additive.Pair, Difference> differences = new HashMap<>();
  private final Map<List<String>, Lasting> medians = new HashMap<>();

  private ComparePairs(
      FairQuestion question,
      @Nullable Additive model,
      @Nullable MeasuringError measuring,
      int pairs) {
    this.question = question;
    this.model = model;
    this.measuring = measuring;
    this.each = 1 - (1 - question.confidence()) / Math.max(1, pairs);
    if (model != null) {
      model
          .differences()
          .forEach(one -> differences.put(new Additive.Pair(one.first(), one.second()), one));
    }
  }

  static List<FairPair> of(
      List<FairRow> rows,
      Ground ground,
      FairQuestion question,
      @Nullable Additive model,
      @Nullable MeasuringError measuring) {
    List<Two> compared = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      for (int j = i + 1; j < rows.size(); j++) {
        if (ground.compares(rows.get(i).levels(), rows.get(j).levels())) {
          compared.add(new Two(rows.get(i), rows.get(j)));
        }
      }
    }
    ComparePairs compare = new ComparePairs(question, model, measuring, compared.size());
    compare.readMedians(compared);
    return compare.withHolm(
        compared.stream().map(two -> compare.pair(two.one, two.other)).toList());
  }

  private record Two(FairRow one, FairRow other) {
    boolean byMeans() {
      return one.adjusted() != null && other.adjusted() != null;
    }
  }

  private void readMedians(List<Two> compared) {
    List<Two> lasting =
        question.outcome().isRate()
            ? List.of()
            : compared.stream().filter(two -> !two.byMeans()).toList();
    Map<List<String>, FairRow> rows = new LinkedHashMap<>();
    for (Two two : lasting) {
      rows.put(two.one.levels(), two.one);
      rows.put(two.other.levels(), two.other);
    }
    double wrong = (1 - question.confidence()) * lasting.size() / Math.max(1, compared.size());
    rows.forEach(
        (levels, row) ->
            medians.put(
                levels, Lasting.of(row.values(), row.lowerBounds(), 1 - wrong / rows.size())));
  }

  private FairPair pair(FairRow first, FairRow second) {
    if (question.outcome().isRate()) {
      return rates(first, second);
    }
    if (first.adjusted() != null && second.adjusted() != null) {
      return means(first, second);
    }
    return medians(first, second);
  }

  private FairPair means(FairRow first, FairRow second) {
    Difference found =
        difference(CompareCells.name(first.levels()), CompareCells.name(second.levels()));
    if (found == null) {
      return new FairPair(
          first.levels(),
          second.levels(),
          FairPair.Basis.NONE,
          null,
          null,
          null,
          null,
          FairPair.Size.NOT_COMPARABLE,
          null,
          null);
    }
    Interval interval = found.interval();
    FairPair.Size size =
        FairPair.size(FairPair.low(interval), FairPair.high(interval), question.matters());
    return new FairPair(
        first.levels(),
        second.levels(),
        FairPair.Basis.ADJUSTED_MEANS,
        found.estimate(),
        FairPair.low(interval),
        FairPair.high(interval),
        found.p(),
        size,
        onlyMeasuring(found.estimate(), first, second),
        more(found, size, first.pieces() + second.pieces()));
  }

  private @Nullable Difference difference(String first, String second) {
    Difference found = differences.get(new Additive.Pair(first, second));
    Difference turned =
        differences.get(new Additive.Pair(/* first= */ second, /* second= */ first));
    return found != null || turned == null ? found : turned.turned();
  }

  private @Nullable Boolean onlyMeasuring(double estimate, FairRow first, FairRow second) {
    return measuring == null
        ? null
        : Boolean.valueOf(Math.abs(estimate) <= measuring.limit(first.pieces(), second.pieces()));
  }

  /**
   * A standard error goes with one over the root of the number of pieces. With so many that an
   * interval just reaches as far as the difference, half of all classes would miss it; so it is to
   * reach less far, by as much as four of five differences lie above. What is seen is only an
   * estimate, so nothing is advised where it lies close to what matters, or where many times the
   * pieces would be needed.
   */
  private @Nullable Integer more(Difference found, FairPair.Size size, int pieces) {
    Interval interval = found.interval();
    Double error = found.error();
    boolean open = size == FairPair.Size.CANT_TELL || size == FairPair.Size.DIFFERS_MAYBE_LITTLE;
    if (!open
        || interval == null
        || error == null
        || model == null
        || model.dfError() < FEWEST_DEGREES) {
      return null;
    }
    Double matters = question.matters();
    double away = Math.abs(Math.abs(found.estimate()) - (matters == null ? 0 : matters));
    double reach = interval.width() / 2 + FOUR_OF_FIVE * error;
    double times = away == 0 ? Double.POSITIVE_INFINITY : Math.pow(reach / away, 2);
    double wanted = Math.max(1, Math.ceil((times - 1) * pieces));
    return times > AT_MOST_TIMES || wanted > AT_MOST_PIECES ? null : Integer.valueOf((int) wanted);
  }

  /** Both medians lie in their limits at once, so their difference lies between the far ends. */
  private FairPair medians(FairRow first, FairRow second) {
    Lasting one = Objects.requireNonNull(medians.get(first.levels()));
    Lasting two = Objects.requireNonNull(medians.get(second.levels()));
    Double low = minus(one.low(), two.high());
    Double high = minus(one.high(), two.low());
    return new FairPair(
        first.levels(),
        second.levels(),
        FairPair.Basis.MEDIANS,
        minus(one.median(), two.median()),
        low,
        high,
        null,
        FairPair.size(low, high, question.matters()),
        null,
        null);
  }

  private static @Nullable Double minus(@Nullable Double one, @Nullable Double two) {
    return one == null || two == null ? null : Double.valueOf(one - two);
  }

  private FairPair rates(FairRow first, FairRow second) {
    Proportion one = Objects.requireNonNull(first.held());
    Proportion two = Objects.requireNonNull(second.held());
    TwoRates rates = new TwoRates(one, two);
    Interval interval = rates.newcombe(each);
    double low = 100 * interval.low();
    double high = 100 * interval.high();
    return new FairPair(
        first.levels(),
        second.levels(),
        FairPair.Basis.RATES,
        100 * rates.difference(),
        low,
        high,
        rates.fisher(),
        FairPair.size(low, high, question.matters()),
        null,
        null);
  }

  /**
   * Each p for all pairs together, of the same pairs that share in the limits: one without a p of
   * its own, such as of medians, counts as one of 1. Rates of few pieces: the interval alone can
   * call too much sure, so Fisher's exact test, adjusted by Holm, must agree.
   */
  private List<FairPair> withHolm(List<FairPair> pairs) {
    List<Double> alone = new ArrayList<>();
    pairs.forEach(pair -> alone.add(pair.p() == null ? Double.valueOf(1) : pair.p()));
    Iterator<Double> together = Holm.adjust(alone).iterator();
    List<FairPair> all = new ArrayList<>();
    for (FairPair pair : pairs) {
      Double adjusted = together.next();
      Double p = pair.p() == null ? null : adjusted;
      boolean doubted =
          p != null
              && question.outcome().isRate()
              && pair.isSure()
              && p > 1 - question.confidence();
      all.add(
          new FairPair(
              pair.first(),
              pair.second(),
              pair.basis(),
              pair.estimate(),
              pair.low(),
              pair.high(),
              p,
              doubted ? FairPair.Size.CANT_TELL : pair.size(),
              pair.onlyMeasuring(),
              pair.morePieces()));
    }
    return all;
  }
}
