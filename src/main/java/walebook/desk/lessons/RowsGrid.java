package walebook.desk.lessons;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** A table of fields, one row longer than what is filled in, so that there is always one to add. */
final class RowsGrid extends VBox {
  private static final double BAR = 16;

  private final Words words;
  private final WritePackViewModel model;
  private final FieldControls controls;
  private final String title;
  private final GridPane grid = new GridPane();
  private final List<Column> columns;
  private final Function<Integer, String> row;
  private final int most;
  private int shown;

  /**
   * A column.
   *
   * @param path of the field behind the row's
   * @param keys to choose from; none for typed text
   */
  record Column(
      String path, String title, double ems, List<String> keys, Function<String, String> says) {
    Column {
      keys = List.copyOf(keys);
    }

    static Column typed(String path, String title, double ems) {
      return new Column(path, title, ems, List.of(), key -> key);
    }
  }

  /**
   * A table.
   *
   * @param controls told which control stands for which field
   * @param row path of a row, by its number from 0
   */
  RowsGrid(
      Words words,
      String title,
      WritePackViewModel model,
      FieldControls controls,
      List<Column> columns,
      Function<Integer, String> row,
      int most) {
    super(8);
    this.words = words;
    this.model = model;
    this.controls = controls;
    this.title = title;
    this.columns = List.copyOf(columns);
    this.row = row;
    this.most = most;
    getStyleClass().add("card");
    grid.setHgap(8);
    grid.setVgap(8);
    for (int i = 0; i < columns.size(); i++) {
      grid.add(Texts.caption(columns.get(i).title()), i, 0);
    }
    // In large letters a row is wider than the window.
    ScrollPane wide = new ScrollPane(grid);
    wide.setFitToWidth(true);
    wide.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    // As high as its rows now are, with room for the bar; it never scrolls up and down.
    wide.minHeightProperty().bind(grid.heightProperty().add(BAR));
    getChildren().setAll(Texts.section(title), wide);
    int filled = 0;
    for (int i = 0; i < most; i++) {
      filled = isFilled(i) ? i + 1 : filled;
    }
    while (shown < Math.min(most, filled + 1)) {
      add();
    }
  }

  private boolean isFilled(int number) {
    return columns.stream()
        .anyMatch(each -> !model.text(row.apply(number) + each.path()).isEmpty());
  }

  private void add() {
    int number = shown++;
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      String path = row.apply(number) + column.path();
      String name = words.say("desk.lessons.write.cell", column.title(), number + 1);
      CellField cell =
          column.keys().isEmpty()
              ? CellField.typed(words, name, model.field(path))
              : CellField.chosen(words, name, column.keys(), column.says(), model.field(path));
      cell.setStyle(
          String.format(
              Locale.ROOT,
              "-fx-pref-width: %.1fem; -fx-min-width: %.1fem;",
              column.ems(),
              column.keys().isEmpty()
                  ? Math.min(column.ems(), column.ems() < 10 ? 3.5 : 8)
                  : column.ems()));
      controls.put(path, cell.control(), title + ", " + name);
      grid.add(cell, i, number + 1);
      model.field(path).text().addListener((from, old, now) -> filled(number));
    }
  }

  private void filled(int number) {
    if (number == shown - 1 && shown < most && isFilled(number)) {
      add();
    }
  }
}
