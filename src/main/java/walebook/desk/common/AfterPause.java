package walebook.desk.common;

import javafx.animation.PauseTransition;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.util.Duration;

/** Does something a moment after a count last moved, as when a person stops typing. */
public final class AfterPause {
  /** Short enough that what is typed is kept within a second. */
  private static final Duration PAUSE = Duration.millis(700);

  private AfterPause() {}

  /** Runs {@code then} once the edits have stood still. */
  public static void of(ReadOnlyIntegerProperty edits, Runnable then) {
    PauseTransition pause = new PauseTransition(PAUSE);
    pause.setOnFinished(ended -> then.run());
    edits.addListener((from, old, now) -> pause.playFromStart());
  }
}
