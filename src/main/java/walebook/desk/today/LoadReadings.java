package walebook.desk.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.compare.Names;
import walebook.quantity.Show;
import walebook.record.ClothReading;
import walebook.record.Lesson;
import walebook.record.PlannedReading;
import walebook.record.ReadingLine;
import walebook.words.Words;

/** Reads what a student is to measure from the book; never on the window's thread. */
record LoadReadings(Book book, Words words, Names names, LocalDate today) {

  /** Those of the lesson in hand, and what is open of others; older work is not for today. */
  MyReadings of(UUID classId, UUID studentId) {
    List<Lesson> lessons = book.lessons().of(classId);
    UUID inHand = inHand(lessons);
    List<ReadingLine> plan =
        book.readingPlans().of(classId, studentId).stream()
            .filter(each -> !each.isDone() || each.planned().lessonId().equals(inHand))
            .toList();
    return plan.isEmpty()
        ? MyReadings.NONE
        : new MyReadings(plan.stream().map(this::line).toList(), next(plan, lessons, inHand));
  }

  /** The last lesson that has begun is the one that the class is at. */
  private @Nullable UUID inHand(List<Lesson> lessons) {
    return lessons.stream()
        .filter(each -> !each.taughtOn().isAfter(today))
        .reduce((one, later) -> later)
        .map(Lesson::id)
        .orElse(null);
  }

  private MyReadings.Line line(ReadingLine each) {
    PlannedReading planned = each.planned();
    return new MyReadings.Line(
        planned.id(),
        words.say(
            "desk.today.reading.asks",
            cloth(planned),
            words.say("desk.today.grain." + planned.grain().key())),
        each.done(),
        planned.repeats(),
        each.measured().stream()
            .map(ClothReading::stretchPercent)
            .map(Show::percent)
            .collect(Collectors.joining(" · ")));
  }

  private MyReadings.@Nullable Next next(
      List<ReadingLine> plan, List<Lesson> lessons, @Nullable UUID inHand) {
    List<ReadingLine> open =
        plan.stream().filter(each -> !each.isDone() && each.planned().clothId() != null).toList();
    if (open.isEmpty()) {
      return null;
    }
    ReadingLine next =
        open.stream()
            .filter(each -> each.planned().lessonId().equals(inHand))
            .findFirst()
            .orElse(open.get(0));
    PlannedReading planned = next.planned();
    List<String> says = new ArrayList<>();
    says.add(cloth(planned));
    says.add(words.say("common.choice." + planned.grain().key()));
    says.add(words.say("desk.today.reading.nth", next.done() + 1, planned.repeats()));
    boolean atHand = planned.lessonId().equals(inHand);
    if (!atHand) {
      lessons.stream()
          .filter(each -> each.id().equals(planned.lessonId()))
          .findFirst()
          .ifPresent(
              each ->
                  says.add(
                      words.say("desk.today.reading.of-lesson", each.title(), each.taughtOn())));
    }
    return new MyReadings.Next(planned.id(), atHand, says);
  }

  private String cloth(PlannedReading planned) {
    String name =
        planned.clothId() == null ? "" : names.of(Objects.requireNonNull(planned.clothId()));
    return name.isEmpty() ? words.say("desk.today.cloth-open") : name;
  }
}
