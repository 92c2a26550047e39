package walebook.desk;

import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.util.Duration;

/** Lets a window draw its frames while a trial goes on: what comes one a frame has come then. */
public final class Pulses {
  private static final Duration SOME = Duration.millis(800);

  private Pulses() {}

  /** Waits for some frames, on the window's thread. */
  public static void some() {
    Object key = new Object();
    PauseTransition pause = new PauseTransition(SOME);
    pause.setOnFinished(done -> Platform.exitNestedEventLoop(key, null));
    pause.play();
    Platform.enterNestedEventLoop(key);
  }
}
