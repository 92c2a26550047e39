package walebook.sheet;

import java.util.ArrayList;
import java.util.List;
import walebook.words.Words;

/**
 * What is said of one column on the sheet that explains them all.
 *
 * @param how how its values are worked out
 * @param source what that rests on
 */
record Explained(String sheet, String column, String what, String unit, String how, String source) {

  /** One line for each column of a sheet. */
  static <T> List<Explained> of(String sheet, List<Column<T>> columns, Words words) {
    List<Explained> lines = new ArrayList<>();
    for (Column<T> each : columns) {
      lines.add(
          new Explained(
              sheet,
              words.say(each.header()),
              words.say(each.says()),
              each.unit(),
              words.say("sheet.how." + each.origin().key()),
              words.say("sheet.source." + each.origin().key())));
    }
    return lines;
  }

  /** The columns of the explaining sheet itself. */
  static List<Column<Explained>> columns() {
    return List.of(
        Column.words(
            "sheet",
            "sheet.columns.sheet",
            "sheet.columns.sheet.says",
            Origin.EXPLAINED,
            Explained::sheet),
        Column.text(
            "column",
            "sheet.columns.column",
            "sheet.columns.column.says",
            Origin.EXPLAINED,
            Format.TEXT,
            Explained::column),
        Column.text(
            "what",
            "sheet.columns.what",
            "sheet.columns.what.says",
            Origin.EXPLAINED,
            Format.LONG_TEXT,
            Explained::what),
        Column.words(
            "unit",
            "sheet.columns.unit",
            "sheet.columns.unit.says",
            Origin.EXPLAINED,
            Explained::unit),
        Column.text(
            "how",
            "sheet.columns.how",
            "sheet.columns.how.says",
            Origin.EXPLAINED,
            Format.LONG_TEXT,
            Explained::how),
        Column.text(
            "source",
            "sheet.columns.source",
            "sheet.columns.source.says",
            Origin.EXPLAINED,
            Format.LONG_TEXT,
            Explained::source));
  }
}
