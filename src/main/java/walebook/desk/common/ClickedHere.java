package walebook.desk.common;

import javafx.scene.Node;
import javafx.scene.input.MouseEvent;

/**
 * Keeps the second click of a double click from what the first one brought up: whoever clicks twice
 * on a row means the row both times, and not what has come to lie under the pointer since.
 */
public final class ClickedHere {
  private boolean begunHere;
  private boolean dropping;

  private ClickedHere() {}

  /** Watches a node whose content is put in place of other content. */
  public static ClickedHere watch(Node over) {
    ClickedHere made = new ClickedHere();
    over.addEventFilter(MouseEvent.MOUSE_PRESSED, made::pressed);
    over.addEventFilter(MouseEvent.MOUSE_RELEASED, made::followed);
    over.addEventFilter(MouseEvent.MOUSE_CLICKED, made::followed);
    return made;
  }

  /** Says that other content stands there from now on. */
  public void isOther() {
    begunHere = false;
  }

  private void pressed(MouseEvent event) {
    begunHere |= event.getClickCount() <= 1;
    dropping = !begunHere;
    followed(event);
  }

  private void followed(MouseEvent event) {
    if (dropping) {
      event.consume();
    }
  }
}
