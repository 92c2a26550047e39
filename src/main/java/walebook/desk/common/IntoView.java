package walebook.desk.common;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** Scrolls to a control; the Tab key does so by itself, a focus that is set does not. */
public final class IntoView {
  private IntoView() {}

  /** Gives a control the focus and scrolls to it. */
  public static void focus(Node control) {
    control.requestFocus();
    show(control);
  }

  /** Scrolls to something that has just come, wherever the focus is. */
  public static void show(Node control) {
    // What was shown or hidden just now has to lie where it will before it can be scrolled to.
    if (control.getScene() != null) {
      control.getScene().getRoot().applyCss();
      control.getScene().getRoot().layout();
    }
    for (Node up = control.getParent(); up != null; up = up.getParent()) {
      if (up instanceof ScrollPane scroll && scroll.getContent() instanceof Region content) {
        Bounds at = content.sceneToLocal(control.localToScene(control.getBoundsInLocal()));
        double room = content.getHeight() - scroll.getViewportBounds().getHeight();
        if (room > 0) {
          double above = at.getMinY() - scroll.getViewportBounds().getHeight() / 3;
          scroll.setVvalue(Math.max(0, Math.min(1, above / room)));
        }
      }
    }
  }
}
