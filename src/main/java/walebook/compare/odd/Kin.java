package walebook.compare.odd;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import walebook.record.MarkedValue;
import walebook.statistics.Counted;
import walebook.statistics.MedianPolish;
import walebook.statistics.Robust;

/**
 * Lots of one cloth, grain and stitch that differ in how the machine was set. Where a lot has too
 * few of its own, the others tell what it should come to: setting by setting, by medians. A better
 * setting is not an odd reading, so a value counts as far out only where another piece set alike
 * came out otherwise.
 */
final class Kin {
  static final int FEWEST = 5;

  /** A level of which there are fewer tells nothing of an odd one among them. */
  private static final int FEWEST_OF_LEVEL = 3;

  private final MarkedValue value;
  private final Map<List<String>, Lot> lots = new LinkedHashMap<>();
  private @Nullable Fit fit;

  Kin(MarkedValue value) {
    this.value = value;
  }

  private record Fit(List<Lot> lots, MedianPolish polish, OddReading.Mostly off, int among) {
    @Nullable Usual of(Lot lot) {
      int at = lots.indexOf(lot);
      if (at < 0 || polish.spare() < FEWEST || polish.spread() == 0) {
        return null;
      }
      double middle = polish.fitted().get(at);
      OddReading.Mostly mostly =
          new OddReading.Mostly(middle + off.least(), middle + off.greatest());
      return new Usual(middle, polish.spread(), mostly, among, true);
    }
  }

  /** The values of pieces set alike. */
  final class Lot {
    private final List<String> levels;
    private final Counted values = new Counted();
    private @Nullable Usual usual;
    private boolean isTold;

    private Lot(List<String> levels) {
      this.levels = levels;
    }

    void addAll(Counted more) {
      values.addAll(more);
    }

    int size() {
      return values.n();
    }

    /** Null where they are too few to say what is usual, and nothing else tells it. */
    @Nullable Usual usual() {
      synchronized (Kin.this) {
        if (!isTold) {
          usual = values.n() < FEWEST ? expected() : own();
          isTold = true;
        }
        return usual;
      }
    }

    private Usual own() {
      Robust robust = Robust.of(values);
      OddReading.Mostly mostly = OddReading.Mostly.of(robust, values.different());
      return new Usual(robust.median(), robust.scale(), mostly, values.n(), false);
    }

    private @Nullable Usual expected() {
      return values.n() < 2 || hasRareLevel() ? null : fit().of(this);
    }

    private boolean hasRareLevel() {
      for (int i = 0; i < levels.size(); i++) {
        int factor = i;
        String level = levels.get(i);
        int n =
            lots.values().stream()
                .filter(each -> each.levels.get(factor).equals(level))
                .mapToInt(Lot::size)
                .sum();
        if (n < FEWEST_OF_LEVEL) {
          return true;
        }
      }
      return false;
    }

    boolean isFar(double number) {
      Usual than = usual();
      return than != null
          && than.isFar(number, value)
          && (!than.expected() || (values.timesOf(number) < 2 && isFarFromOthers(than, number)));
    }

    private boolean isFarFromOthers(Usual than, double number) {
      return values
          .different()
          .filter(other -> other != number)
          .allMatch(other -> than.isFar(number, other, value));
    }
  }

  synchronized Lot lot(List<String> levels) {
    return lots.computeIfAbsent(levels, Lot::new);
  }

  private Fit fit() {
    Fit known = fit;
    if (known == null) {
      List<Lot> some = lots.values().stream().filter(lot -> lot.size() > 0).toList();
      List<MedianPolish.Cell> cells =
          some.stream().map(lot -> new MedianPolish.Cell(lot.levels, lot.values)).toList();
      known = fit(some, MedianPolish.of(cells));
      fit = known;
    }
    return known;
  }

  private static Fit fit(List<Lot> lots, MedianPolish polish) {
    List<double[]> off = new ArrayList<>();
    for (int i = 0; i < lots.size(); i++) {
      double middle = polish.fitted().get(i);
      off.add(lots.get(i).values.different().map(each -> each - middle).toArray());
    }
    DoubleStream all = off.stream().flatMapToDouble(Arrays::stream);
    int among = lots.stream().mapToInt(Lot::size).sum();
    return new Fit(lots, polish, OddReading.Mostly.of(0, polish.spread(), all), among);
  }
}
