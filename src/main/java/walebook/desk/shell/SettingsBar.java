package walebook.desk.shell;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.words.Words;

/** Light or dark, and how large: the two settings everyone needs at hand. */
final class SettingsBar extends VBox {
  SettingsBar(Words words, Look look) {
    getStyleClass().add("shell-settings");
    Button smaller = new Button(words.say("desk.shell.smaller"));
    smaller.setAccessibleText(words.say("desk.shell.smaller-says"));
    smaller.setOnAction(pressed -> look.textSizeProperty().set(look.textSize().smaller()));
    Button larger = new Button(words.say("desk.shell.larger"));
    larger.setAccessibleText(words.say("desk.shell.larger-says"));
    larger.setOnAction(pressed -> look.textSizeProperty().set(look.textSize().larger()));
    Label size = new Label();
    size.getStyleClass().add("caption");
    size.textProperty()
        .bind(look.textSizeProperty().map(TextSize::percent).map(percent -> percent + " %"));
    HBox sizes = new HBox(smaller, size, larger);
    sizes.setAlignment(Pos.CENTER_LEFT);
    Button theme = new Button();
    theme
        .textProperty()
        .bind(
            look.themeProperty()
                .map(
                    now ->
                        words.say(
                            now == Theme.LIGHT ? "desk.shell.go-dark" : "desk.shell.go-light")));
    theme.setOnAction(pressed -> look.themeProperty().set(look.theme().other()));
    getChildren().setAll(theme, sizes);
  }
}
