package walebook.working;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.ReadNumber;
import walebook.quantity.Unit;

/** Reads a calculation's inputs as typed into what the calculation takes. */
final class ReadInputs {
  private final Unit usual;
  private final Map<String, Double> numbers = new HashMap<>();
  private final Map<String, String> words = new HashMap<>();
  private final Map<String, List<Double>> lists = new HashMap<>();
  private final List<Problem> problems = new ArrayList<>();

  private ReadInputs(Unit usual) {
    this.usual = usual;
  }

  static Answer<Given> of(List<Input> inputs, Map<String, String> typed, Unit usual) {
    ReadInputs reading = new ReadInputs(usual);
    reading.unknown(inputs, typed.keySet());
    inputs.forEach(input -> reading.one(input, typed.get(input.name())));
    return reading.problems.isEmpty()
        ? Answer.good(new Given(reading.numbers, reading.words, reading.lists))
        : Answer.bad(reading.problems);
  }

  private void unknown(List<Input> inputs, Set<String> names) {
    Set<String> known = inputs.stream().map(Input::name).collect(Collectors.toSet());
    for (String name : new TreeSet<>(names)) {
      if (!known.contains(name)) {
        String wanted = inputs.stream().map(Input::name).collect(Collectors.joining(", "));
        problems.add(Problem.refuse("input.unknown", Place.field(name), name, wanted));
      }
    }
  }

  private void one(Input input, @Nullable String typed) {
    String text = typed == null || typed.isBlank() ? input.usual() : typed.strip();
    if (text == null) {
      if (input.required()) {
        problems.add(Problem.refuse("input.missing", Place.field(input.name()), "", ""));
      }
      return;
    }
    Place place = Place.field(input.name());
    switch (input.kind()) {
      case LENGTH -> number(input, ReadNumber.length(text, unitMeant(typed), place));
      case PERCENT, NUMBER -> number(input, ReadNumber.plain(text, place));
      case WHOLE -> number(input, ReadNumber.whole(text, place).map(Integer::doubleValue));
      case CHOICE -> choice(input, text.toLowerCase(Locale.ROOT), place);
      case NUMBERS -> several(input, text, part -> ReadNumber.plain(part, place));
      case LENGTHS ->
          several(input, text, part -> ReadNumber.length(part, unitMeant(typed), place));
    }
  }

  /** A usual value is written in mm; what was typed is in the user's unit. */
  private Unit unitMeant(@Nullable String typed) {
    return typed == null || typed.isBlank() ? Unit.MM : usual;
  }

  private void number(Input input, Answer<Double> read) {
    problems.addAll(read.problems());
    if (read.isGood()) {
      numbers.put(input.name(), read.value());
    }
  }

  private void choice(Input input, String word, Place place) {
    if (input.choices().contains(word)) {
      words.put(input.name(), word);
    } else {
      problems.add(Problem.refuse("input.choice", place, word, String.join(", ", input.choices())));
    }
  }

  private void several(Input input, String text, Function<String, Answer<Double>> reader) {
    List<Double> read = new ArrayList<>();
    for (String part : text.split(";", -1)) {
      Answer<Double> one = reader.apply(part);
      problems.addAll(one.problems());
      if (one.isGood()) {
        read.add(one.value());
      }
    }
    lists.put(input.name(), List.copyOf(read));
  }
}
