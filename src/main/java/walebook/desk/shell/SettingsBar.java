package walebook.desk.shell;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.words.Words;

/**
 * Light or dark, and how large: the two settings everyone needs at hand. It stands below the places
 * and never scrolls away, or letters that were made too large could not be made smaller again.
 */
final class SettingsBar extends VBox {
  private static final KeyCombination SMALLER =
      new KeyCodeCombination(KeyCode.MINUS, KeyCombination.SHORTCUT_DOWN);
  private static final KeyCombination SMALLER_TOO =
      new KeyCodeCombination(KeyCode.SUBTRACT, KeyCombination.SHORTCUT_DOWN);
  private static final KeyCombination THEME =
      new KeyCodeCombination(KeyCode.D, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);

  private final Look look;

  SettingsBar(Words words, Look look) {
    this.look = look;
    getStyleClass().add("shell-settings");
    Button smaller = new Button(words.say("desk.shell.smaller"));
    smaller.setId("text-smaller");
    smaller.setAccessibleText(words.say("desk.shell.smaller-says"));
    smaller.setTooltip(new Tooltip(SMALLER.getDisplayText()));
    smaller.setOnAction(pressed -> smaller());
    Button larger = new Button(words.say("desk.shell.larger"));
    larger.setId("text-larger");
    larger.setAccessibleText(words.say("desk.shell.larger-says"));
    larger.setTooltip(new Tooltip(words.say("desk.shell.larger-keys")));
    larger.setOnAction(pressed -> larger());
    Label size = new Label();
    size.getStyleClass().add("caption");
    size.textProperty()
        .bind(look.textSizeProperty().map(TextSize::percent).map(percent -> percent + " %"));
    HBox sizes = new HBox(smaller, size, larger);
    sizes.setAlignment(Pos.CENTER_LEFT);
    Button theme = new Button();
    theme.setId("other-theme");
    theme.setTooltip(new Tooltip(THEME.getDisplayText()));
    theme
        .textProperty()
        .bind(
            look.themeProperty()
                .map(
                    now ->
                        words.say(
                            now == Theme.LIGHT ? "desk.shell.go-dark" : "desk.shell.go-light")));
    theme.setOnAction(pressed -> otherTheme());
    getChildren().setAll(theme, sizes);
  }

  /** Takes a key that is meant for it, from anywhere in the window. */
  boolean takes(KeyEvent event) {
    if (SMALLER.match(event) || SMALLER_TOO.match(event)) {
      smaller();
    } else if (isLarger(event)) {
      larger();
    } else if (THEME.match(event)) {
      otherTheme();
    } else {
      return false;
    }
    return true;
  }

  /** Plus stands on another key on every keyboard, on some only with Shift. */
  private static boolean isLarger(KeyEvent event) {
    KeyCode code = event.getCode();
    boolean plus = code == KeyCode.PLUS || code == KeyCode.ADD || code == KeyCode.EQUALS;
    return plus && event.isShortcutDown() && !event.isAltDown();
  }

  private void smaller() {
    look.textSizeProperty().set(look.textSize().smaller());
  }

  private void larger() {
    look.textSizeProperty().set(look.textSize().larger());
  }

  private void otherTheme() {
    look.themeProperty().set(look.theme().other());
  }
}
