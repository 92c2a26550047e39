package walebook.desk.common;

import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;

/**
 * A row of buttons of which one is down; on to a second row where one has no room.
 *
 * @param <T> what they stand for
 */
public final class Segments<T> extends FlowPane {

  private static final double GAP = 4;

  /**
   * Buttons over a property.
   *
   * @param chosen followed both ways
   * @param name what stands on a button
   */
  public Segments(List<T> all, ObjectProperty<T> chosen, Function<T, String> name) {
    getStyleClass().add("segments");
    setVgap(GAP);
    ToggleGroup group = new ToggleGroup();
    for (T each : all) {
      ToggleButton button = new Segment(name.apply(each));
      // What people typed may have a low line, which is no sign for a key.
      button.setMnemonicParsing(false);
      button.setMinWidth(Region.USE_PREF_SIZE);
      button.setToggleGroup(group);
      button.setSelected(each.equals(chosen.get()));
      button.setOnAction(
          pressed -> {
            chosen.set(each);
            button.setSelected(true);
          });
      // Arrow keys move the choice without pressing.
      button
          .selectedProperty()
          .addListener(
              (from, old, down) -> {
                if (down) {
                  chosen.set(each);
                }
              });
      chosen.addListener((from, old, now) -> button.setSelected(each.equals(now)));
      getChildren().add(button);
    }
  }

  /** One line where there is room, more where letters are large. */
  @Override
  protected double computePrefWidth(double height) {
    double sides = snappedLeftInset() + snappedRightInset();
    return sides
        + getManagedChildren().stream().mapToDouble(each -> snapSizeX(each.prefWidth(-1))).sum();
  }

  /** As wide as when it is chosen: bold letters are wider, and the others would move. */
  private static final class Segment extends ToggleButton {
    private final Text bold = new Text();

    Segment(String says) {
      super(says);
    }

    @Override
    protected double computePrefWidth(double height) {
      bold.setText(getText());
      bold.setFont(Font.font(getFont().getFamily(), FontWeight.BOLD, getFont().getSize()));
      double sides = snappedLeftInset() + snappedRightInset();
      double chosen = Math.ceil(bold.getLayoutBounds().getWidth()) + sides;
      return Math.max(super.computePrefWidth(height), chosen);
    }
  }
}
