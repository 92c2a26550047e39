package walebook.desk.classroom;

import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.CompareFair;
import walebook.desk.common.Background.Progress;
import walebook.desk.common.Session;
import walebook.desk.common.Task;
import walebook.record.SchoolClass;
import walebook.words.Words;

/**
 * A question that is asked again whenever the filters move, away from the window's thread, and only
 * while its part of the place is shown.
 *
 * @param <T> what is found, worded and drawn
 */
final class Asking<T> {
  private final FiltersViewModel filters;
  private final Session session;
  private final Question<T> question;
  private final ReadOnlyObjectWrapper<@Nullable T> found = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<State> state =
      new ReadOnlyObjectWrapper<>(this, "state", State.AT_REST);
  private @Nullable Task reading;
  private boolean shown;
  private boolean stale = true;

  /** How far the question is. */
  enum State {
    /** What was found is what is asked. */
    AT_REST,
    WORKING,
    /** Somebody stopped it: what was found before is still there. */
    STOPPED
  }

  /**
   * What is asked.
   *
   * @param <T> what is found
   */
  @FunctionalInterface
  interface Question<T> {
    /**
     * Takes what is asked now, on the window's thread.
     *
     * @param which whose pieces, and whether aliases stand for names
     * @return the work, done elsewhere
     */
    Work<T> of(CompareFair.Which which);
  }

  /**
   * The work itself; touches nothing of the window.
   *
   * @param <T> what is found
   */
  @FunctionalInterface
  interface Work<T> {
    /** Does it, telling in between how far it is, so that it can be stopped there. */
    T find(Progress progress);
  }

  Asking(FiltersViewModel filters, Question<T> question) {
    this.filters = filters;
    this.session = filters.session();
    this.question = question;
    filters.askedProperty().addListener((from, old, now) -> again());
  }

  /** What was found last; null until the book was read, and for a book without a class. */
  ReadOnlyObjectProperty<@Nullable T> foundProperty() {
    return found.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<State> stateProperty() {
    return state.getReadOnlyProperty();
  }

  /** Says whether anybody looks; what is still worked out when nobody does is dropped. */
  void shown(boolean now) {
    shown = now;
    if (shown && stale) {
      again();
    } else if (!shown && state.get() == State.WORKING) {
      drop();
      stale = true;
      state.set(State.AT_REST);
    }
  }

  void again() {
    stale = true;
    drop();
    state.set(State.AT_REST);
    if (!shown) {
      return;
    }
    stale = false;
    SchoolClass in = session.schoolClassProperty().get();
    if (in == null) {
      found.set(null);
      return;
    }
    Work<T> work = question.of(filters.which(in.id(), session.namesHiddenProperty().get()));
    Task now = session.run(work::find, found::set);
    reading = now;
    if (now.state() == Task.State.RUNNING) {
      state.set(State.WORKING);
      now.stateProperty()
          .addListener(
              (from, old, next) -> {
                if (now == reading) {
                  state.set(State.AT_REST);
                }
              });
    }
  }

  /** Stops what is worked out; what was found before stays. */
  void stop() {
    if (state.get() == State.WORKING) {
      drop();
      stale = true;
      state.set(State.STOPPED);
    }
  }

  private void drop() {
    Task was = reading;
    reading = null;
    if (was != null) {
      was.cancel();
    }
  }

  /** Finds the same with aliases for names, for a screen that everyone sees. */
  void forBoard(Consumer<T> show) {
    SchoolClass in = session.schoolClassProperty().get();
    if (in != null) {
      session.run(question.of(filters.which(in.id(), true))::find, show);
    }
  }

  FiltersViewModel filters() {
    return filters;
  }

  Session session() {
    return session;
  }

  Words words() {
    return session.words();
  }
}
