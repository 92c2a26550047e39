package walebook.desk.common;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.function.Supplier;
import javafx.animation.AnimationTimer;
import javafx.scene.Node;
import javafx.scene.layout.Pane;

/**
 * Puts things into a pane one a frame, the first at once: each is made, dressed and laid out in a
 * frame of its own, so that a long page never holds the window up. Another page puts an end to the
 * one before.
 */
public final class InTurn {
  private final Pane into;
  private final Deque<Supplier<? extends Node>> waiting = new ArrayDeque<>();
  private final AnimationTimer timer =
      new AnimationTimer() {
        @Override
        public void handle(long now) {
          next();
        }
      };

  public InTurn(Pane into) {
    this.into = into;
  }

  /** Shows these in the place of what stands there. */
  public void show(List<? extends Supplier<? extends Node>> all) {
    stop();
    into.getChildren().clear();
    waiting.addAll(all);
    next();
    if (!waiting.isEmpty()) {
      timer.start();
    }
  }

  /** Drops what is not shown yet. */
  public void stop() {
    timer.stop();
    waiting.clear();
  }

  private void next() {
    Supplier<? extends Node> first = waiting.poll();
    if (first == null) {
      timer.stop();
    } else {
      into.getChildren().add(first.get());
    }
  }
}
