package walebook.desk.common;

import javafx.scene.control.TextField;
import walebook.words.Words;

/** A field for a number; its label carries the unit, Enter moves on, mistakes show below. */
public final class NumberField extends FieldBox {
  private final TextField field;

  /**
   * A field on an entry.
   *
   * @param label with the unit, such as {@code marks before, mm}
   * @param prompt an example shown while empty; may be empty
   */
  public NumberField(Words words, String label, String prompt, NumberEntry entry) {
    this(words, label, prompt, entry, new TextField());
  }

  private NumberField(
      Words words, String label, String prompt, NumberEntry entry, TextField field) {
    super(words, label, field);
    this.field = field;
    field.setPromptText(prompt);
    field.textProperty().bindBidirectional(entry.textProperty());
    field
        .focusedProperty()
        .addListener(
            (from, was, now) -> {
              if (!now) {
                entry.settle();
              }
            });
    NextField.onEnter(
        field,
        () -> {
          entry.settle();
          return true;
        });
    entry.readingProperty().addListener((from, old, now) -> show(now));
    show(entry.readingProperty().get());
  }

  /** The text field itself, for focus and prompts. */
  public TextField field() {
    return field;
  }

  private void show(NumberEntry.Reading reading) {
    showProblem(reading.problem());
    showUnderstood(reading.understood());
  }
}
