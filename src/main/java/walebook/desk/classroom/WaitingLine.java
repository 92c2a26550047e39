package walebook.desk.classroom;

import javafx.animation.PauseTransition;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.Texts;
import walebook.words.Words;

/**
 * Says that a part is being worked out, once that takes longer than a glance, with a way to stop
 * it; and, when it was stopped, with a way to go on.
 */
final class WaitingLine extends FlowPane {
  private static final Duration GLANCE = Duration.millis(300);

  private final Words words;
  private final Label says = Texts.text("", "body");
  private final Button act = new Button();
  private final PauseTransition glance = new PauseTransition(GLANCE);
  private final ChangeListener<Asking.State> follow = (from, old, now) -> show(now);
  private @Nullable Asking<?> asking;

  WaitingLine(Words words) {
    super(16, 8);
    this.words = words;
    setAlignment(Pos.CENTER_LEFT);
    setRowValignment(javafx.geometry.VPos.CENTER);
    act.setMinWidth(USE_PREF_SIZE);
    act.setOnAction(pressed -> press());
    glance.setOnFinished(done -> line("desk.class.waiting", "desk.class.waiting.stop"));
    getChildren().setAll(says, act);
    hide();
  }

  /** Follows one part's question, or none. */
  void of(@Nullable Asking<?> now) {
    Asking<?> was = asking;
    if (was != null) {
      was.stateProperty().removeListener(follow);
    }
    asking = now;
    if (now == null) {
      show(Asking.State.AT_REST);
    } else {
      now.stateProperty().addListener(follow);
      show(now.stateProperty().get());
    }
  }

  private void show(Asking.State now) {
    glance.stop();
    switch (now) {
      case AT_REST -> hide();
      case WORKING -> glance.playFromStart();
      case STOPPED -> line("desk.class.stopped", "desk.class.stopped.again");
    }
  }

  private void press() {
    Asking<?> now = asking;
    if (now == null) {
      return;
    }
    if (now.stateProperty().get() == Asking.State.WORKING) {
      now.stop();
    } else {
      now.again();
    }
  }

  private void line(String saysKey, String actKey) {
    says.setText(words.say(saysKey));
    act.setText(words.say(actKey));
    setVisible(true);
    setManaged(true);
  }

  private void hide() {
    setVisible(false);
    setManaged(false);
  }
}
