package walebook.desk.common;

import java.time.Clock;
import java.util.Random;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.record.By;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.tables.SharedTables;
import walebook.words.Words;

/**
 * What all places share while one book is open: the book, who sits at the screen, and word of what
 * was saved. Made anew for each book; view models are given it, never look it up.
 */
public final class Session {
  private final Book book;
  private final SharedTables tables;
  private final Words words;
  private final Clock clock;
  private final Random chance;
  private final Background background;
  private final PickFile files;
  private final Consumer<Throwable> unexpected;

  private final ObjectProperty<@Nullable SchoolClass> schoolClass =
      new SimpleObjectProperty<>(this, "schoolClass");
  private final ObjectProperty<@Nullable Student> student =
      new SimpleObjectProperty<>(this, "student");
  private final BooleanProperty namesHidden = new SimpleBooleanProperty(this, "namesHidden");
  private final ObjectProperty<@Nullable Wish> wish = new SimpleObjectProperty<>(this, "wish");
  private Remember remember = Remember.forNow();
  private final ReadOnlyIntegerWrapper changes = new ReadOnlyIntegerWrapper(this, "changes");

  /**
   * Makes a session.
   *
   * @param chance draws codes and orders of plans
   * @param unexpected told of faults that nobody foresaw
   */
  public Session(
      Book book,
      SharedTables tables,
      Words words,
      Clock clock,
      Random chance,
      Background background,
      PickFile files,
      Consumer<Throwable> unexpected) {
    this.book = book;
    this.tables = tables;
    this.words = words;
    this.clock = clock;
    this.chance = chance;
    this.background = background;
    this.files = files;
    this.unexpected = unexpected;
    student.addListener((from, old, now) -> book.history().madeBy(by()));
  }

  /** Who sits at the screen, as the history names them. */
  public By by() {
    Student now = student.get();
    return now == null ? By.NOBODY : new By(now.name(), now.id(), null);
  }

  public Book book() {
    return book;
  }

  public SharedTables tables() {
    return tables;
  }

  public Words words() {
    return words;
  }

  public Clock clock() {
    return clock;
  }

  public Random chance() {
    return chance;
  }

  public Background background() {
    return background;
  }

  public PickFile files() {
    return files;
  }

  /** What places keep of their choices. */
  public Remember remember() {
    return remember;
  }

  /** Keeps choices somewhere from now on; said before the first place is made. */
  public void remembersIn(Remember where) {
    remember = where;
  }

  /** The class in hand, or null while the book has none. */
  public ObjectProperty<@Nullable SchoolClass> schoolClassProperty() {
    return schoolClass;
  }

  /** Who sits at the screen, or null while nobody said so. */
  public ObjectProperty<@Nullable Student> studentProperty() {
    return student;
  }

  /** Says that the tutor is at the screen now; nobody of the class is picked any more. */
  public void tutorIsHere() {
    student.set(null);
  }

  /** True when aliases stand in the place of names, as on a projector. */
  public BooleanProperty namesHiddenProperty() {
    return namesHidden;
  }

  /** What one place asks of another; the shell shows the place, the place does the rest. */
  public ObjectProperty<@Nullable Wish> wishProperty() {
    return wish;
  }

  /** Asks another place for something, also when the last wish was the same. */
  public void wish(Wish next) {
    wish.set(null);
    wish.set(next);
  }

  /** Counts what was saved; a place that shows saved things reads them again when it moves. */
  public ReadOnlyIntegerProperty changesProperty() {
    return changes.getReadOnlyProperty();
  }

  /** Says that something was saved. Called on the window's thread. */
  public void changed() {
    changes.set(changes.get() + 1);
  }

  /** Runs work on the book away from the window; unforeseen faults go to the one error window. */
  public <T> Task run(Background.Work<T> work, Consumer<T> done) {
    return background.run(work, done, unexpected);
  }

  /** Hands on a fault that nobody foresaw. */
  public void unexpected(Throwable fault) {
    unexpected.accept(fault);
  }
}
