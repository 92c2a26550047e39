package walebook.desk.typing;

import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.jspecify.annotations.Nullable;
import walebook.problem.Problem;

/**
 * One field of one card: its text, whether somebody typed it, and its problem, which is held back
 * until the field is left and goes as soon as it is mended.
 */
public final class CardCell {
  private final String key;
  private final StringProperty text = new SimpleStringProperty(this, "text", "");
  private final ReadOnlyObjectWrapper<@Nullable Problem> problem =
      new ReadOnlyObjectWrapper<>(this, "problem");
  private final Runnable edited;
  private final UnaryOperator<String> whole;
  private String start = "";
  private final ReadOnlyStringWrapper hint = new ReadOnlyStringWrapper(this, "hint", "");
  private @Nullable Problem found;
  private boolean forAll;
  private boolean settled;
  private boolean filling;

  /**
   * A cell.
   *
   * @param whole makes beginnings of choices whole
   * @param edited told of each edit
   */
  CardCell(String key, String start, UnaryOperator<String> whole, Runnable edited) {
    this.key = key;
    this.whole = whole;
    this.edited = edited;
    begin(start, "");
    text.addListener(
        (from, old, now) -> {
          if (!filling) {
            forAll = false;
            edited.run();
          }
        });
  }

  /** The column that it stands in. */
  public String key() {
    return key;
  }

  public StringProperty textProperty() {
    return text;
  }

  public String text() {
    return text.get();
  }

  /** What the book has, shown while the cell is empty. */
  public String hint() {
    return hint.get();
  }

  /** Moves when the card is saved, while its row stays on the screen. */
  ReadOnlyStringProperty hintProperty() {
    return hint.getReadOnlyProperty();
  }

  /** The problem to be shown in the cell, or null. */
  public ReadOnlyObjectProperty<@Nullable Problem> problemProperty() {
    return problem.getReadOnlyProperty();
  }

  /** The problem, shown yet or not. */
  @Nullable Problem found() {
    return found;
  }

  /** The cell was left: a choice's letters become its word, and from now on a problem shows. */
  public void leave() {
    settled = true;
    String full = isTyped() ? whole.apply(text.get()) : text.get();
    if (!full.equals(text.get())) {
      text.set(full);
    }
    show();
  }

  /** True when it still holds what the card began with. */
  boolean isUntouched() {
    return text.get().equals(start);
  }

  /** True when its text was put there for the whole column. */
  boolean isForAll() {
    return forAll && !isUntouched();
  }

  /** True when somebody typed it for this card. */
  boolean isTyped() {
    return !isUntouched() && !forAll;
  }

  /** Puts in a text that stands for the whole column, or takes one back. */
  void putForAll(String next, boolean stands) {
    fill(next);
    forAll = stands;
    edited.run();
  }

  /** Begins anew with what the card has; {@code book} is what the book has of it. */
  void begin(String first, String book) {
    start = first;
    hint.set(book);
    forAll = false;
    settled = false;
    fill(first);
    found(null);
  }

  void found(@Nullable Problem next) {
    found = next;
    show();
  }

  private void fill(String next) {
    filling = true;
    text.set(next);
    filling = false;
  }

  private void show() {
    problem.set(settled ? found : null);
  }
}
