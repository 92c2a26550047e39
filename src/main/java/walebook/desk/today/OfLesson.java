package walebook.desk.today;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.desk.common.DayWords;
import walebook.record.Lesson;
import walebook.words.Words;

/**
 * Of which lesson a thing to do is.
 *
 * @param lessons those of the class, earliest first
 * @param inHand the one that the class is at; null when there is none
 */
record OfLesson(Words words, List<Lesson> lessons, @Nullable Lesson inHand) {
  OfLesson {
    lessons = List.copyOf(lessons);
  }

  static OfLesson read(Book book, Words words, UUID classId, LocalDate today) {
    List<Lesson> lessons = book.lessons().of(classId);
    return new OfLesson(words, lessons, Lesson.inHand(lessons, today));
  }

  boolean isInHand(UUID lessonId) {
    return inHand != null && inHand.id().equals(lessonId);
  }

  /** Left over of an earlier lesson, or of one to come; empty for the lesson in hand. */
  String says(UUID lessonId) {
    Lesson of =
        lessons.stream().filter(each -> each.id().equals(lessonId)).findFirst().orElse(null);
    if (of == null || isInHand(lessonId)) {
      return "";
    }
    boolean earlier = inHand == null || lessons.indexOf(of) < lessons.indexOf(inHand);
    return words.say(
        earlier ? "desk.today.left-over" : "desk.today.to-come",
        of.title(),
        DayWords.of(of.taughtOn()));
  }
}
