package walebook.desk.common;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** A part that folds away under its own title; open or shut is kept by the property. */
public final class Fold extends VBox {
  private final BooleanProperty open = new SimpleBooleanProperty(this, "open", false);

  public Fold(String title, Node content) {
    Button button = new Button();
    button.getStyleClass().setAll("button", "fold-button");
    button.setOnAction(pressed -> open.set(!open.get()));
    button.setAccessibleText(title);
    button.textProperty().bind(open.map(is -> (is ? "▾ " : "▸ ") + title));
    content.visibleProperty().bind(open);
    content.managedProperty().bind(open);
    getChildren().setAll(button, content);
  }

  public BooleanProperty openProperty() {
    return open;
  }
}
