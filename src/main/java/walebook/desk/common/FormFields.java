package walebook.desk.common;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import walebook.problem.Place;
import walebook.problem.Problem;

/**
 * The texts of a small form by field name, each with its problem. What was only asked about counts
 * as confirmed when it is saved again unchanged.
 */
public final class FormFields {
  private final Map<String, Field> fields = new LinkedHashMap<>();
  private final Runnable changed;
  private boolean asked;
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
    asked = !problems.isEmpty() && problems.stream().noneMatch(Problem::refuses);
  }

  /** True when all that stood in the way was asked about and nothing changed since. */
  public boolean isConfirmed() {
    return asked;
  }

  private void typed(Field field) {
    if (!filling) {
      field.problem.set(null);
      asked = false;
      changed.run();
    }
  }

  private void clearProblems() {
    asked = false;
    fields.values().forEach(field -> field.problem.set(null));
  }
}
