package walebook.book.sqlite;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.temporal.WeekFields;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import walebook.book.BookCopy;

/**
 * Which copies go with age. All of the last day stay, then the newest of each day for a week, of
 * each week for a quarter, of each month ever after. Copies made before the shape changed stay.
 */
public final class Thinning {
  private static final Duration ALL = Duration.ofDays(1);
  private static final int DAYS = 7;
  private static final int WEEKS_DAYS = 91;

  private Thinning() {}

  /**
   * The copies to let go; never all of them.
   *
   * @param zone whose midnights part the days
   */
  public static List<BookCopy> goers(List<BookCopy> copies, Instant now, ZoneId zone) {
    List<BookCopy> newestFirst = new ArrayList<>(copies);
    newestFirst.sort(Comparator.comparing(BookCopy::madeAt).reversed());
    Set<String> taken = new HashSet<>();
    List<BookCopy> goers = new ArrayList<>();
    for (BookCopy each : newestFirst) {
      boolean stays =
          each.why() == BookCopy.Why.BEFORE_MIGRATION
              || each.madeAt().isAfter(now.minus(ALL))
              || taken.add(span(each.madeAt(), now, zone));
      if (!stays) {
        goers.add(each);
      }
    }
    return goers;
  }

  /** The span of time that a copy shares with those of which only the newest stays. */
  private static String span(Instant madeAt, Instant now, ZoneId zone) {
    LocalDate day = madeAt.atZone(zone).toLocalDate();
    LocalDate today = now.atZone(zone).toLocalDate();
    if (day.isAfter(today.minusDays(DAYS + 1L))) {
      return "day " + day;
    }
    if (day.isAfter(today.minusDays(WEEKS_DAYS + 1L))) {
      return "week "
          + day.get(WeekFields.ISO.weekBasedYear())
          + " "
          + day.get(WeekFields.ISO.weekOfWeekBasedYear());
    }
    return "month " + YearMonth.from(day);
  }
}
