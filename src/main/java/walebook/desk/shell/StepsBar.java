package walebook.desk.shell;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.AccessibleAttribute;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import walebook.act.history.StepBack;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** What can be taken back and done again, at the foot of the places; its keys work anywhere. */
public final class StepsBar extends VBox {
  private static final KeyCombination UNDO =
      new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN);
  private static final KeyCombination REDO =
      new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
  private static final KeyCombination REDO_TOO =
      new KeyCodeCombination(KeyCode.Y, KeyCombination.SHORTCUT_DOWN);

  private final StepsViewModel model;

  public StepsBar(Words words, StepsViewModel model) {
    this.model = model;
    getStyleClass().add("shell-steps");
    Label says = Texts.caption("");
    says.setId("steps-say");
    says.textProperty().bind(model.saysProperty());
    says.visibleProperty().bind(model.saysProperty().isNotEmpty());
    says.managedProperty().bind(says.visibleProperty());
    says.textProperty()
        .addListener(
            (from, old, now) -> says.notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT));
    Button undo = button(words, "desk.shell.undo", model.undoProperty(), UNDO);
    undo.setId("undo-step");
    undo.setOnAction(pressed -> model.undo());
    Button redo = button(words, "desk.shell.redo", model.redoProperty(), REDO);
    redo.setId("redo-step");
    redo.setOnAction(pressed -> model.redo());
    getChildren().setAll(says, undo, redo);
  }

  private static Button button(
      Words words, String key, ReadOnlyObjectProperty<StepBack.Offer> offer, KeyCombination keys) {
    Button button = new Button();
    button.getStyleClass().add("quiet");
    button.setMnemonicParsing(false);
    button.setWrapText(true);
    button.setMaxWidth(Double.MAX_VALUE);
    button.textProperty().bind(offer.map(now -> words.say(key, now.says())).orElse(""));
    button.accessibleTextProperty().bind(button.textProperty());
    button.visibleProperty().bind(offer.isNotNull());
    button.managedProperty().bind(button.visibleProperty());
    button.setTooltip(new Tooltip(keys.getDisplayText()));
    return button;
  }

  /** Takes a key that is meant for it; a text field with something typed to take back keeps it. */
  boolean takes(KeyEvent event) {
    boolean undo = UNDO.match(event);
    boolean redo = REDO.match(event) || REDO_TOO.match(event);
    if (!undo && !redo) {
      return false;
    }
    if (event.getTarget() instanceof TextInputControl field
        && (undo ? field.isUndoable() && TypedHere.isIn(field) : field.isRedoable())) {
      return false;
    }
    if (undo) {
      model.undo();
    } else {
      model.redo();
    }
    return true;
  }
}
