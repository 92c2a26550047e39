package walebook.desk.classroom;

import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
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
  private final Session session;
  private final Question<T> question;
  private final ReadOnlyObjectWrapper<@Nullable T> found = new ReadOnlyObjectWrapper<>();
  private @Nullable Task reading;
  private boolean shown;
  private boolean stale = true;

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
     * @param hidden true to find aliases for names
     * @return the work, done elsewhere
     */
    Work<T> of(SchoolClass in, boolean hidden);
  }

  /**
   * The work itself; touches nothing of the window.
   *
   * @param <T> what is found
   */
  @FunctionalInterface
  interface Work<T> {
    T find();
  }

  Asking(FiltersViewModel filters, Question<T> question) {
    this.session = filters.session();
    this.question = question;
    filters.askedProperty().addListener((from, old, now) -> again());
  }

  /** What was found last; null until the book was read, and for a book without a class. */
  ReadOnlyObjectProperty<@Nullable T> foundProperty() {
    return found.getReadOnlyProperty();
  }

  /** Says whether anybody looks. */
  void shown(boolean now) {
    shown = now;
    if (shown && stale) {
      again();
    }
  }

  void again() {
    stale = true;
    if (reading != null) {
      reading.cancel();
    }
    if (!shown) {
      return;
    }
    stale = false;
    SchoolClass in = session.schoolClassProperty().get();
    if (in == null) {
      found.set(null);
      return;
    }
    Work<T> work = question.of(in, session.namesHiddenProperty().get());
    reading = session.run(progress -> work.find(), found::set);
  }

  /** Finds the same with aliases for names, for a screen that everyone sees. */
  void forBoard(Consumer<T> show) {
    SchoolClass in = session.schoolClassProperty().get();
    if (in != null) {
      Work<T> work = question.of(in, true);
      session.run(progress -> work.find(), show);
    }
  }

  Session session() {
    return session;
  }

  Words words() {
    return session.words();
  }
}
