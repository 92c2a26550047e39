package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import walebook.cloth.Repeats;
import walebook.desk.common.BoardLine;
import walebook.desk.common.CheckInput;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Measured;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.words.Words;
import walebook.working.Calculation;
import walebook.working.Input;
import walebook.working.Working;

/**
 * Numbers called out by the room, worked with on the board: the lines come one at a time, and
 * several answers, kept one after another, give their mean and spread.
 */
public final class CalledOutViewModel {
  private static final double CONFIDENCE_PERCENT = 95;

  private final List<Calculation> all;
  private final Words words;
  private final Unit lengths;
  private final Map<String, List<CheckInput>> begun = new HashMap<>();
  private final Map<String, List<Measured>> kept = new HashMap<>();
  private final ObjectProperty<Calculation> chosen;
  private final ReadOnlyObjectWrapper<@Nullable Working> working =
      new ReadOnlyObjectWrapper<>(this, "working");
  private final ReadOnlyStringWrapper hint = new ReadOnlyStringWrapper(this, "hint", "");
  private final ReadOnlyIntegerWrapper shown = new ReadOnlyIntegerWrapper(this, "shown", 0);
  private final ObservableList<String> called = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<@Nullable Working> spread =
      new ReadOnlyObjectWrapper<>(this, "spread");
  private boolean filling;

  /**
   * The first calculation with its usual values.
   *
   * @param all at least one, those that fit the lesson first
   * @param lengths what a length without a unit means
   */
  public CalledOutViewModel(List<Calculation> all, Words words, Unit lengths) {
    this.all = List.copyOf(all);
    this.words = words;
    this.lengths = lengths;
    this.chosen = new SimpleObjectProperty<>(this, "chosen", all.get(0));
    chosen.addListener((from, old, now) -> chosen());
    chosen();
  }

  public List<Calculation> all() {
    return all;
  }

  public ObjectProperty<Calculation> chosenProperty() {
    return chosen;
  }

  public String name(Calculation of) {
    return words.say(of.says());
  }

  /** The inputs of the chosen calculation; what was typed in another waits there. */
  public List<CheckInput> inputs() {
    return begun.computeIfAbsent(chosen.get().name(), name -> begin(chosen.get()));
  }

  /** The working of what is typed; null while something is missing or cannot be right. */
  public ReadOnlyObjectProperty<@Nullable Working> workingProperty() {
    return working.getReadOnlyProperty();
  }

  /** What is still wanted; empty when there is a working. */
  public ReadOnlyStringProperty hintProperty() {
    return hint.getReadOnlyProperty();
  }

  /** How many of the working's lines stand on the board. */
  public ReadOnlyIntegerProperty shownProperty() {
    return shown.getReadOnlyProperty();
  }

  /** The lines that stand on the board. */
  public List<BoardLine> lines() {
    List<BoardLine> lines = lines(working.get());
    return lines.subList(0, Math.min(shown.get(), lines.size()));
  }

  /** True when another line can come. */
  public boolean hasMore() {
    return shown.get() < lines(working.get()).size();
  }

  public void nextLine() {
    shown.set(Math.min(lines(working.get()).size(), shown.get() + 1));
  }

  public void lineBack() {
    shown.set(Math.max(0, shown.get() - 1));
  }

  /** The answers kept so far, as they read on the board. */
  public ObservableList<String> called() {
    return called;
  }

  /** Mean and spread of the answers kept; null for fewer than two. */
  public ReadOnlyObjectProperty<@Nullable Working> spreadProperty() {
    return spread.getReadOnlyProperty();
  }

  /** The lines of mean and spread. */
  public List<BoardLine> spreadLines() {
    return lines(spread.get());
  }

  /**
   * Keeps the answer for the mean and makes room for the next number.
   *
   * @return the input that waits for it, or null when there is no answer to keep
   */
  public @Nullable CheckInput keep() {
    Working now = working.get();
    Measured result = now == null ? null : now.result();
    if (result == null) {
      return null;
    }
    kept.computeIfAbsent(chosen.get().name(), name -> new ArrayList<>()).add(result);
    CheckInput next = lastNumber();
    if (next != null) {
      next.reset();
    }
    recount();
    return next;
  }

  /** Takes back the answer that was kept last. */
  public void takeBack() {
    List<Measured> answers = kept.getOrDefault(chosen.get().name(), new ArrayList<>());
    if (!answers.isEmpty()) {
      answers.remove(answers.size() - 1);
      recount();
    }
  }

  /** The last number that must be given: the one that changes from reading to reading. */
  private @Nullable CheckInput lastNumber() {
    List<CheckInput> inputs = inputs();
    for (int i = inputs.size() - 1; i >= 0; i--) {
      if (inputs.get(i).input().required() && inputs.get(i).number() != null) {
        return inputs.get(i);
      }
    }
    return null;
  }

  private List<CheckInput> begin(Calculation calculation) {
    List<CheckInput> inputs =
        calculation.inputs().stream().map(each -> new CheckInput(each, lengths)).toList();
    inputs.forEach(each -> each.onChange(this::typed));
    return inputs;
  }

  private void chosen() {
    filling = true;
    inputs();
    filling = false;
    shown.set(0);
    typed();
    recount();
  }

  private void recount() {
    List<Measured> answers = kept.getOrDefault(chosen.get().name(), List.of());
    spread.set(answers.size() < 2 ? null : spreadOf(answers));
    called.setAll(answers.stream().map(each -> Show.upTo(each.value(), 1) + sign(each)).toList());
  }

  private static Working spreadOf(List<Measured> answers) {
    List<Double> values = answers.stream().map(Measured::value).toList();
    return Repeats.of(values, answers.get(0).unit(), CONFIDENCE_PERCENT).value();
  }

  private static String sign(Measured answer) {
    return answer.unit().sign().isEmpty() ? "" : " " + answer.unit().sign();
  }

  private List<BoardLine> lines(@Nullable Working of) {
    return of == null ? List.of() : BoardLine.of(of, words);
  }

  private void typed() {
    if (filling) {
      return;
    }
    Map<String, String> typed = new LinkedHashMap<>();
    inputs().forEach(each -> typed.put(each.input().name(), each.typed()));
    Answer<Working> answer = chosen.get().runTyped(typed, Unit.MM);
    tell(answer.problems());
    working.set(answer.isGood() ? answer.value() : null);
    hint.set(answer.isGood() ? "" : missing(answer.problems()));
    shown.set(Math.min(shown.get(), lines(working.get()).size()));
  }

  private void tell(List<Problem> problems) {
    Map<String, Problem> first = new HashMap<>();
    for (Problem each : problems) {
      if (each.place() instanceof Place.Field field) {
        first.putIfAbsent(field.name(), each);
      }
    }
    inputs().forEach(each -> each.problem(first.get(each.input().name())));
  }

  private String missing(List<Problem> problems) {
    List<Input> missing =
        inputs().stream()
            .filter(each -> each.input().required() && each.isEmpty())
            .map(CheckInput::input)
            .toList();
    if (missing.isEmpty()) {
      return words.say(problems.get(0));
    }
    String names =
        missing.stream().map(each -> words.say(each.says())).collect(Collectors.joining("; "));
    return words.say("desk.lessons.teach.call-out", names);
  }
}
