package walebook.sheet;

import java.util.List;

/** The columns of the washes: a row is one wash of a cloth along one grain. */
final class WashColumns {
  private WashColumns() {}

  static List<Column<WashLine>> of(Choices choices) {
    return List.of(
        Column.text(
            "cloth",
            "sheet.washes.cloth",
            "sheet.washes.cloth.says",
            Origin.ROOM,
            Format.TEXT,
            line -> line.cloth().name()),
        Column.words(
            "grain",
            "sheet.washes.grain",
            "sheet.washes.grain.says",
            Origin.TYPED,
            line -> choices.grain(line.wash().grain())),
        Column.of(
            "washed-on",
            "sheet.washes.washed-on",
            "",
            "sheet.washes.washed-on.says",
            Origin.TYPED,
            Format.DAY,
            line -> Value.of(line.wash().washedOn())),
        Column.figure(
            "before",
            "sheet.washes.before",
            "mm",
            "sheet.washes.before.says",
            Origin.TYPED,
            Format.TENTHS,
            line -> line.wash().beforeMm()),
        Column.figure(
            "after",
            "sheet.washes.after",
            "mm",
            "sheet.washes.after.says",
            Origin.TYPED,
            Format.TENTHS,
            line -> line.wash().afterMm()),
        Column.figure(
            "change",
            "sheet.washes.change",
            "%",
            "sheet.washes.change.says",
            Origin.WASH,
            Format.TENTHS,
            line -> line.wash().changePercent()),
        Column.text(
            "wash",
            "sheet.washes.wash",
            "sheet.washes.wash.says",
            Origin.REMARK,
            Format.LONG_TEXT,
            line -> line.wash().wash()));
  }
}
