package walebook.desk.common;

import javafx.scene.control.TextField;
import walebook.words.Words;

/** A field for typed text that shows the problem of its form's field. */
public final class TypedField extends FieldBox {
  private final TextField field;

  /**
   * A field of a form.
   *
   * @param label with the unit where there is one
   * @param prompt an example shown while empty; may be empty
   */
  public TypedField(Words words, String label, String prompt, FormFields.Field of) {
    this(words, label, prompt, of, new TextField());
  }

  private TypedField(
      Words words, String label, String prompt, FormFields.Field of, TextField field) {
    super(words, label, field);
    this.field = field;
    field.setPromptText(prompt);
    field.textProperty().bindBidirectional(of.text());
    NextField.onEnter(field, () -> true);
    of.problem().addListener((from, old, now) -> showProblem(now));
    showProblem(of.problem().get());
  }

  /** The text field itself, for focus. */
  public TextField field() {
    return field;
  }
}
