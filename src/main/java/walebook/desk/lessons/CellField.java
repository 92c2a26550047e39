package walebook.desk.lessons;

import java.util.List;
import java.util.function.Function;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import walebook.desk.common.FieldBox;
import walebook.desk.common.FormFields;
import walebook.desk.common.KeyWords;
import walebook.desk.common.NextField;
import walebook.words.Words;

/** A field of a table: its name stands in the column's head, and is told to those who listen. */
final class CellField extends FieldBox {
  private CellField(Words words, String name, Region control, FormFields.Field of) {
    super(words, name, control);
    Node title = getChildren().get(0);
    title.setVisible(false);
    title.setManaged(false);
    of.problem().addListener((from, old, now) -> showProblem(now));
    showProblem(of.problem().get());
  }

  /** A cell for typed text. */
  static CellField typed(Words words, String name, FormFields.Field of) {
    TextField field = new TextField();
    field.textProperty().bindBidirectional(of.text());
    NextField.onEnter(field, () -> true);
    return new CellField(words, name, field, of);
  }

  /** A cell for one of several keys; an empty one stands for none. */
  static CellField chosen(
      Words words,
      String name,
      List<String> keys,
      Function<String, String> says,
      FormFields.Field of) {
    ComboBox<String> box = new ComboBox<>(FXCollections.observableArrayList(keys));
    box.setConverter(new KeyWords(key -> key.isEmpty() ? "" : says.apply(key)));
    box.valueProperty().bindBidirectional(of.text());
    NextField.onEnter(box, () -> !box.isShowing());
    return new CellField(words, name, box, of);
  }

  /** What takes the focus. */
  Node control() {
    return getChildren().get(1);
  }
}
