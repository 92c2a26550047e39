package walebook.quantity;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/**
 * Numbers as people type them: {@code 2.5}, {@code 2,5}, {@code 5/8}, {@code 2 1/2}, with or
 * without a unit of length behind. The comma is a decimal sign; grouping is not taken, since
 * nobody's test piece is a thousand long and a guess would be worse than a question.
 */
public final class ReadNumber {
  private static final String NUMBER = "(?:\\d+(?:[.,]\\d+)?|[.,]\\d+)";
  private static final Pattern FORM =
      Pattern.compile(
          "([+\\-−–]?)\\s*(?:(?:(\\d+)\\s+)?(\\d+)\\s*[/⁄]\\s*(\\d+)|(" + NUMBER + "))\\s*(.*)");
  private static final int LONGEST = 40;

  private ReadNumber() {}

  /** A plain number; a percent sign behind it is allowed and changes nothing. */
  public static Answer<Double> plain(String typed, Place place) {
    return read(typed, place)
        .flatMap(
            found ->
                found.rest.isEmpty() || found.rest.equals("%")
                    ? Answer.good(found.value)
                    : Answer.bad(Problem.refuse("number.letters", place, typed.strip(), "2.5")));
  }

  /** A whole number without decimals or fraction. */
  public static Answer<Integer> whole(String typed, Place place) {
    return plain(typed, place)
        .flatMap(
            value ->
                value == Math.rint(value) && Math.abs(value) <= 1_000_000
                    ? Answer.good((int) value.doubleValue())
                    : Answer.bad(Problem.refuse("number.not-whole", place, typed.strip(), "2")));
  }

  /**
   * A length in mm.
   *
   * @param usual the unit meant when none is typed
   */
  public static Answer<Double> length(String typed, Unit usual, Place place) {
    return read(typed, place)
        .flatMap(
            found -> {
              Unit unit = found.rest.isEmpty() ? usual : unit(found.rest);
              return unit == null
                  ? Answer.bad(Problem.refuse("length.unit", place, typed.strip(), "mm, cm, in"))
                  : Answer.good(found.value * unit.inBase());
            });
  }

  private static @Nullable Unit unit(String sign) {
    return switch (sign.toLowerCase(Locale.ROOT)) {
      case "mm" -> Unit.MM;
      case "cm" -> Unit.CM;
      case "m" -> Unit.METRE;
      case "in", "in.", "inch", "inches", "\"", "″" -> Unit.INCH;
      default -> null;
    };
  }

  private record Found(double value, String rest) {}

  private static Answer<Found> read(String typed, Place place) {
    String text = typed.strip();
    if (text.isEmpty()) {
      return Answer.bad(Problem.refuse("number.empty", place, "", "2.5"));
    }
    Matcher form = FORM.matcher(text);
    if (text.length() > LONGEST || !form.matches()) {
      return Answer.bad(Problem.refuse("number.not-a-number", place, shortened(text), "2.5"));
    }
    String rest = form.group(6).strip();
    if (rest.matches("[oOlI][0-9oOlI.,]*( ?(mm|cm|in|m|%))?")) {
      return Answer.bad(Problem.refuse("number.letter-for-digit", place, shortened(text), ""));
    }
    if (!rest.isEmpty()
        && (Character.isDigit(rest.charAt(0)) || ".,/".indexOf(rest.charAt(0)) >= 0)) {
      return Answer.bad(Problem.refuse("number.not-a-number", place, shortened(text), "2.5"));
    }
    double size;
    if (form.group(5) != null) {
      size = Double.parseDouble(form.group(5).replace(',', '.'));
    } else {
      double below = Double.parseDouble(form.group(4));
      if (below == 0) {
        return Answer.bad(Problem.refuse("number.not-a-number", place, shortened(text), "1/2"));
      }
      double whole = form.group(2) == null ? 0 : Double.parseDouble(form.group(2));
      size = whole + Double.parseDouble(form.group(3)) / below;
    }
    boolean negative = !form.group(1).isEmpty() && !form.group(1).equals("+");
    return Answer.good(new Found(negative ? -size : size, rest));
  }

  private static String shortened(String text) {
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
  }
}
