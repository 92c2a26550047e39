package walebook.desk.common;

import java.util.List;
import java.util.function.Function;
import javafx.collections.FXCollections;
import javafx.scene.control.ComboBox;
import walebook.words.Words;

/** A field for one of several keys that shows the problem of its form's field. */
public final class PickedField extends FieldBox {

  /**
   * A field of a form.
   *
   * @param keys to choose from; an empty one stands for no answer
   * @param name how a key reads
   */
  public PickedField(
      Words words,
      String label,
      List<String> keys,
      Function<String, String> name,
      FormFields.Field of) {
    this(words, label, new ComboBox<>(FXCollections.observableArrayList(keys)), name, of);
  }

  private PickedField(
      Words words,
      String label,
      ComboBox<String> box,
      Function<String, String> name,
      FormFields.Field of) {
    super(words, label, box);
    box.setConverter(new KeyWords(name::apply));
    box.valueProperty().bindBidirectional(of.text());
    NextField.onEnter(box, () -> !box.isShowing());
    of.problem().addListener((from, old, now) -> showProblem(now));
    showProblem(of.problem().get());
  }
}
