package walebook.desk.classroom;

import java.util.function.Consumer;
import java.util.function.ToIntFunction;
import javafx.collections.ObservableList;
import javafx.scene.layout.BorderPane;
import walebook.desk.common.ColumnTable;
import walebook.words.Words;

/** The table of settings: how many, held and gave apart, and what was measured on them. */
final class SettingTable extends BorderPane {
  private static final int ROWS = 9;

  private final ColumnTable<ComparedRow> table = new ColumnTable<>();

  SettingTable(Words words, ObservableList<ComparedRow> rows) {
    table.setItems(rows);
    table.setAccessibleText(words.say("desk.class.table.says"));
    table
        .words(words.say("desk.class.col.setting"), 23, ComparedRow::setting)
        .setCellFactory(column -> new MiddleCell<>());
    count(words.say("desk.class.col.pieces"), 4.6, row -> row.found().pieces());
    count(words.say("desk.class.col.students"), 6.2, row -> row.found().students());
    table.drawings(
        words, words.say("desk.class.col.held"), 15, ComparedRow::heldShare, ComparedRow::bar);
    count(words.say("desk.class.col.gave"), 4, row -> row.found().gave());
    table.figures(
        words.say("desk.class.col.share"),
        11.5,
        row -> ComparedRow.order(row.found().shareOfGave()),
        row -> ComparedRow.spread(words, row.found().shareOfGave(), 0));
    table.figures(
        words.say("desk.class.col.stretch"),
        11.5,
        row -> ComparedRow.order(row.found().stretchOfGave()),
        row -> ComparedRow.spread(words, row.found().stretchOfGave(), 0));
    table.figures(
        words.say("desk.class.col.edge"),
        13,
        row -> ComparedRow.order(row.found().edgeChange()),
        row -> ComparedRow.spread(words, row.found().edgeChange(), 1));
    table.figures(
        words.say("desk.class.col.grade"),
        9,
        row -> ComparedRow.order(row.found().grade()),
        row -> ComparedRow.spread(words, row.found().grade(), 0));
    count(words.say("desk.class.col.faults"), 6, row -> row.found().withFault());
    table.asHighAs(ROWS);
    setCenter(table);
  }

  void opens(Consumer<ComparedRow> open) {
    table.opens(open);
  }

  private void count(String title, double ems, ToIntFunction<ComparedRow> number) {
    table.figures(
        title,
        ems,
        row -> (double) number.applyAsInt(row),
        row -> Integer.toString(number.applyAsInt(row)));
  }
}
