package walebook.desk.classroom;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.Lesson;
import walebook.words.Words;

/**
 * One of the things a comparison can be narrowed to.
 *
 * @param id null for all of them
 * @param name as shown
 */
record Choice(@Nullable UUID id, String name) {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter DAY_OF_YEAR =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

  /** A lesson by its day, then its title: lessons often begin with the same words. */
  static Choice of(Lesson lesson, Words words) {
    return new Choice(lesson.id(), words.say("desk.class.lesson-on", day(lesson), lesson.title()));
  }

  /** The day of a lesson, short. */
  static String day(Lesson lesson) {
    return DAY.format(lesson.taughtOn());
  }

  /** A day with its year, for what may lie terms ago. */
  static String dayOfYear(LocalDate day) {
    return DAY_OF_YEAR.format(day);
  }
}
