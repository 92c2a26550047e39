package walebook.desk.classroom;

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

  /** A lesson by its day, then its title: lessons often begin with the same words. */
  static Choice of(Lesson lesson, Words words) {
    return new Choice(lesson.id(), words.say("desk.class.lesson-on", day(lesson), lesson.title()));
  }

  /** The day of a lesson, short. */
  static String day(Lesson lesson) {
    return DAY.format(lesson.taughtOn());
  }
}
