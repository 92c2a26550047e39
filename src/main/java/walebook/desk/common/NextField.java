package walebook.desk.common;

import java.util.function.BooleanSupplier;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Makes Enter move on to the next field, as the Tab key does. */
public final class NextField {
  private NextField() {}

  /** {@code leaves} runs first and says whether the field may be left. */
  public static void onEnter(Node node, BooleanSupplier leaves) {
    node.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ENTER && !event.isControlDown() && leaves.getAsBoolean()) {
            event.consume();
            tab(node, event.isShiftDown());
          }
        });
  }

  /** Makes the Tab key leave a field of several lines, where it would be typed. */
  public static void onTab(TextArea area) {
    area.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.TAB && !event.isControlDown() && !event.isAltDown()) {
            event.consume();
            Event.fireEvent(
                area,
                new KeyEvent(
                    KeyEvent.KEY_PRESSED,
                    "\t",
                    "\t",
                    KeyCode.TAB,
                    event.isShiftDown(),
                    true,
                    false,
                    false));
          }
        });
  }

  /** Moves on to what follows a node. */
  public static void after(Node node) {
    tab(node, false);
  }

  /** Moves back to what stands before a node. */
  public static void before(Node node) {
    tab(node, true);
  }

  private static void tab(Node node, boolean back) {
    Event.fireEvent(
        node,
        new KeyEvent(KeyEvent.KEY_PRESSED, "\t", "\t", KeyCode.TAB, back, false, false, false));
  }
}
