package walebook.desk.decide;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.CheckInput;
import walebook.drawing.Drawing;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.words.Words;
import walebook.working.Calculation;
import walebook.working.Given;
import walebook.working.Message;
import walebook.working.Working;

/** One check: what is filled in, and at each key what it comes to. */
public final class CheckViewModel {
  private final Calculation calculation;
  private final Words words;
  private final Unit lengths;
  private final List<CheckInput> inputs;
  private final ReadOnlyObjectWrapper<Outcome> outcome;
  private boolean filling;

  /**
   * What the inputs come to as they stand.
   *
   * @param working null while something is missing or cannot be right
   * @param drawing null where there is none to draw
   * @param hint what is still wanted; empty when there is a working
   */
  public record Outcome(@Nullable Working working, @Nullable Drawing drawing, String hint) {}

  /**
   * A check with its usual values filled in.
   *
   * @param lengths what a length without a unit means
   */
  public CheckViewModel(Calculation calculation, Words words, Unit lengths) {
    this.calculation = calculation;
    this.words = words;
    this.lengths = lengths;
    this.inputs =
        calculation.inputs().stream().map(input -> new CheckInput(input, lengths)).toList();
    this.outcome = new ReadOnlyObjectWrapper<>(this, "outcome", work());
    inputs.forEach(each -> each.onChange(this::changed));
  }

  /** What is worked out. */
  public Message title() {
    return calculation.says();
  }

  String name() {
    return calculation.name();
  }

  List<CheckInput> inputs() {
    return inputs;
  }

  /** Follows each key. */
  public ReadOnlyObjectProperty<Outcome> outcomeProperty() {
    return outcome.getReadOnlyProperty();
  }

  /** Types into a field or chooses there, as a person would. */
  public void type(String input, String text) {
    CheckInput field = input(input);
    if (field.number() == null) {
      field.text().text().set(text);
    } else {
      field.number().textProperty().set(text);
      field.number().settle();
    }
  }

  /** Calls back after each change of a field. */
  void onTyped(Runnable typed) {
    inputs.forEach(each -> each.onChange(typed));
  }

  /** What stands in a field. */
  String shown(String input) {
    CheckInput field = input(input);
    String text =
        field.number() == null ? field.text().text().get() : field.number().textProperty().get();
    return text == null ? "" : text;
  }

  /** The problem shown at a field, or null. */
  public @Nullable Problem problemAt(String input) {
    CheckInput field = input(input);
    return field.number() == null
        ? field.text().problem().get()
        : field.number().readingProperty().get().problem();
  }

  private CheckInput input(String name) {
    return inputs.stream()
        .filter(each -> each.input().name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the check has no input " + name));
  }

  /** Back to the usual values. */
  public void startAgain() {
    filling = true;
    inputs.forEach(CheckInput::reset);
    filling = false;
    changed();
  }

  private void changed() {
    if (!filling) {
      outcome.set(work());
    }
  }

  private Outcome work() {
    Map<String, String> typed = new LinkedHashMap<>();
    inputs.forEach(each -> typed.put(each.input().name(), each.typed()));
    Answer<Given> given = calculation.read(typed, Unit.MM);
    Answer<Working> answer = given.flatMap(calculation::run);
    show(answer.problems());
    if (!answer.isGood()) {
      return new Outcome(null, null, hint(answer.problems()));
    }
    Working working = answer.value();
    Drawing drawing = CheckDrawing.of(calculation.name(), given.value(), working, lengths);
    return new Outcome(working, drawing, "");
  }

  private void show(List<Problem> problems) {
    Map<String, Problem> first = new HashMap<>();
    for (Problem each : problems) {
      if (each.place() instanceof Place.Field field) {
        first.putIfAbsent(field.name(), each);
      }
    }
    inputs.forEach(each -> each.problem(first.get(each.input().name())));
  }

  /** First what is missing; what is wrong is told at its field, unless it belongs to none. */
  private String hint(List<Problem> problems) {
    List<String> missing =
        inputs.stream()
            .filter(each -> each.input().required() && each.isEmpty())
            .map(each -> words.say(each.input().says()))
            .toList();
    if (!missing.isEmpty()) {
      return words.say("desk.decide.missing", String.join("; ", missing));
    }
    List<String> wrong =
        inputs.stream()
            .filter(each -> problems.stream().anyMatch(each::isPlaceOf))
            .map(each -> words.say(each.input().says()))
            .toList();
    return wrong.isEmpty()
        ? words.say(problems.get(0))
        : words.say("desk.decide.mend-at", String.join("; ", wrong));
  }
}
