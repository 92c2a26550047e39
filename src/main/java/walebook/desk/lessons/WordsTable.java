package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import walebook.desk.common.Texts;
import walebook.lesson.Block;
import walebook.lesson.Run;

/**
 * A table of a lesson's text. The toolkit takes the same from each column until it fits, and so
 * breaks a short column letter by letter; here none is narrower than its longest word.
 */
final class WordsTable extends GridPane {
  private static final double GAP = 16;
  private static final double SMALLEST = 0.5;
  private static final double ALIKE = 0.01;

  private final List<Label> cells = new ArrayList<>();
  private double letters = 1;

  WordsTable(Block.Table table) {
    setHgap(GAP);
    setVgap(6);
    // Its words would hold the place open.
    setMinWidth(0);
    row(table.header(), 0, "strong");
    for (int row = 0; row < table.rows().size(); row++) {
      row(table.rows().get(row), row + 1);
    }
    widthProperty().addListener((from, old, now) -> fit());
  }

  private void row(List<List<Run>> runs, int row, String... styles) {
    for (int column = 0; column < runs.size(); column++) {
      Label cell = Texts.text(Run.plain(runs.get(column)), styles);
      cell.fontProperty().addListener((from, old, now) -> fit());
      cells.add(cell);
      add(cell, column, row);
      if (column >= getColumnConstraints().size()) {
        getColumnConstraints().add(new ColumnConstraints());
      }
    }
  }

  /** Every column as wide as its longest word; where that is too much, in smaller letters. */
  private void fit() {
    List<ColumnConstraints> columns = getColumnConstraints();
    List<Double> needed = new ArrayList<>();
    for (int column = 0; column < columns.size(); column++) {
      needed.add(longestWord(column) / letters);
    }
    double all = needed.stream().mapToDouble(Double::doubleValue).sum();
    double room = getWidth() - GAP * (columns.size() - 1) - columns.size();
    double part = room <= 0 ? 1 : Math.max(SMALLEST, Math.min(1, room / all));
    for (int column = 0; column < columns.size(); column++) {
      columns.get(column).setMinWidth(Math.ceil(needed.get(column) * part));
    }
    if (Math.abs(part - letters) > ALIKE) {
      letters = part;
      setStyle("-fx-font-size: " + part + "em;");
    }
  }

  private double longestWord(int column) {
    return cells.stream()
        .filter(each -> getColumnIndex(each) == column)
        .flatMap(
            each ->
                List.of(each.getText().split("\\s+")).stream()
                    .map(word -> wide(word, each.getFont())))
        .max(Comparator.naturalOrder())
        .orElse(0.0);
  }

  private static double wide(String word, Font font) {
    Text measured = new Text(word);
    measured.setFont(font);
    return Math.ceil(measured.getLayoutBounds().getWidth()) + 1;
  }
}
