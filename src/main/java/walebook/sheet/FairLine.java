package walebook.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.compare.FairFigures;
import walebook.compare.Outcome;
import walebook.statistics.Interval;

/** One setting's value of one outcome, freed from who sewed it where that can be done. */
record FairLine(FairFigures of, FairFigures.Row row) {
  static List<FairLine> all(List<FairFigures> found) {
    List<FairLine> lines = new ArrayList<>();
    for (FairFigures each : found) {
      each.rows().forEach(row -> lines.add(new FairLine(each, row)));
    }
    return lines;
  }

  Outcome outcome() {
    return of.question().outcome();
  }

  @Nullable Double middle() {
    return row.middle();
  }

  @Nullable Double low() {
    Interval interval = interval();
    if (interval != null) {
      return interval.low();
    }
    return row.lasting() == null ? null : row.lasting().low();
  }

  @Nullable Double high() {
    Interval interval = interval();
    if (interval != null) {
      return interval.high();
    }
    return row.lasting() == null ? null : row.lasting().high();
  }

  private @Nullable Interval interval() {
    if (row.adjusted() != null) {
      return row.adjusted().interval();
    }
    Interval held = outcome().isRate() ? row.heldInterval(of.question().confidence()) : null;
    return held == null
        ? null
        : new Interval(100 * held.low(), 100 * held.high(), held.confidence());
  }

  /** The bar's length below the middle; null where either end is not known. */
  @Nullable Double down() {
    Double middle = middle();
    Double low = low();
    return middle == null || low == null ? null : Double.valueOf(middle - low);
  }

  @Nullable Double up() {
    Double middle = middle();
    Double high = high();
    return middle == null || high == null ? null : Double.valueOf(high - middle);
  }
}
