package walebook.desk.common;

import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** A part that folds away under its own title; open or shut is kept by the property. */
public final class Fold extends VBox {
  private final BooleanProperty open = new SimpleBooleanProperty(this, "open", false);

  public Fold(String title, Node content) {
    this(new ReadOnlyStringWrapper(title), content);
  }

  /** The same where the title changes. */
  public Fold(ObservableValue<String> title, Node content) {
    Button button = new Button();
    button.setMnemonicParsing(false);
    button.getStyleClass().setAll("button", "fold-button");
    button.setOnAction(pressed -> open.set(!open.get()));
    button.accessibleTextProperty().bind(title);
    button
        .textProperty()
        .bind(
            Bindings.createStringBinding(
                () -> (open.get() ? "▾ " : "▸ ") + title.getValue(), open, title));
    content.visibleProperty().bind(open);
    content.managedProperty().bind(open);
    getChildren().setAll(button, content);
  }

  public BooleanProperty openProperty() {
    return open;
  }
}
