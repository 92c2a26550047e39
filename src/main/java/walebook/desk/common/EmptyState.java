package walebook.desk.common;

import javafx.scene.control.Button;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What stands where nothing is yet: one sentence and one button that begins it. */
public final class EmptyState extends VBox {
  public EmptyState(String says, String button, Runnable begin) {
    Button start = new Button(button);
    start.getStyleClass().add("primary");
    start.setOnAction(pressed -> begin.run());
    getStyleClass().add("empty-state");
    setVgrow(this, Priority.ALWAYS);
    getChildren().setAll(Texts.text(says), start);
  }
}
