package walebook.desk.shell;

import java.util.Objects;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.input.KeyCombination;

/**
 * A place the window can show.
 *
 * @param key its stable name
 * @param title as people read it
 * @param shortcut the keys that lead there
 * @param view builds it, once, when it is first shown
 */
public record PlaceEntry(
    String key, String title, KeyCombination shortcut, Supplier<? extends Node> view) {
  public PlaceEntry {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(shortcut, "shortcut");
    Objects.requireNonNull(view, "view");
  }
}
