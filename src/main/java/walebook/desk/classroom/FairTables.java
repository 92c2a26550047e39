package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.SettingWords;
import walebook.compare.FairComparison;
import walebook.compare.FairPair;
import walebook.compare.FairRow;
import walebook.desk.common.ColumnTable;
import walebook.drawing.ValueBar;
import walebook.quantity.Show;
import walebook.statistics.Interval;
import walebook.words.Words;

/** The tables of a fair comparison. */
final class FairTables {
  private static final int ROWS = 9;

  private final Words words;
  private final SettingWords settings;

  FairTables(Words words, SettingWords settings) {
    this.words = words;
    this.settings = settings;
  }

  /** Settings with how many, raw and adjusted, and the interval drawn. */
  ColumnTable<FairRow> rows(FairComparison of) {
    ColumnTable<FairRow> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.class.fair"));
    table.words(
        words.say("desk.class.col.setting"),
        23,
        row -> settings.setting(of.factors(), row.levels()));
    count(table, words.say("desk.class.col.pieces"), row -> row.pieces());
    count(table, words.say("desk.class.col.students"), row -> row.students());
    if (!of.question().outcome().isRate()) {
      figure(table, words.say("desk.class.fair.raw"), FairTables::raw);
      figure(table, words.say("desk.class.fair.adjusted"), FairTables::adjusted);
    }
    if (of.question().outcome().isOfSeam()) {
      figure(table, words.say("desk.class.fair.half-by"), FairTables::median);
    }
    double[] scale = scale(of);
    table.drawings(
        words,
        words.say("desk.class.fair.bar"),
        14,
        row -> order(row.middle()),
        row -> bar(row, of, scale));
    if (of.question().outcome().isRate() || of.question().outcome().isOfSeam()) {
      table.words(words.say("desk.class.col.held"), 12, FairTables::held);
    }
    table.getItems().setAll(of.rows());
    table.asHighAs(ROWS);
    return table;
  }

  /** Every two settings and what can be said of their difference. */
  ColumnTable<FairPair> pairs(FairComparison of, boolean pValues) {
    ColumnTable<FairPair> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.class.fair.pairs"));
    table.words(
        words.say("desk.class.fair.first"),
        16,
        pair -> settings.setting(of.factors(), pair.first()));
    table.words(
        words.say("desk.class.fair.second"),
        16,
        pair -> settings.setting(of.factors(), pair.second()));
    table.figures(
        words.say("desk.class.fair.difference"),
        6,
        pair -> order(pair.estimate()),
        pair -> number(pair.estimate()));
    table.words(
        words.say("desk.class.fair.limits"),
        9,
        pair ->
            pair.low() == null && pair.high() == null
                ? "–"
                : number(pair.low()) + " … " + number(pair.high()));
    table.words(words.say("desk.class.fair.can-be-said"), 18, this::verdict);
    if (pValues) {
      table.figures(
          words.say("desk.class.fair.p"),
          6,
          pair -> order(pair.p()),
          pair -> pair.p() == null ? "–" : Show.fixed(pair.p(), 3));
    }
    table.getItems().setAll(of.pairs());
    table.asHighAs(ROWS);
    return table;
  }

  /** The settings as rows of cells, for the clipboard. */
  List<List<String>> cells(FairComparison of) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            words.say("desk.class.col.setting"),
            words.say("desk.class.col.pieces"),
            words.say("desk.class.col.students"),
            words.say("desk.class.fair.raw"),
            words.say("desk.class.fair.adjusted"),
            words.say("desk.class.fair.half-by"),
            words.say("desk.class.col.held")));
    for (FairRow row : of.rows()) {
      rows.add(
          List.of(
              settings.setting(of.factors(), row.levels()),
              String.valueOf(row.pieces()),
              String.valueOf(row.students()),
              number(raw(row)),
              number(adjusted(row)),
              number(median(row)),
              held(row)));
    }
    return rows;
  }

  static String number(@Nullable Double value) {
    return value == null ? "–" : Show.fixed(value, 1);
  }

  private String verdict(FairPair pair) {
    return words.say(
        switch (pair.size()) {
          case MORE -> "compare.size.more";
          case LESS -> "compare.size.less";
          case DIFFERS -> "compare.size.differs";
          case DIFFERS_MAYBE_LITTLE -> "compare.size.maybe";
          case CANT_TELL -> "compare.size.cant-tell";
          case NOT_COMPARABLE -> "compare.size.not-comparable";
        });
  }

  private static ValueBar bar(FairRow row, FairComparison of, double[] scale) {
    Double middle = row.middle();
    double[] ends = ends(row, of);
    return ends.length == 0
        ? new ValueBar(middle, null, null, scale[0], scale[1], null)
        : new ValueBar(middle, ends[0], ends[1], scale[0], scale[1], null);
  }

  /** The interval of what stands as the row's middle; none for a median. */
  private static double[] ends(FairRow row, FairComparison of) {
    if (row.adjusted() != null) {
      Interval interval = row.adjusted().interval();
      return interval == null ? new double[0] : new double[] {interval.low(), interval.high()};
    }
    Interval held = row.heldInterval(of.question().confidence());
    return row.lasting() != null || held == null
        ? new double[0]
        : new double[] {100 * held.low(), 100 * held.high()};
  }

  private static double[] scale(FairComparison of) {
    if (of.question().outcome().isRate()) {
      return new double[] {0, 100};
    }
    double[] all =
        of.rows().stream()
            .flatMapToDouble(
                row ->
                    DoubleStream.concat(
                        row.middle() == null ? DoubleStream.empty() : DoubleStream.of(row.middle()),
                        DoubleStream.of(ends(row, of))))
            .toArray();
    double low = DoubleStream.of(all).min().orElse(0);
    double high = DoubleStream.of(all).max().orElse(1);
    double pad = Math.max(0.5, (high - low) * 0.05);
    return new double[] {low - pad, high + pad};
  }

  private interface Counting {
    int of(FairRow row);
  }

  private interface Measuring {
    @Nullable Double of(FairRow row);
  }

  private static void count(ColumnTable<FairRow> table, String title, Counting number) {
    table.figures(
        title, 5.5, row -> (double) number.of(row), row -> String.valueOf(number.of(row)));
  }

  private static void figure(ColumnTable<FairRow> table, String title, Measuring number) {
    table.figures(title, 6.5, row -> order(number.of(row)), row -> number(number.of(row)));
  }

  private static @Nullable Double raw(FairRow row) {
    return row.raw() == null ? null : Double.valueOf(row.raw().mean());
  }

  private static @Nullable Double adjusted(FairRow row) {
    return row.adjusted() == null ? null : Double.valueOf(row.adjusted().mean());
  }

  private static @Nullable Double median(FairRow row) {
    return row.lasting() == null ? null : row.lasting().median();
  }

  private static String held(FairRow row) {
    return row.held() == null
        ? "–"
        : String.format(Locale.ROOT, "%d/%d", row.held().count(), row.held().n());
  }

  private static Double order(@Nullable Double value) {
    return value == null ? Double.NaN : value;
  }
}
