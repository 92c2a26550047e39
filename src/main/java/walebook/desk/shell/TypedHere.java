package walebook.desk.shell;

import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.DragEvent;
import javafx.scene.input.InputEvent;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.jspecify.annotations.Nullable;

/**
 * Knows what was typed into a text field from what a form put there. The field's own taking back
 * does not: it would go on to empty what the program filled in.
 */
final class TypedHere {
  private static final Object FILLED = new Object();

  private boolean hands;

  private TypedHere() {}

  /** Watches all text fields below a node, each from when it is first gone to. */
  static void watch(Node root) {
    new TypedHere().follow(root);
  }

  private void follow(Node root) {
    root.addEventFilter(KeyEvent.ANY, this::hands);
    root.addEventFilter(MouseEvent.MOUSE_PRESSED, this::hands);
    root.addEventFilter(MouseEvent.MOUSE_RELEASED, this::hands);
    root.addEventFilter(DragEvent.DRAG_DROPPED, this::hands);
    root.sceneProperty().addListener((from, old, now) -> follow(now));
    follow(root.getScene());
  }

  private void follow(@Nullable Scene scene) {
    if (scene != null) {
      scene.focusOwnerProperty().addListener((from, old, now) -> remember(now));
      remember(scene.getFocusOwner());
    }
  }

  /** What comes of a key or the mouse comes at once; what a form fills in comes later. */
  private void hands(Event event) {
    if (event instanceof InputEvent && !hands) {
      hands = true;
      Platform.runLater(() -> hands = false);
    }
  }

  private void remember(@Nullable Node node) {
    if (node instanceof TextInputControl field && !field.getProperties().containsKey(FILLED)) {
      filled(field);
      field
          .textProperty()
          .addListener(
              (from, old, now) -> {
                if (!hands || !field.isFocused()) {
                  filled(field);
                }
              });
    }
  }

  private static void filled(TextInputControl field) {
    field.getProperties().put(FILLED, String.valueOf(field.getText()));
  }

  /** True when the field holds something else than what it was filled with. */
  static boolean isIn(TextInputControl field) {
    return !String.valueOf(field.getText()).equals(field.getProperties().get(FILLED));
  }
}
