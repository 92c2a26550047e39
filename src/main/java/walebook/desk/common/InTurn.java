package walebook.desk.common;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import javafx.animation.AnimationTimer;

/**
 * Does the steps of showing something one a frame, the first at once: what each makes is dressed
 * and laid out in a frame of its own, so that a long page never holds the window up. After a frame
 * that took long one is left out: what it made is still being drawn. Several parts of a place share
 * one, lest two of them put their steps into the same frame.
 */
public final class InTurn {
  /** A frame that took longer than this is still being drawn while the next one begins. */
  private static final long LONG_NS = 24_000_000;

  private final Deque<Step> waiting = new ArrayDeque<>();
  private boolean notYetLaidOut;
  private long last = Long.MAX_VALUE;
  private boolean rested;
  private final AnimationTimer timer =
      new AnimationTimer() {
        @Override
        public void handle(long now) {
          frame(now);
        }
      };

  private record Step(Object of, Runnable act) {}

  /** Does these in the place of what is left of the same part's last ones. */
  public void run(Object part, List<? extends Runnable> steps) {
    stop(part);
    boolean atOnce = waiting.isEmpty() && !notYetLaidOut;
    steps.forEach(each -> waiting.add(new Step(part, each)));
    if (waiting.isEmpty()) {
      return;
    }
    timer.start();
    if (atOnce) {
      notYetLaidOut = true;
      next();
    }
  }

  /** Drops what a part has not done yet. */
  public void stop(Object part) {
    waiting.removeIf(each -> each.of() == part);
  }

  /** True when nothing waits and all that was done is laid out. */
  public boolean isAtRest() {
    return waiting.isEmpty() && !notYetLaidOut;
  }

  private void frame(long now) {
    boolean drawing = !rested && now - last > LONG_NS;
    last = now;
    rested = false;
    if (notYetLaidOut) {
      // Done between two frames: this one lays it out.
      notYetLaidOut = false;
    } else if (drawing) {
      rested = true;
    } else {
      next();
    }
    if (isAtRest()) {
      timer.stop();
      // Frames that nobody counted meanwhile are not long ones.
      last = Long.MAX_VALUE;
    }
  }

  private void next() {
    Step first = waiting.poll();
    if (first != null) {
      first.act().run();
    }
  }
}
