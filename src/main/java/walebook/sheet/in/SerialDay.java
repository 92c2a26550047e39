package walebook.sheet.in;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Days as spreadsheets count them (ECMA-376 Part 1, 18.17.4.1): from 1 January 1900 as day 1, with
 * a 29 February 1900 as day 60 that never was, or from 1 January 1904 as day 0.
 */
public final class SerialDay {
  private static final int NEVER = 60;
  private static final double LAST = 2_958_465;
  private static final LocalDate BEFORE_1900 = LocalDate.of(1899, 12, 31);
  private static final LocalDate FROM_1904 = LocalDate.of(1904, 1, 1);

  private SerialDay() {}

  /** The day, or null where there is none: before the first, day 60, after the year 9999. */
  public static @Nullable LocalDate of(double serial, boolean from1904) {
    double whole = Math.floor(serial);
    if (!(whole >= (from1904 ? 0 : 1)) || whole > LAST) {
      return null;
    }
    long days = (long) whole;
    if (from1904) {
      return FROM_1904.plusDays(days);
    }
    if (days == NEVER) {
      return null;
    }
    return BEFORE_1900.plusDays(days < NEVER ? days : days - 1);
  }
}
