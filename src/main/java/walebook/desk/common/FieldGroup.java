package walebook.desk.common;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A titled card of fields that stand beside each other while there is room. */
public final class FieldGroup extends VBox {
  /** What may be wider than a window of large letters, heights of text. */
  private static final double WIDE_EMS = 16;

  private final FlowPane row = new FlowPane();
  private final Label title;

  public FieldGroup(String title, Node... fields) {
    getStyleClass().addAll("card", "field-group");
    row.getStyleClass().add("field-row");
    row.setPrefWrapLength(200);
    // The widest field would hold the whole place open, and what is at its right be out of reach.
    row.setMinWidth(0);
    this.title = Texts.section(title);
    getChildren().setAll(this.title, row);
    for (Node field : fields) {
      add(field, 11);
    }
  }

  /** The title follows what is chosen in the group. */
  public FieldGroup titled(ObservableValue<String> title) {
    this.title.textProperty().bind(title);
    return this;
  }

  /**
   * Adds a field.
   *
   * @param ems its width in heights of text
   */
  public FieldGroup add(Node field, double ems) {
    if (field instanceof Region region) {
      region.setStyle("-fx-pref-width: " + ems + "em; -fx-min-width: 8em;");
      if (ems >= WIDE_EMS) {
        region
            .maxWidthProperty()
            .bind(row.widthProperty().map(now -> now.doubleValue() > 0 ? now : Double.MAX_VALUE));
      }
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
