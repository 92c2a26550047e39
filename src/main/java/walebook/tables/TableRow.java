package walebook.tables;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import walebook.problem.Place;
import walebook.problem.Problem;

/** One row of a reference table being read; what is wrong is kept, and reading goes on. */
final class TableRow {
  private final String file;
  private final int line;
  private final List<String> columns;
  private final CSVRecord record;
  private final Set<Problem> problems = new LinkedHashSet<>();

  TableRow(String file, int line, List<String> columns, CSVRecord record) {
    this.file = file;
    this.line = line;
    this.columns = columns;
    this.record = record;
  }

  /** A text that must be there. */
  String text(String column) {
    String found = textOrEmpty(column);
    if (found.isEmpty()) {
      refuse("table.empty", column, "", "");
    }
    return found;
  }

  /** A text, empty when the cell is. */
  String textOrEmpty(String column) {
    return record.isSet(column) ? record.get(column).strip() : "";
  }

  /** Several texts with this sign between them, at least one. */
  List<String> texts(String column, String between) {
    return Arrays.stream(text(column).split(Pattern.quote(between)))
        .map(String::strip)
        .filter(part -> !part.isEmpty())
        .toList();
  }

  /** A number with a decimal point; nought beside a problem when it is none. */
  double number(String column) {
    String found = text(column);
    try {
      double value = Double.parseDouble(found);
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      refuse("table.number", column, found, "");
      return 0;
    }
    refuse("table.number", column, found, "");
    return 0;
  }

  /** A whole number. */
  int whole(String column) {
    double value = number(column);
    if (value != Math.rint(value)) {
      refuse("table.whole", column, textOrEmpty(column), "");
    }
    return (int) value;
  }

  /** A whole number, or null for an empty cell. */
  @Nullable Integer wholeOrNull(String column) {
    return textOrEmpty(column).isEmpty() ? null : whole(column);
  }

  /** {@code yes} or {@code no}. */
  boolean yes(String column) {
    String found = text(column);
    if (!found.equals("yes") && !found.equals("no")) {
      refuse("table.yes-no", column, found, "");
    }
    return found.equals("yes");
  }

  /** Checks that each word is one of those allowed. */
  List<String> among(List<String> words, String column, List<String> allowed) {
    for (String word : words) {
      if (!allowed.contains(word)) {
        refuse("table.word", column, word, String.join(", ", allowed));
      }
    }
    return words;
  }

  void unique(String column, Set<String> seen) {
    String key = text(column);
    if (!key.isEmpty() && !seen.add(key)) {
      refuse("table.duplicate", column, key, "");
    }
  }

  void refuse(String code, String column, String found, String wanted) {
    Place place = new Place.Spot(file, line, columns.indexOf(column) + 1, column);
    problems.add(Problem.refuse(code, place, found, wanted));
  }

  /** A value that refuses to be built: told once, unless a cell's own problem says why. */
  void wrong(IllegalArgumentException e) {
    if (problems.isEmpty()) {
      refuse("table.range", columns.get(0), String.valueOf(e.getMessage()), "");
    }
  }

  List<Problem> problems() {
    return List.copyOf(problems);
  }
}
