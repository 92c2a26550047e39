package walebook.desk.pieces;

import java.util.List;
import java.util.Locale;
import javafx.beans.property.StringProperty;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import walebook.desk.common.NextField;

/**
 * A few choices side by side, none or one of them pressed. The first sign of a choice presses it
 * and moves on, as in the cards; Enter moves on without a choice, as from any other field.
 */
final class ToggleRow extends FlowPane {
  private static final double WIDE = 2000;

  private final ToggleGroup group = new ToggleGroup();
  private final StringProperty text;

  ToggleRow(String label, Iterable<Choice> choices, StringProperty text, String... styles) {
    this.text = text;
    // Wide enough never to wrap before its parent makes it.
    setPrefWrapLength(WIDE);
    getStyleClass().add("toggle-row");
    getStyleClass().addAll(styles);
    choices.forEach(each -> getChildren().add(button(label, each)));
    addEventFilter(KeyEvent.KEY_PRESSED, this::entered);
    addEventFilter(KeyEvent.KEY_TYPED, this::typed);
    text.addListener((from, old, now) -> show(now));
    show(text.get());
  }

  private ToggleButton button(String label, Choice choice) {
    ToggleButton button = new ToggleButton(choice.name());
    button.setToggleGroup(group);
    button.setUserData(choice.key());
    button.setWrapText(true);
    button.setAccessibleText(label + ": " + choice.name());
    button.setOnAction(
        pressed -> {
          text.set(button.isSelected() ? choice.key() : "");
          if (button.isSelected()) {
            onward();
          }
        });
    return button;
  }

  private void entered(KeyEvent event) {
    if (event.getCode() == KeyCode.ENTER && !event.isControlDown() && !getChildren().isEmpty()) {
      event.consume();
      if (event.isShiftDown()) {
        NextField.before(getChildren().get(0));
      } else {
        onward();
      }
    }
  }

  private void typed(KeyEvent event) {
    String sign = event.getCharacter().toLowerCase(Locale.ROOT);
    if (sign.isBlank() || event.isControlDown() || event.isAltDown() || event.isMetaDown()) {
      return;
    }
    List<String> begin =
        group.getToggles().stream()
            .map(each -> String.valueOf(each.getUserData()))
            .filter(key -> key.startsWith(sign))
            .toList();
    if (begin.size() == 1) {
      event.consume();
      text.set(begin.get(0));
      onward();
    }
  }

  /** What comes next is typed: the length there, or whatever follows. */
  private void onward() {
    NextField.after(getChildren().get(getChildren().size() - 1));
  }

  private void show(String key) {
    group
        .getToggles()
        .forEach(each -> each.setSelected(!key.isEmpty() && key.equals(each.getUserData())));
  }
}
