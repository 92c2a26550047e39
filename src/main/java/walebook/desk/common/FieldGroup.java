package walebook.desk.common;

import javafx.scene.Node;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A titled card of fields that stand beside each other while there is room. */
public final class FieldGroup extends VBox {
  private final FlowPane row = new FlowPane();

  public FieldGroup(String title, Node... fields) {
    getStyleClass().addAll("card", "field-group");
    row.getStyleClass().add("field-row");
    row.setPrefWrapLength(200);
    getChildren().setAll(Texts.section(title), row);
    for (Node field : fields) {
      add(field, 11);
    }
  }

  /**
   * Adds a field.
   *
   * @param ems its width in heights of text
   */
  public FieldGroup add(Node field, double ems) {
    if (field instanceof Region region) {
      region.setStyle("-fx-pref-width: " + ems + "em; -fx-min-width: 8em;");
    }
    row.getChildren().add(field);
    return this;
  }

  /** Adds something that takes the whole width below the fields. */
  public FieldGroup below(Node node) {
    getChildren().add(node);
    return this;
  }
}
