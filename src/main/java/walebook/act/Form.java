package walebook.act;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.ReadNumber;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.Keyed;

/**
 * A small form as it was typed, read field by field with every problem gathered. Field names are
 * also the keys of their labels and the options of the command line.
 */
public final class Form {
  private final Map<String, String> typed;
  private final Unit lengthUnit;
  private final List<Problem> problems = new ArrayList<>();

  public Form(Map<String, String> typed, Unit lengthUnit) {
    this.typed = Map.copyOf(typed);
    this.lengthUnit = lengthUnit;
  }

  public List<Problem> problems() {
    return List.copyOf(problems);
  }

  public boolean isRefused() {
    return problems.stream().anyMatch(Problem::refuses);
  }

  public String text(String field) {
    return typed.getOrDefault(field, "").strip();
  }

  /** A text that must not be empty; when it is, the problem is noted and a dash stands in. */
  public String needed(String field) {
    String text = text(field);
    if (text.isEmpty()) {
      refuse(field, "field.needed", "");
      return "–";
    }
    return text;
  }

  public void refuse(String field, String code, String wanted) {
    problems.add(Problem.refuse(code, Place.field(field), text(field), wanted));
  }

  /** Refuses a part of what stands in a field. */
  public void refuse(String field, String code, String found, String wanted) {
    problems.add(Problem.refuse(code, Place.field(field), found, wanted));
  }

  public void ask(String field, String code, String wanted) {
    problems.add(Problem.ask(code, Place.field(field), text(field), wanted));
  }

  /** A length above 0 in mm, or null when empty; asked about beyond the usual. */
  public @Nullable Double length(String field, double usualMm) {
    String text = text(field);
    return text.isEmpty()
        ? null
        : bounded(
            field, ReadNumber.length(text, lengthUnit, Place.field(field)), 0.1, usualMm, " mm");
  }

  /** Adds a problem that was found elsewhere. */
  public void add(Problem problem) {
    problems.add(problem);
  }

  /**
   * A length in mm, or null when empty or refused.
   *
   * @param check what is wrong with it or unlikely about it
   */
  public @Nullable Double length(String field, DoubleFunction<List<Problem>> check) {
    String text = text(field);
    if (text.isEmpty()) {
      return null;
    }
    Answer<Double> read =
        ReadNumber.length(text, lengthUnit, Place.field(field))
            .flatMap(
                mm -> {
                  List<Problem> found = check.apply(mm);
                  return found.stream().anyMatch(Problem::refuses)
                      ? Answer.bad(found)
                      : new Answer.Good<>(mm, found);
                });
    problems.addAll(read.problems());
    return read.isGood() ? read.value() : null;
  }

  /** A number, or null when empty; refused below least, asked about beyond the usual. */
  public @Nullable Double number(String field, double least, double usual) {
    String text = text(field);
    return text.isEmpty()
        ? null
        : bounded(field, ReadNumber.plain(text, Place.field(field)), least, usual, "");
  }

  private @Nullable Double bounded(
      String field, Answer<Double> read, double least, double usual, String unit) {
    problems.addAll(read.problems());
    if (!read.isGood()) {
      return null;
    }
    if (read.value() < least) {
      refuse(field, "number.too-small", Show.upTo(least, 2) + unit);
      return null;
    }
    if (read.value() > usual) {
      ask(field, "number.unlikely", Show.upTo(usual, 2) + unit);
    }
    return read.value();
  }

  public @Nullable Integer whole(String field, int least, int most) {
    String text = text(field);
    if (text.isEmpty()) {
      return null;
    }
    Answer<Integer> read = ReadNumber.whole(text, Place.field(field));
    problems.addAll(read.problems());
    if (read.isGood() && (read.value() < least || read.value() > most)) {
      refuse(field, "number.outside", least + " – " + most);
      return null;
    }
    return read.isGood() ? read.value() : null;
  }

  public <E extends Enum<E> & Keyed> @Nullable E choice(String field, Class<E> type) {
    String text = text(field).toLowerCase(Locale.ROOT);
    if (text.isEmpty()) {
      return null;
    }
    E found = Keyed.find(type, text);
    if (found == null) {
      List<String> keys = new ArrayList<>();
      for (E each : type.getEnumConstants()) {
        keys.add(each.key());
      }
      refuse(field, "choice.unknown", String.join(", ", keys));
    }
    return found;
  }

  /** Yes or no, or null when empty. */
  public @Nullable Boolean yes(String field) {
    return switch (text(field).toLowerCase(Locale.ROOT)) {
      case "" -> null;
      case "yes", "true", "1" -> Boolean.TRUE;
      case "no", "false", "0" -> Boolean.FALSE;
      default -> {
        refuse(field, "choice.unknown", "yes, no");
        yield null;
      }
    };
  }

  /** A day that has come: one after today is refused. */
  public @Nullable LocalDate dateUpTo(LocalDate today, String field) {
    LocalDate day = date(field);
    if (day != null && day.isAfter(today)) {
      refuse(field, "date.future", today.toString());
    }
    return day;
  }

  public @Nullable LocalDate date(String field) {
    String text = text(field);
    if (text.isEmpty()) {
      return null;
    }
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      refuse(field, "date.not-a-date", "2026-10-05");
      return null;
    }
  }
}
