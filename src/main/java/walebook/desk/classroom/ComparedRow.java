package walebook.desk.classroom;

import org.jspecify.annotations.Nullable;
import walebook.compare.SettingRow;
import walebook.drawing.IntervalBar;
import walebook.quantity.Show;
import walebook.statistics.FiveNumbers;
import walebook.statistics.Interval;
import walebook.words.Words;

/**
 * A setting of the table, as it is shown.
 *
 * @param setting its levels in one line
 */
record ComparedRow(String setting, SettingRow found) {

  /** How many held out of those pulled, with the interval. */
  IntervalBar bar() {
    Interval interval = found.heldInterval();
    return interval == null
        ? new IntervalBar(0, 0, 0, 0)
        : new IntervalBar(
            found.held(), found.held() + found.gave(), 100 * interval.low(), 100 * interval.high());
  }

  double heldShare() {
    var share = found.heldShare();
    return share == null ? Double.NaN : share.share();
  }

  /** Median with least and greatest, such as {@code 62 (55–71)}; a dash when there is none. */
  static String spread(Words words, @Nullable FiveNumbers of, int decimals) {
    if (of == null) {
      return "–";
    }
    String median = Show.fixed(of.median(), decimals);
    return of.n() == 1
        ? median
        : words.say(
            "desk.class.spread",
            median,
            Show.fixed(of.least(), decimals),
            Show.fixed(of.greatest(), decimals));
  }

  static Double order(@Nullable FiveNumbers of) {
    return of == null ? Double.NaN : of.median();
  }
}
