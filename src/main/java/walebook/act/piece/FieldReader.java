package walebook.act.piece;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.ReadMinutes;
import walebook.quantity.ReadNumber;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.Keyed;

/**
 * Reads typed fields one by one and gathers every problem on the way; empty fields read as null.
 */
final class FieldReader {
  private final PieceEntry entry;
  private final Unit lengthUnit;
  private final List<Problem> problems = new ArrayList<>();

  FieldReader(PieceEntry entry, Unit lengthUnit) {
    this.entry = entry;
    this.lengthUnit = lengthUnit;
  }

  List<Problem> problems() {
    return problems;
  }

  String text(PieceField field) {
    return entry.at(field);
  }

  void refuse(PieceField field, String code, String wanted) {
    problems.add(Problem.refuse(code, place(field), entry.at(field), wanted));
  }

  void ask(PieceField field, String code, String wanted) {
    problems.add(Problem.ask(code, place(field), entry.at(field), wanted));
  }

  static Place place(PieceField field) {
    return Place.field(field.key());
  }

  /** A number from least up; asked about beyond usual. */
  @Nullable Double number(PieceField field, double least, double usual) {
    String typed = entry.at(field);
    return typed.isEmpty()
        ? null
        : bounded(field, ReadNumber.plain(typed, place(field)), least, usual, "");
  }

  /** A length above 0, in mm; asked about beyond usual. */
  @Nullable Double length(PieceField field, double usualMm) {
    String typed = entry.at(field);
    return typed.isEmpty()
        ? null
        : bounded(field, ReadNumber.length(typed, lengthUnit, place(field)), 0.1, usualMm, " mm");
  }

  private @Nullable Double bounded(
      PieceField field, Answer<Double> read, double least, double usual, String unit) {
    problems.addAll(read.problems());
    if (!read.isGood()) {
      return null;
    }
    double value = read.value();
    if (value < least) {
      refuse(field, "number.too-small", Show.upTo(least, 2) + unit);
      return null;
    }
    if (value > usual) {
      ask(field, "number.unlikely", Show.upTo(usual, 2) + unit);
    }
    return value;
  }

  /** Minutes above 0 up to most; asked about beyond usual. */
  @Nullable Double minutes(PieceField field, double most, double usual) {
    String typed = entry.at(field);
    if (typed.isEmpty()) {
      return null;
    }
    Answer<Double> read = ReadMinutes.read(typed, place(field));
    problems.addAll(read.problems());
    if (!read.isGood()) {
      return null;
    }
    double value = read.value();
    if (value <= 0 || value > most) {
      refuse(field, "minutes.outside", Show.upTo(most, 0));
      return null;
    }
    if (value > usual) {
      ask(field, "minutes.unlikely", Show.upTo(usual, 0));
    }
    return value;
  }

  @Nullable Integer whole(PieceField field, int least, int most) {
    String typed = entry.at(field);
    if (typed.isEmpty()) {
      return null;
    }
    Answer<Integer> read = ReadNumber.whole(typed, place(field));
    problems.addAll(read.problems());
    if (read.isGood() && (read.value() < least || read.value() > most)) {
      refuse(field, "number.outside", least + " – " + most);
      return null;
    }
    return read.isGood() ? read.value() : null;
  }

  <E extends Enum<E> & Keyed> @Nullable E choice(PieceField field, Class<E> type) {
    String typed = entry.at(field).toLowerCase(Locale.ROOT);
    if (typed.isEmpty()) {
      return null;
    }
    E found = Keyed.find(type, typed);
    if (found == null) {
      refuse(field, "choice.unknown", keys(type));
    }
    return found;
  }

  private static <E extends Enum<E> & Keyed> String keys(Class<E> type) {
    List<String> keys = new ArrayList<>();
    for (E each : type.getEnumConstants()) {
      keys.add(each.key());
    }
    return String.join(", ", keys);
  }

  /** One of a list by its key, by its full name, or by the only name that begins so. */
  <T> @Nullable T named(PieceField field, Map<String, T> byName) {
    String typed = entry.at(field);
    if (typed.isEmpty()) {
      return null;
    }
    T exact = byName.get(typed);
    if (exact != null) {
      return exact;
    }
    String start = typed.toLowerCase(Locale.ROOT);
    List<T> same =
        byName.entrySet().stream()
            .filter(each -> each.getKey().toLowerCase(Locale.ROOT).equals(start))
            .map(Map.Entry::getValue)
            .distinct()
            .toList();
    if (same.size() == 1) {
      return same.get(0);
    }
    List<T> near =
        byName.entrySet().stream()
            .filter(each -> each.getKey().toLowerCase(Locale.ROOT).startsWith(start))
            .map(Map.Entry::getValue)
            .distinct()
            .toList();
    if (near.size() == 1) {
      return near.get(0);
    }
    refuse(field, near.isEmpty() ? "choice.unknown" : "choice.several", names(byName));
    return null;
  }

  private static String names(Map<String, ?> byName) {
    return String.join(
        ", ", byName.keySet().stream().filter(name -> name.length() != 36).limit(12).toList());
  }

  @Nullable LocalDate date(PieceField field) {
    String typed = entry.at(field);
    if (typed.isEmpty()) {
      return null;
    }
    try {
      return LocalDate.parse(typed);
    } catch (DateTimeParseException e) {
      refuse(field, "date.not-a-date", "2026-10-05");
      return null;
    }
  }
}
