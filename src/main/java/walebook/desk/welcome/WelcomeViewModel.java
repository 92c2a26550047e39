package walebook.desk.welcome;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.jspecify.annotations.Nullable;
import walebook.act.book.RescueBook;
import walebook.book.Book;
import walebook.book.RescueReport;
import walebook.desk.common.Background;
import walebook.desk.common.PickFile;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.words.Words;

/** The first start: three ways in, and what keeps one from working, in words. */
public final class WelcomeViewModel {
  private final Words words;
  private final Background background;
  private final PickFile files;
  private final Ways ways;
  private final Consumer<Book> entered;
  private final Consumer<Throwable> unexpected;
  private final List<RecentBook> recent;
  private final StringProperty name = new SimpleStringProperty(this, "name", "");
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper(this, "problem", "");
  private final ReadOnlyStringWrapper nameProblem =
      new ReadOnlyStringWrapper(this, "nameProblem", "");
  private final ReadOnlyObjectWrapper<@Nullable Path> damaged =
      new ReadOnlyObjectWrapper<>(this, "damaged");
  private final ReadOnlyObjectWrapper<@Nullable RescueReport> rescued =
      new ReadOnlyObjectWrapper<>(this, "rescued");
  private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper(this, "busy");

  /**
   * Makes it.
   *
   * @param entered given the book once it is open, on the window's thread
   * @param unexpected told of faults that nobody foresaw
   */
  public WelcomeViewModel(
      Words words,
      Background background,
      PickFile files,
      Ways ways,
      Consumer<Book> entered,
      Consumer<Throwable> unexpected) {
    this.words = words;
    this.background = background;
    this.files = files;
    this.ways = ways;
    this.entered = entered;
    this.unexpected = unexpected;
    this.recent = List.copyOf(RecentBook.all(ways.recent()));
    name.addListener((from, old, now) -> nameProblem.set(""));
  }

  /** The name of the new book. */
  public StringProperty nameProperty() {
    return name;
  }

  /** Books that were open lately. */
  List<RecentBook> recent() {
    return recent;
  }

  /** What is in the way, as a sentence; empty when nothing is. */
  public ReadOnlyStringProperty problemProperty() {
    return problem.getReadOnlyProperty();
  }

  /** What is wrong with the new book's name; empty when nothing is. */
  public ReadOnlyStringProperty nameProblemProperty() {
    return nameProblem.getReadOnlyProperty();
  }

  public ReadOnlyBooleanProperty busyProperty() {
    return busy.getReadOnlyProperty();
  }

  /** Asks where the new book is to be kept, and makes it. */
  public void make() {
    String called = name.get().strip();
    if (called.isEmpty()) {
      nameProblem.set(words.say("desk.welcome.name-needed"));
      return;
    }
    Path file = files.save(PickFile.Kind.BOOK, fileName(called));
    if (file != null) {
      enter(() -> ways.makeBook(file, called), null);
    }
  }

  /** Asks which book to open. */
  public void open() {
    Path file = files.open(PickFile.Kind.BOOK);
    if (file != null) {
      open(file);
    }
  }

  public void open(Path file) {
    damaged.set(null);
    rescued.set(null);
    enter(() -> ways.openBook(file), file);
  }

  /** The book that was refused for damage; null when none was. */
  public ReadOnlyObjectProperty<@Nullable Path> damagedProperty() {
    return damaged.getReadOnlyProperty();
  }

  /** What came out of the damaged book; null while nothing was rescued. */
  public ReadOnlyObjectProperty<@Nullable RescueReport> rescuedProperty() {
    return rescued.getReadOnlyProperty();
  }

  /** Rescues what can be read of the damaged book into a new one. */
  public void rescue() {
    Path file = damaged.get();
    if (file == null || busy.get()) {
      return;
    }
    busy.set(true);
    problem.set("");
    background.run(
        progress -> ways.rescue(file),
        answer -> {
          busy.set(false);
          if (answer.isGood()) {
            rescued.set(answer.value());
          } else {
            problem.set(sentences(answer.problems()));
          }
        },
        fault -> {
          busy.set(false);
          unexpected.accept(fault);
        });
  }

  /** Opens what was rescued. */
  public void openRescued() {
    RescueReport report = rescued.get();
    if (report != null) {
      open(report.into());
    }
  }

  /** Goes back to a backup of the damaged book and opens it. */
  public void goBack(Path copy) {
    Path file = damaged.get();
    if (file != null) {
      enter(() -> ways.goBack(file, copy), file);
    }
  }

  /** Leaves the damaged book as it is. */
  public void leave() {
    damaged.set(null);
    rescued.set(null);
    problem.set("");
  }

  /** Looks round the invented class. */
  public void demo() {
    enter(ways::openDemo, null);
  }

  private void enter(Supplier<Answer<Book>> way, @Nullable Path file) {
    if (busy.get()) {
      return;
    }
    busy.set(true);
    problem.set("");
    background.run(
        progress -> way.get(),
        answer -> {
          busy.set(false);
          if (answer.isGood()) {
            damaged.set(null);
            rescued.set(null);
            entered.accept(answer.value());
          } else {
            problem.set(sentences(answer.problems()));
            damaged.set(answer.problems().stream().anyMatch(RescueBook::helps) ? file : null);
          }
        },
        fault -> {
          busy.set(false);
          unexpected.accept(fault);
        });
  }

  private String sentences(List<Problem> problems) {
    return String.join("\n", problems.stream().map(words::say).toList());
  }

  private static String fileName(String called) {
    String plain = called.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    String trimmed = plain.replaceAll("^-+|-+$", "");
    return (trimmed.isEmpty() ? "class" : trimmed) + ".walebook";
  }
}
