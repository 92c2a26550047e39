package walebook.desk.shell;

import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import walebook.desk.common.Texts;
import walebook.words.Words;

/**
 * The field for a piece's code, with what came of it below; a scanner types and ends with Enter.
 */
public final class FindField extends VBox {
  private static final KeyCombination KEYS =
      new KeyCodeCombination(KeyCode.F, KeyCombination.SHORTCUT_DOWN);

  private final TextField field = new TextField();

  public FindField(Words words, FindViewModel model) {
    getStyleClass().add("shell-find");
    String label = words.say("desk.shell.find", KEYS.getDisplayText());
    Label title = Texts.caption(label);
    title.setLabelFor(field);
    field.setId("find-piece");
    field.setPromptText(words.say("desk.shell.find-prompt"));
    field.setAccessibleText(label);
    // Its keys lead here; what loses the focus must not spill its typing into it.
    field.setFocusTraversable(false);
    field.textProperty().bindBidirectional(model.textProperty());
    Label says = Texts.text("", "field-problem");
    says.textProperty().bind(model.saysProperty());
    says.visibleProperty().bind(model.saysProperty().isNotEmpty());
    says.managedProperty().bind(says.visibleProperty());
    model
        .saysProperty()
        .addListener(
            (from, old, now) ->
                field.setAccessibleText(now.isEmpty() ? label : label + ". " + now));
    field.addEventFilter(
        KeyEvent.KEY_PRESSED,
        key -> {
          if (key.getCode() == KeyCode.ENTER) {
            key.consume();
            model.find();
            // What was scanned in vain makes way for the next scan.
            field.selectAll();
          } else if (key.getCode() == KeyCode.ESCAPE) {
            key.consume();
            model.textProperty().set("");
          }
        });
    getChildren().setAll(title, field, says);
  }

  /** Whether these keys lead here. */
  boolean isCalledBy(KeyEvent event) {
    return KEYS.match(event);
  }

  /** Forgets a code that led nowhere. */
  void forget() {
    if (!field.isFocused()) {
      field.clear();
    }
  }

  /** Puts the cursor in, ready to type over what stands there. */
  void call() {
    field.requestFocus();
    field.selectAll();
  }
}
