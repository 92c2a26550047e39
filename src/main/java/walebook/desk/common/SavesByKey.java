package walebook.desk.common;

import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import org.jspecify.annotations.Nullable;

/** Ctrl+S saves a form, wherever in the window the focus is while the form is seen. */
public final class SavesByKey {
  private static final KeyCombination SAVE =
      new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN);

  private SavesByKey() {}

  /** Saves a form by the key while the focus is inside, and else through {@link #takes}. */
  public static void on(Node form, Runnable save) {
    form.getProperties().put(SavesByKey.class, save);
    form.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (SAVE.match(event)) {
            event.consume();
            save.run();
          }
        });
  }

  /**
   * Saves the form that is seen in a place while the focus is outside of that place.
   *
   * @return whether the key was meant for it
   */
  public static boolean takes(@Nullable Node place, KeyEvent event) {
    if (place == null || !SAVE.match(event) || isBelow(place, event)) {
      return false;
    }
    Runnable save = seen(place);
    if (save != null) {
      save.run();
    }
    return save != null;
  }

  private static boolean isBelow(Node place, KeyEvent event) {
    Node at = event.getTarget() instanceof Node target ? target : null;
    while (at != null && at != place) {
      at = at.getParent();
    }
    return at != null;
  }

  private static @Nullable Runnable seen(Node node) {
    if (!node.isVisible()) {
      return null;
    }
    if (node.getProperties().get(SavesByKey.class) instanceof Runnable save) {
      return save;
    }
    if (node instanceof Parent parent) {
      for (Node each : parent.getChildrenUnmodifiable()) {
        Runnable found = seen(each);
        if (found != null) {
          return found;
        }
      }
    }
    return null;
  }
}
