package walebook.desk.welcome;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import walebook.book.Book;
import walebook.desk.common.Background;
import walebook.desk.common.PickFile;
import walebook.problem.Answer;
import walebook.words.Words;

/** The first start: three ways in, and what keeps one from working, in words. */
public final class WelcomeViewModel {
  private final Words words;
  private final Background background;
  private final PickFile files;
  private final Ways ways;
  private final Consumer<Book> entered;
  private final Consumer<Throwable> unexpected;
  private final List<Path> recent;
  private final StringProperty name = new SimpleStringProperty(this, "name", "");
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper(this, "problem", "");
  private final ReadOnlyStringWrapper nameProblem =
      new ReadOnlyStringWrapper(this, "nameProblem", "");
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
    this.recent = List.copyOf(ways.recent());
    name.addListener((from, old, now) -> nameProblem.set(""));
  }

  /** The name of the new book. */
  public StringProperty nameProperty() {
    return name;
  }

  /** Books that were open lately. */
  public List<Path> recent() {
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
      enter(() -> ways.makeBook(file, called));
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
    enter(() -> ways.openBook(file));
  }

  /** Looks round the invented class. */
  public void demo() {
    enter(ways::openDemo);
  }

  private void enter(Supplier<Answer<Book>> way) {
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
            entered.accept(answer.value());
          } else {
            problem.set(String.join("\n", answer.problems().stream().map(words::say).toList()));
          }
        },
        fault -> {
          busy.set(false);
          unexpected.accept(fault);
        });
  }

  private static String fileName(String called) {
    String plain = called.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    String trimmed = plain.replaceAll("^-+|-+$", "");
    return (trimmed.isEmpty() ? "class" : trimmed) + ".walebook";
  }
}
