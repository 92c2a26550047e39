package walebook.sheet;

import java.util.List;
import java.util.stream.Stream;
import walebook.compare.Outcome;
import walebook.words.Words;

/** The columns of the fair comparison: a row is one setting under one outcome. */
final class FairColumns {
  private FairColumns() {}

  static List<Column<FairLine>> of(Words words) {
    Choices choices = new Choices(words);
    return Stream.of(first(words, choices), second()).flatMap(List::stream).toList();
  }

  private static List<Column<FairLine>> first(Words words, Choices choices) {
    return List.of(
        Column.<FairLine>text(
                "outcome",
                "sheet.fair.outcome",
                "sheet.fair.outcome.says",
                Origin.OUTCOMES,
                Format.LONG_TEXT,
                line -> words.say("compare.outcome." + line.outcome().key()))
            .wide(26),
        Column.words(
            "unit",
            "sheet.fair.unit",
            "sheet.fair.unit.says",
            Origin.UNIT,
            line -> unit(words, line.outcome())),
        Column.<FairLine>text(
                "setting",
                "sheet.fair.setting",
                "sheet.fair.setting.says",
                Origin.FAIR_SETTING,
                Format.LONG_TEXT,
                line -> label(choices, line))
            .wide(44),
        Column.whole(
            "pieces",
            "sheet.fair.pieces",
            "sheet.fair.pieces.says",
            Origin.COUNT,
            line -> line.row().pieces()),
        Column.whole(
            "students",
            "sheet.fair.students",
            "sheet.fair.students.says",
            Origin.COUNT,
            line -> line.row().students()),
        Column.whole(
            "bounds",
            "sheet.fair.bounds",
            "sheet.fair.bounds.says",
            Origin.COUNT,
            line -> line.row().bounds()));
  }

  private static List<Column<FairLine>> second() {
    return List.of(
        Column.figure(
            "middle",
            "sheet.fair.middle",
            "",
            "sheet.fair.middle.says",
            Origin.FAIR,
            Format.HUNDREDTHS,
            FairLine::middle),
        Column.figure(
            "low",
            "sheet.fair.low",
            "",
            "sheet.fair.low.says",
            Origin.FAIR_INTERVAL,
            Format.HUNDREDTHS,
            FairLine::low),
        Column.figure(
            "high",
            "sheet.fair.high",
            "",
            "sheet.fair.high.says",
            Origin.FAIR_INTERVAL,
            Format.HUNDREDTHS,
            FairLine::high),
        Column.figure(
            "down",
            "sheet.fair.down",
            "",
            "sheet.fair.down.says",
            Origin.CHART,
            Format.HUNDREDTHS,
            FairLine::down),
        Column.figure(
            "up",
            "sheet.fair.up",
            "",
            "sheet.fair.up.says",
            Origin.CHART,
            Format.HUNDREDTHS,
            FairLine::up),
        Column.figure(
            "raw",
            "sheet.fair.raw",
            "",
            "sheet.fair.raw.says",
            Origin.MEAN,
            Format.HUNDREDTHS,
            line -> line.row().raw() == null ? null : line.row().raw().mean()),
        Column.whole(
            "set-aside",
            "sheet.fair.set-aside",
            "sheet.fair.set-aside.says",
            Origin.COUNT,
            line -> line.of().setAside()));
  }

  private static String label(Choices choices, FairLine line) {
    return new SettingLabel(line.of().factors(), choices).of(line.row().levels());
  }

  /** The sign or the word of an outcome's unit. */
  static String unit(Words words, Outcome outcome) {
    return switch (outcome) {
      case GRADE -> words.say("sheet.fair.grades");
      case TIME -> "min";
      case SEAM_SHARE, SEAM_STRETCH, EDGE_CHANGE, HELD -> "%";
    };
  }
}
