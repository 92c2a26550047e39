package walebook.desk.common;

import javafx.animation.PauseTransition;
import javafx.scene.control.Label;
import javafx.util.Duration;
import walebook.words.Words;

/**
 * A quiet line that stands where the book's rows will be, until they come; seen only once that
 * takes longer than a glance.
 */
public final class BeingRead extends Label {
  /** A line that comes and goes faster than this is a flash, not a word. */
  static final Duration GLANCE = Duration.millis(300);

  public BeingRead(Words words) {
    super(words.say("desk.common.being-read"));
    getStyleClass().addAll("being-read", "soft");
    setVisible(false);
    PauseTransition glance = new PauseTransition(GLANCE);
    glance.setOnFinished(done -> setVisible(true));
    sceneProperty()
        .addListener(
            (from, old, now) -> {
              if (now == null) {
                glance.stop();
              } else if (!isVisible()) {
                glance.playFromStart();
              }
            });
  }
}
