package walebook.desk.common;

import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.ReadNumber;
import walebook.quantity.Show;
import walebook.quantity.Unit;

/**
 * A number being typed: its text is never changed or lost, its value follows at each key, and a
 * problem is held back until the field is left, then goes as soon as it is mended.
 */
public final class NumberEntry {
  private final Function<String, Answer<Double>> reader;
  private final Function<Double, String> shower;
  private final StringProperty text = new SimpleStringProperty(this, "text", "");
  private final ReadOnlyObjectWrapper<Answer<Double>> answer;
  private final ReadOnlyObjectWrapper<Reading> reading;
  private boolean settled;
  private @Nullable Problem outside;

  /**
   * What the field shows of the text.
   *
   * @param value null when there is none, or it was refused
   * @param problem null when there is none or it is not shown yet
   * @param understood the value in the field's own unit; empty when the text already says so
   */
  public record Reading(@Nullable Double value, @Nullable Problem problem, String understood) {}

  private NumberEntry(Function<String, Answer<Double>> reader, Function<Double, String> shower) {
    this.reader = reader;
    this.shower = shower;
    answer = new ReadOnlyObjectWrapper<>(this, "answer", reader.apply(""));
    reading = new ReadOnlyObjectWrapper<>(this, "reading", new Reading(null, null, ""));
    text.addListener(
        (from, old, now) -> {
          outside = null;
          read();
        });
  }

  /** A length in mm, typed in {@code usual} unless a unit stands behind it. */
  public static NumberEntry length(Unit usual, String field) {
    Place place = Place.field(field);
    return new NumberEntry(
        typed -> ReadNumber.length(typed, usual, place), mm -> Show.length(mm, usual));
  }

  /** A plain number. */
  public static NumberEntry plain(String field) {
    Place place = Place.field(field);
    return new NumberEntry(typed -> ReadNumber.plain(typed, place), value -> Show.upTo(value, 3));
  }

  /** A whole number. */
  public static NumberEntry whole(String field) {
    Place place = Place.field(field);
    return new NumberEntry(
        typed -> ReadNumber.whole(typed, place).map(Integer::doubleValue),
        value -> Show.upTo(value, 0));
  }

  /** The same entry with a further check on the value, which may refuse or ask. */
  public NumberEntry checked(Function<Double, Answer<Double>> check) {
    return new NumberEntry(typed -> reader.apply(typed).flatMap(check), shower);
  }

  public StringProperty textProperty() {
    return text;
  }

  public ReadOnlyObjectProperty<Reading> readingProperty() {
    return reading.getReadOnlyProperty();
  }

  /** The answer to the text as it stands; an empty text is refused as {@code number.empty}. */
  public Answer<Double> answer() {
    return answer.get();
  }

  /** The value, or null when there is none. */
  public @Nullable Double value() {
    return reading.get().value();
  }

  public boolean isEmpty() {
    return text.get().isBlank();
  }

  /** Puts a value in as text, or empties the field. */
  public void put(@Nullable Double value) {
    settled = false;
    String shown = value == null ? "" : shower.apply(value);
    text.set(shown.replaceAll(" .*$", ""));
    read();
  }

  /** The field was left, or the form is to be saved: from now on a problem shows. */
  public void settle() {
    settled = !isEmpty();
    read();
  }

  /**
   * Tells of a problem that whatever uses the number has with it; shown like the entry's own.
   *
   * @param problem null when there is none any more
   */
  public void outside(@Nullable Problem problem) {
    outside = problem;
    read();
  }

  private void read() {
    Answer<Double> now = reader.apply(text.get());
    answer.set(now);
    if (isEmpty()) {
      settled = false;
      reading.set(new Reading(null, null, ""));
      return;
    }
    List<Problem> problems = now.problems();
    Double value = now.isGood() ? now.value() : null;
    Problem problem = problems.isEmpty() ? outside : problems.get(0);
    reading.set(new Reading(value, settled ? problem : null, understood(value)));
  }

  private String understood(@Nullable Double value) {
    if (value == null) {
      return "";
    }
    String shown = shower.apply(value);
    String typed = text.get().strip();
    boolean plain = typed.matches("[0-9]+([.,][0-9]+)?");
    return plain || typed.equals(shown) ? "" : shown;
  }
}
