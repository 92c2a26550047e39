package walebook.desk.common;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How a day reads in the window, with its year: it may lie terms ago. Typed it is 2026-10-05. */
public final class DayWords {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

  private DayWords() {}

  /** Such as {@code 5 Oct 2026}. */
  public static String of(LocalDate day) {
    return DAY.format(day);
  }
}
