package walebook.desk.common;

import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/** Scrolls to a control; the Tab key does so by itself, a focus that is set does not. */
public final class IntoView {
  private IntoView() {}

  /** Gives a control the focus as soon as it is in the window; before, it cannot take it. */
  public static void onceShown(Node control) {
    if (control.getScene() != null) {
      Platform.runLater(() -> focus(control));
      return;
    }
    control
        .sceneProperty()
        .addListener(
            new ChangeListener<>() {
              @Override
              public void changed(
                  ObservableValue<? extends Scene> from, @Nullable Scene old, @Nullable Scene now) {
                if (now != null) {
                  control.sceneProperty().removeListener(this);
                  Platform.runLater(() -> focus(control));
                }
              }
            });
  }

  /** Gives a control the focus and scrolls to it. */
  public static void focus(Node control) {
    control.requestFocus();
    show(control);
  }

  /** Scrolls to something that has just come, wherever the focus is. */
  public static void show(Node control) {
    scrollTo(control, (at, seen) -> at.getMinY() - seen / 3);
  }

  /** Scrolls so far that all of something is seen, or its beginning where it is too high. */
  public static void showWhole(Node control) {
    scrollTo(control, (at, seen) -> Math.min(at.getMinY(), at.getMaxY() - seen));
  }

  /** Changes something and scrolls so that a control stays where it lies in the window. */
  public static void keep(Node control, Runnable change) {
    double before = control.localToScene(0, 0).getY();
    change.run();
    layOut(control);
    for (Node up = control.getParent(); up != null; up = up.getParent()) {
      if (up instanceof ScrollPane scroll && scroll.getContent() instanceof Region content) {
        double moved = control.localToScene(0, 0).getY() - before;
        double room = content.getHeight() - scroll.getViewportBounds().getHeight();
        if (room > 0) {
          scroll.setVvalue(Math.max(0, Math.min(1, scroll.getVvalue() + moved / room)));
          layOut(control);
        }
      }
    }
  }

  /** Where the top of what is seen is to lie. */
  @FunctionalInterface
  private interface Above {
    double of(Bounds at, double seen);
  }

  private static void scrollTo(Node control, Above wanted) {
    // What was shown or hidden just now has to lie where it will before it can be scrolled to.
    layOut(control);
    for (Node up = control.getParent(); up != null; up = up.getParent()) {
      if (up instanceof ScrollPane scroll && scroll.getContent() instanceof Region content) {
        Bounds at = content.sceneToLocal(control.localToScene(control.getBoundsInLocal()));
        double seen = scroll.getViewportBounds().getHeight();
        double room = content.getHeight() - seen;
        if (room > 0) {
          double above = wanted.of(at, seen);
          scroll.setVvalue(Math.max(0, Math.min(1, above / room)));
        }
      }
    }
  }

  private static void layOut(Node control) {
    if (control.getScene() != null) {
      control.getScene().getRoot().applyCss();
      control.getScene().getRoot().layout();
    }
  }
}
