package walebook.desk.common;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import walebook.words.Words;

/** Says why the tutor's part can only be read now, and opens it; there while it is locked. */
public final class TutorOnly extends VBox {
  private final Button tutor;

  /**
   * The sentence about marks, comments and criteria with its button.
   *
   * @param tutorIsHere run when the tutor says so
   */
  public TutorOnly(Words words, ObservableValue<Boolean> locked, Runnable tutorIsHere) {
    this(words, words.say("desk.common.tutor-only.says"), locked, tutorIsHere);
  }

  /** The same with a sentence of its own. */
  public TutorOnly(
      Words words, String says, ObservableValue<Boolean> locked, Runnable tutorIsHere) {
    super(8);
    tutor = new Button(words.say("desk.common.tutor-only.i-am"));
    tutor.setOnAction(pressed -> tutorIsHere.run());
    getChildren().setAll(Texts.text(says), tutor);
    visibleProperty().bind(locked);
    managedProperty().bind(visibleProperty());
  }

  /** The button, for the hands. */
  public Button button() {
    return tutor;
  }
}
