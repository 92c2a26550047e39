package walebook.desk.common;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.ReadNumber;
import walebook.quantity.Unit;

/**
 * The texts of a small form by field name, each with its problem. What was only asked about counts
 * as confirmed when it is saved again unchanged.
 */
public final class FormFields {
  private final Map<String, Field> fields = new LinkedHashMap<>();
  private final Runnable changed;
  private final ReadOnlyBooleanWrapper asks = new ReadOnlyBooleanWrapper(this, "asks");
  private boolean filling;

  /** One field: what was typed and what is wrong with it. */
  public static final class Field {
    private final ObjectProperty<String> text = new SimpleObjectProperty<>(this, "text", "");
    private final ObjectProperty<@Nullable Problem> problem =
        new SimpleObjectProperty<>(this, "problem");

    /** What was typed; never null but while a choice is being emptied. */
    public ObjectProperty<String> text() {
      return text;
    }

    public ObjectProperty<@Nullable Problem> problem() {
      return problem;
    }
  }

  /**
   * A form.
   *
   * @param changed told after each change by a person
   */
  public FormFields(Runnable changed, String... names) {
    this.changed = changed;
    for (String name : names) {
      Field field = new Field();
      fields.put(name, field);
      field.text.addListener((from, old, now) -> typed(field));
    }
  }

  /**
   * A field by its name.
   *
   * @throws IllegalArgumentException when the form has none of that name
   */
  public Field field(String name) {
    Field field = fields.get(name);
    if (field == null) {
      throw new IllegalArgumentException("the form has no field " + name);
    }
    return field;
  }

  public String text(String name) {
    String text = field(name).text.get();
    return text == null ? "" : text;
  }

  /** A length in mm as far as it can be read, above 0; null otherwise. */
  public @Nullable Double length(String name, Unit unit) {
    Answer<Double> read = ReadNumber.length(text(name), unit, Place.field(name));
    return read.isGood() && read.value() > 0 ? read.value() : null;
  }

  /** Everything typed, as an act reads it. */
  public Map<String, String> typed() {
    Map<String, String> typed = new LinkedHashMap<>();
    fields.keySet().forEach(name -> typed.put(name, text(name)));
    return typed;
  }

  /** Fills the form; fields that are not named are emptied. */
  public void put(Map<String, String> values) {
    filling = true;
    fields.forEach((name, field) -> field.text.set(values.getOrDefault(name, "")));
    filling = false;
    clearProblems();
    changed.run();
  }

  /** Shows problems at their fields; those of no field of the form are left to the caller. */
  public void show(List<Problem> problems) {
    clearProblems();
    for (Problem problem : problems) {
      if (problem.place() instanceof Place.Field place) {
        Field field = fields.get(place.name());
        if (field != null && field.problem.get() == null) {
          field.problem.set(problem);
        }
      }
    }
    asks.set(!problems.isEmpty() && problems.stream().noneMatch(Problem::refuses));
  }

  /** Shows what stands in the way at its fields; nothing does once the answer is good. */
  public void show(Answer<?> answer) {
    show(answer.problems());
    if (answer.isGood()) {
      asks.set(false);
    }
  }

  /** True when all that stood in the way was asked about and nothing changed since. */
  public boolean isConfirmed() {
    return asks.get();
  }

  /** The same, to be watched. */
  public ReadOnlyBooleanProperty asksProperty() {
    return asks.getReadOnlyProperty();
  }

  private void typed(Field field) {
    if (!filling) {
      field.problem.set(null);
      asks.set(false);
      changed.run();
    }
  }

  private void clearProblems() {
    asks.set(false);
    fields.values().forEach(field -> field.problem.set(null));
  }
}
