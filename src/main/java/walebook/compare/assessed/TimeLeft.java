package walebook.compare.assessed;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.working.Message;

/**
 * How much of the term is left on a day.
 *
 * @param days until the last day of the term; 0 on that day, below 0 after it
 * @param lessons how many of the lessons in the book are still to come, that day's included
 */
public record TimeLeft(When when, long days, int lessons) {
  /** From so many days before the end on, what is missing is warned of. */
  public static final int WARNING_DAYS = 14;

  /** How near the end is. */
  public enum When {
    /** The book has no term for the class. */
    UNKNOWN,
    EARLY,
    /** Two weeks or less. */
    SOON,
    OVER
  }

  /** The time left on {@code today}; {@code endsOn} is null when the class has no term. */
  public static TimeLeft of(@Nullable LocalDate endsOn, List<LocalDate> lessons, LocalDate today) {
    int left = (int) lessons.stream().filter(each -> !each.isBefore(today)).count();
    if (endsOn == null) {
      return new TimeLeft(When.UNKNOWN, 0, left);
    }
    long days = ChronoUnit.DAYS.between(today, endsOn);
    return new TimeLeft(
        days < 0 ? When.OVER : days <= WARNING_DAYS ? When.SOON : When.EARLY, days, left);
  }

  /** True from two weeks before the end on. */
  public boolean isWarning() {
    return when == When.SOON || when == When.OVER;
  }

  /**
   * What that means for what is missing, in a sentence.
   *
   * @param gaps how many criteria are not covered, over all students
   */
  public Message says(int gaps) {
    String count = String.valueOf(gaps);
    String left = String.valueOf(Math.abs(days));
    String toCome = String.valueOf(lessons);
    return switch (when) {
      case UNKNOWN -> Message.of("compare.assessed.no-term", count);
      case EARLY -> Message.of("compare.assessed.early", count, left, toCome);
      case SOON -> Message.of("compare.assessed.soon", count, left, toCome);
      case OVER -> Message.of("compare.assessed.over", count, left);
    };
  }
}
