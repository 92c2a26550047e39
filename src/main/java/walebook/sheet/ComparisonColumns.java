package walebook.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.compare.Factor;
import walebook.compare.TalliedComparison;
import walebook.compare.TalliedRow;
import walebook.statistics.FiveNumbers;
import walebook.statistics.Interval;
import walebook.statistics.Proportion;
import walebook.words.Words;
import walebook.working.Message;

/** The columns of the comparison: a row is one combination of levels that was sewn. */
final class ComparisonColumns {
  /** Keys that the chart finds its ranges by. */
  static final String LABEL = "setting";

  static final String SHARE = "held-share";
  static final String DOWN = "interval-down";
  static final String UP = "interval-up";

  /** Characters that a cloth or a stitch has before it goes on in the next line. */
  private static final int WORDS_WIDTH = 16;

  private ComparisonColumns() {}

  static List<Column<TalliedRow>> of(TalliedComparison comparison, Words words) {
    Choices choices = new Choices(words);
    SettingLabel label = new SettingLabel(comparison.factors(), choices);
    List<Column<TalliedRow>> columns = new ArrayList<>();
    columns.add(
        Column.<TalliedRow>text(
                LABEL,
                "sheet.comparison.setting",
                "sheet.comparison.setting.says",
                Origin.SETTING,
                Format.LONG_TEXT,
                label::of)
            .wide(40));
    for (int i = 0; i < comparison.factors().size(); i++) {
      columns.add(level(comparison.factors().get(i), i, label, choices));
    }
    columns.addAll(held());
    columns.addAll(gave());
    columns.addAll(seen());
    return columns;
  }

  private static Column<TalliedRow> level(
      Factor factor, int place, SettingLabel label, Choices choices) {
    boolean number = SettingLabel.isNumber(factor);
    return new Column<>(
        "level-" + factor.key(),
        Message.of("sheet.comparison.level", choices.factor(factor)),
        "",
        Message.of("sheet.comparison.level.says", choices.factor(factor)),
        Origin.SETTING,
        number ? Format.NARROW_HUNDREDTHS : Format.LONG_TEXT,
        number ? Format.NARROW_HUNDREDTHS.width() : WORDS_WIDTH,
        row -> label.value(place, row));
  }

  private static List<Column<TalliedRow>> held() {
    return List.of(
        Column.tally(
            "pieces",
            "sheet.comparison.pieces",
            "sheet.comparison.pieces.says",
            Origin.COUNT,
            TalliedRow::pieces),
        Column.tally(
            "students",
            "sheet.comparison.students",
            "sheet.comparison.students.says",
            Origin.COUNT,
            TalliedRow::students),
        Column.tally(
            "held",
            "sheet.comparison.held",
            "sheet.comparison.held.says",
            Origin.COUNT,
            TalliedRow::held),
        Column.tally(
            "gave",
            "sheet.comparison.gave",
            "sheet.comparison.gave.says",
            Origin.COUNT,
            TalliedRow::gave),
        Column.figure(
            SHARE,
            "sheet.comparison.held-share",
            "%",
            "sheet.comparison.held-share.says",
            Origin.HELD_SHARE,
            Format.NARROW,
            row -> share(row.heldShare())),
        Column.figure(
            "held-low",
            "sheet.comparison.held-low",
            "%",
            "sheet.comparison.held-low.says",
            Origin.WILSON,
            Format.NARROW,
            row -> low(row.heldInterval())),
        Column.figure(
            "held-high",
            "sheet.comparison.held-high",
            "%",
            "sheet.comparison.held-high.says",
            Origin.WILSON,
            Format.NARROW,
            row -> high(row.heldInterval())));
  }

  private static List<Column<TalliedRow>> gave() {
    return List.of(
        Column.figure(
            "stretch-median",
            "sheet.comparison.stretch-median",
            "%",
            "sheet.comparison.stretch-median.says",
            Origin.OF_GAVE,
            Format.NARROW,
            row -> median(row.stretchOfGave())),
        Column.figure(
            "stretch-least",
            "sheet.comparison.stretch-least",
            "%",
            "sheet.comparison.stretch-least.says",
            Origin.OF_GAVE,
            Format.NARROW,
            row -> least(row.stretchOfGave())),
        Column.figure(
            "stretch-greatest",
            "sheet.comparison.stretch-greatest",
            "%",
            "sheet.comparison.stretch-greatest.says",
            Origin.OF_GAVE,
            Format.NARROW,
            row -> greatest(row.stretchOfGave())),
        Column.figure(
            "share-median",
            "sheet.comparison.share-median",
            "%",
            "sheet.comparison.share-median.says",
            Origin.OF_GAVE,
            Format.NARROW,
            row -> median(row.shareOfGave())),
        Column.figure(
            "share-least",
            "sheet.comparison.share-least",
            "%",
            "sheet.comparison.share-least.says",
            Origin.OF_GAVE,
            Format.NARROW,
            row -> least(row.shareOfGave())),
        Column.figure(
            "share-greatest",
            "sheet.comparison.share-greatest",
            "%",
            "sheet.comparison.share-greatest.says",
            Origin.OF_GAVE,
            Format.NARROW,
            row -> greatest(row.shareOfGave())));
  }

  private static List<Column<TalliedRow>> seen() {
    return List.of(
        Column.figure(
            "edge-change",
            "sheet.comparison.edge-change",
            "%",
            "sheet.comparison.edge-change.says",
            Origin.MEDIAN,
            Format.NARROW,
            row -> median(row.edgeChange())),
        Column.figure(
            "grade",
            "sheet.comparison.grade",
            "",
            "sheet.comparison.grade.says",
            Origin.MEDIAN,
            Format.NARROW,
            row -> median(row.grade())),
        Column.tally(
            "faulty",
            "sheet.comparison.faulty",
            "sheet.comparison.faulty.says",
            Origin.FAULT,
            TalliedRow::withFault),
        Column.figure(
            DOWN,
            "sheet.comparison.interval-down",
            "points",
            "sheet.comparison.interval-down.says",
            Origin.CHART,
            Format.NARROW,
            row -> down(row)),
        Column.figure(
            UP,
            "sheet.comparison.interval-up",
            "points",
            "sheet.comparison.interval-up.says",
            Origin.CHART,
            Format.NARROW,
            row -> up(row)));
  }

  private static @Nullable Number share(@Nullable Proportion held) {
    return held == null ? null : 100 * held.share();
  }

  private static @Nullable Number low(@Nullable Interval interval) {
    return interval == null ? null : 100 * interval.low();
  }

  private static @Nullable Number high(@Nullable Interval interval) {
    return interval == null ? null : 100 * interval.high();
  }

  private static @Nullable Number down(TalliedRow row) {
    Proportion held = row.heldShare();
    Interval interval = row.heldInterval();
    return held == null || interval == null ? null : 100 * (held.share() - interval.low());
  }

  private static @Nullable Number up(TalliedRow row) {
    Proportion held = row.heldShare();
    Interval interval = row.heldInterval();
    return held == null || interval == null ? null : 100 * (interval.high() - held.share());
  }

  private static @Nullable Number median(@Nullable FiveNumbers of) {
    return of == null ? null : of.median();
  }

  private static @Nullable Number least(@Nullable FiveNumbers of) {
    return of == null ? null : of.least();
  }

  private static @Nullable Number greatest(@Nullable FiveNumbers of) {
    return of == null ? null : of.greatest();
  }
}
