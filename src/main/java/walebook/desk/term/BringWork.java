package walebook.desk.term;

import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringWrapper;
import walebook.desk.common.Session;
import walebook.problem.Answer;

/** Work that answers, one at a time, away from the window; what is in the way is worded. */
final class BringWork {
  final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper(this, "working");
  final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper(this, "says", "");
  private final Session session;

  BringWork(Session session) {
    this.session = session;
  }

  /** What is asked for. */
  interface Asking<T> {
    Answer<T> ask();
  }

  /**
   * Starts work.
   *
   * @param good given what was found, if anything was
   * @param bad run after what is in the way was said
   */
  <T> void start(Asking<T> asking, Consumer<T> good, Runnable bad) {
    working.set(true);
    says.set("");
    session
        .background()
        .run(
            progress -> asking.ask(),
            answer -> {
              working.set(false);
              if (answer.isGood()) {
                good.accept(answer.value());
              } else {
                says.set(session.words().say(answer.problems().get(0)));
                bad.run();
              }
            },
            fault -> {
              working.set(false);
              session.unexpected(fault);
            });
  }
}
