package walebook.desk.common;

import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.event.EventTarget;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.ScrollEvent;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;

/**
 * The mouse wheel on a page that holds tables which scroll themselves. A turn of the wheel that
 * began on the page stays the page's when a table comes under the pointer; a table that has nothing
 * more to show leaves the wheel to the page.
 */
final class PageWheel {
  /** Steps of the wheel that follow sooner than this are one turn. */
  private static final Duration ONE_TURN = Duration.millis(500);

  /** What is left to scroll and not worth a step, as a share of what is seen. */
  private static final double NOTHING = 0.01;

  private final ScrollPane page;
  private final PauseTransition pages = new PauseTransition(ONE_TURN);

  private PageWheel(ScrollPane page) {
    this.page = page;
  }

  /** Minds the wheel over a page. */
  static void on(ScrollPane page) {
    PageWheel wheel = new PageWheel(page);
    page.addEventFilter(ScrollEvent.SCROLL, wheel::turned);
  }

  private void turned(ScrollEvent event) {
    double down = -event.getDeltaY();
    if (down == 0) {
      return;
    }
    ScrollBar inner = inner(event.getTarget());
    if (inner == null) {
      pages.playFromStart();
      return;
    }
    boolean ofPage = pages.getStatus() == Animation.Status.RUNNING || !canGo(inner, down);
    if (ofPage && move(down)) {
      pages.playFromStart();
      event.consume();
    }
  }

  /** The upright bar of what scrolls under the pointer within the page; null where nothing does. */
  private @Nullable ScrollBar inner(EventTarget target) {
    Node at = target instanceof Node node ? node : null;
    while (at != null && at != page) {
      if (at instanceof Parent parent) {
        for (Node each : parent.getChildrenUnmodifiable()) {
          if (each instanceof ScrollBar bar
              && bar.getOrientation() == Orientation.VERTICAL
              && bar.isVisible()) {
            return bar;
          }
        }
      }
      at = at.getParent();
    }
    return null;
  }

  private static boolean canGo(ScrollBar bar, double down) {
    double range = bar.getMax() - bar.getMin();
    if (range <= 0 || bar.getVisibleAmount() <= 0) {
      return false;
    }
    double left = down > 0 ? bar.getMax() - bar.getValue() : bar.getValue() - bar.getMin();
    return left / range * (range / bar.getVisibleAmount() - 1) > NOTHING;
  }

  /** Scrolls the page so many px; false where it has nothing more itself. */
  private boolean move(double down) {
    Node content = page.getContent();
    double room = content.getLayoutBounds().getHeight() - page.getViewportBounds().getHeight();
    double was = page.getVvalue();
    double next = room <= 0 ? was : Math.max(0, Math.min(1, was + down / room));
    page.setVvalue(next);
    return next != was;
  }
}
