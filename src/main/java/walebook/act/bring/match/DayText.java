package walebook.act.bring.match;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/**
 * Days as people write them: {@code 2026-10-05} (ISO 8601), {@code 5.10.2026}, {@code 5/10/2026},
 * {@code 10/5/2026}; a time behind is passed over, two digits of a year are of this century.
 */
public final class DayText {
  private static final Pattern ISO =
      Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})(?:[T ].*)?");
  private static final Pattern DOTS =
      Pattern.compile("(\\d{1,2})\\.\\s?(\\d{1,2})\\.\\s?(\\d{4}|\\d{2})(?: .*)?");
  private static final Pattern SLASHES =
      Pattern.compile("(\\d{1,2})[/-](\\d{1,2})[/-](\\d{4}|\\d{2})(?: .*)?");
  private static final int MONTHS = 12;
  private static final int CENTURY = 2000;
  private static final int FIRST_YEAR = 1900;

  private DayText() {}

  /** Which order the days of a table are written in, as far as they tell. */
  public static DayOrder order(List<String> all) {
    boolean dayFirst = false;
    boolean monthFirst = false;
    for (String each : all) {
      Matcher slashes = SLASHES.matcher(each.strip());
      if (slashes.matches()) {
        dayFirst |= Integer.parseInt(slashes.group(1)) > MONTHS;
        monthFirst |= Integer.parseInt(slashes.group(2)) > MONTHS;
      }
    }
    if (dayFirst == monthFirst) {
      return DayOrder.UNKNOWN;
    }
    return dayFirst ? DayOrder.DAY_FIRST : DayOrder.MONTH_FIRST;
  }

  /** True for a day that reads as two different ones. */
  public static boolean isAmbiguous(String text) {
    Matcher slashes = SLASHES.matcher(text.strip());
    return slashes.matches()
        && Integer.parseInt(slashes.group(1)) <= MONTHS
        && Integer.parseInt(slashes.group(2)) <= MONTHS
        && !slashes.group(1).equals(slashes.group(2));
  }

  /** The day, or what is wrong with it. */
  public static Answer<LocalDate> read(String text, DayOrder order, Place place) {
    String typed = text.strip();
    Matcher iso = ISO.matcher(typed);
    if (iso.matches()) {
      return day(typed, iso.group(1), iso.group(2), iso.group(3), place);
    }
    Matcher dots = DOTS.matcher(typed);
    if (dots.matches()) {
      return day(typed, dots.group(3), dots.group(2), dots.group(1), place);
    }
    Matcher slashes = SLASHES.matcher(typed);
    if (!slashes.matches()) {
      return Answer.bad(Problem.refuse("date.not-a-date", place, shortened(typed), "2026-10-05"));
    }
    if (order == DayOrder.UNKNOWN && isAmbiguous(typed)) {
      return Answer.bad(Problem.refuse("bring.day-order", place, typed, ""));
    }
    boolean dayFirst =
        order == DayOrder.DAY_FIRST
            || (order == DayOrder.UNKNOWN && Integer.parseInt(slashes.group(1)) > MONTHS);
    return dayFirst
        ? day(typed, slashes.group(3), slashes.group(2), slashes.group(1), place)
        : day(typed, slashes.group(3), slashes.group(1), slashes.group(2), place);
  }

  private static Answer<LocalDate> day(
      String typed, String year, String month, String day, Place place) {
    int full = Integer.parseInt(year) + (year.length() == 2 ? CENTURY : 0);
    try {
      LocalDate date = LocalDate.of(full, Integer.parseInt(month), Integer.parseInt(day));
      return full < FIRST_YEAR
          ? Answer.bad(Problem.refuse("in.no-day", place, typed, ""))
          : Answer.good(date);
    } catch (DateTimeException e) {
      return Answer.bad(Problem.refuse("date.not-a-date", place, shortened(typed), "2026-10-05"));
    }
  }

  private static String shortened(String text) {
    return text.length() > 40 ? text.substring(0, 40) + "…" : text;
  }
}
