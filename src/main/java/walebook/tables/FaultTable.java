package walebook.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import walebook.seam.Cause;
import walebook.seam.Clue;
import walebook.seam.Factor;
import walebook.seam.Fault;
import walebook.seam.Remedy;
import walebook.seam.Trait;

/**
 * The fault catalogue. A remedy is written {@code wider zigzag {width,up,0.5 mm}}: what to try,
 * then the one factor, its direction and its step. A cause is written {@code stitch too long
 * {length>=3/1.5; 1 2}}: its clue, then the numbers of its remedies in order.
 */
final class FaultTable {
  private static final Pattern REMEDY =
      Pattern.compile("([^{}]+)\\{([a-z-]+),([a-z]+),([^{}]*)\\}");
  private static final Pattern CAUSE =
      Pattern.compile("([^{}]+)\\{([^{};]*);\\s*([0-9]+(?: [0-9]+)*)\\}");
  private static final Pattern CLUE = Pattern.compile("([a-z-]+)(=|<=|>=)([^/]+)(?:/([^/]+))?");
  private static final List<String> TIMES = List.of("sewn", "pressed", "stretched", "washed");
  private static final String CLUE_WANTED = "tension=higher/lower";

  static final CsvTable<Fault> FAULTS =
      new CsvTable<>(
          "faults.csv",
          List.of("key", "name", "looks_like", "causes", "remedies", "measure", "seen", "source"),
          FaultTable::fault);

  private FaultTable() {}

  private static Fault fault(TableRow row) {
    List<Remedy> remedies =
        row.texts("remedies", "|").stream().flatMap(text -> remedy(row, text)).toList();
    return new Fault(
        row.text("key"),
        row.text("name"),
        row.text("looks_like"),
        causes(row, remedies),
        remedies,
        row.text("measure"),
        seen(row),
        row.text("source"));
  }

  private static String seen(TableRow row) {
    String seen = row.text("seen");
    row.among(List.of(seen), "seen", TIMES);
    return seen;
  }

  private static Stream<Remedy> remedy(TableRow row, String text) {
    Matcher form = REMEDY.matcher(text);
    Factor factor = form.matches() ? keyed(Factor.values(), Factor::key, form.group(2)) : null;
    Remedy.Direction direction =
        form.matches()
            ? keyed(Remedy.Direction.values(), Remedy.Direction::key, form.group(3))
            : null;
    if (factor == null || direction == null) {
      row.refuse("table.remedy", "remedies", text, "longer stitch {length,up,0.5 mm}");
      return Stream.of();
    }
    return Stream.of(new Remedy(form.group(1).strip(), factor, direction, form.group(4).strip()));
  }

  private static List<Cause> causes(TableRow row, List<Remedy> remedies) {
    List<Cause> causes = new ArrayList<>();
    for (String text : row.texts("causes", "|")) {
      Matcher form = CAUSE.matcher(text);
      List<Remedy> own = form.matches() ? numbered(form.group(3), remedies) : List.of();
      if (own.isEmpty()) {
        row.refuse("table.cause", "causes", text, "tension too tight {tension=higher/lower; 1 2}");
      } else {
        causes.add(new Cause(form.group(1).strip(), clues(row, form.group(2)), own));
      }
    }
    return causes;
  }

  /** The remedies by their numbers; none when a number is not among them. */
  private static List<Remedy> numbered(String numbers, List<Remedy> remedies) {
    List<Integer> all = Arrays.stream(numbers.split(" ", -1)).map(Integer::valueOf).toList();
    return all.stream().allMatch(each -> each >= 1 && each <= remedies.size())
        ? all.stream().map(each -> remedies.get(each - 1)).toList()
        : List.of();
  }

  private static List<Clue> clues(TableRow row, String text) {
    List<Clue> clues = new ArrayList<>();
    for (String one : text.split("&", -1)) {
      if (!one.isBlank()) {
        Clue clue = clue(one.strip());
        if (clue == null) {
          row.refuse("table.clue", "causes", one.strip(), CLUE_WANTED);
        } else {
          clues.add(clue);
        }
      }
    }
    return clues;
  }

  private static @Nullable Clue clue(String text) {
    Matcher form = CLUE.matcher(text);
    Trait trait = form.matches() ? keyed(Trait.values(), Trait::key, form.group(1)) : null;
    if (trait == null) {
      return null;
    }
    String rulesOut = form.group(4);
    if (form.group(2).equals("=")) {
      return new Clue.Words(
          trait, words(form.group(3)), rulesOut == null ? List.of() : words(rulesOut));
    }
    try {
      return new Clue.Size(
          trait,
          form.group(2).equals(">="),
          Double.parseDouble(form.group(3)),
          rulesOut == null ? null : Double.valueOf(rulesOut));
    } catch (NumberFormatException e) {
      return null;
    }
  }

  private static List<String> words(String text) {
    return Arrays.stream(text.split(",", -1)).map(String::strip).toList();
  }

  private static <E> @Nullable E keyed(E[] all, Function<E, String> key, String wanted) {
    return Arrays.stream(all)
        .filter(each -> key.apply(each).equals(wanted))
        .findFirst()
        .orElse(null);
  }
}
