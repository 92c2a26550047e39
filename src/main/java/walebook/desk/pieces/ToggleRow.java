package walebook.desk.pieces;

import javafx.beans.property.StringProperty;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import walebook.desk.common.NextField;

/** A few choices side by side, none or one of them pressed; Enter presses one and moves on. */
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
            // What comes next is typed: the length there, or whatever follows.
            NextField.after(getChildren().get(getChildren().size() - 1));
          }
        });
    NextField.onEnter(
        button,
        () -> {
          text.set(choice.key());
          return true;
        });
    return button;
  }

  private void show(String key) {
    group
        .getToggles()
        .forEach(each -> each.setSelected(!key.isEmpty() && key.equals(each.getUserData())));
  }
}
