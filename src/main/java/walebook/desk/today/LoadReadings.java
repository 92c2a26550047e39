package walebook.desk.today;

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
import walebook.record.PlannedReading;
import walebook.record.ReadingLine;
import walebook.words.Words;

/** Reads what a student is to measure from the book; never on the window's thread. */
record LoadReadings(Book book, Words words, Names names, OfLesson lessons) {

  /** Those of the lesson in hand, and what is open of others; older work is not for today. */
  MyReadings of(UUID classId, UUID studentId) {
    List<ReadingLine> plan =
        book.readingPlans().of(classId, studentId).stream()
            .filter(each -> !each.isDone() || lessons.isInHand(each.planned().lessonId()))
            .toList();
    return plan.isEmpty()
        ? MyReadings.NONE
        : new MyReadings(plan.stream().map(this::line).toList(), next(plan));
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

  private MyReadings.@Nullable Next next(List<ReadingLine> plan) {
    List<ReadingLine> open =
        plan.stream().filter(each -> !each.isDone() && each.planned().clothId() != null).toList();
    if (open.isEmpty()) {
      return null;
    }
    ReadingLine next =
        open.stream()
            .filter(each -> lessons.isInHand(each.planned().lessonId()))
            .findFirst()
            .orElse(open.get(0));
    PlannedReading planned = next.planned();
    List<String> says = new ArrayList<>();
    says.add(cloth(planned));
    says.add(words.say("common.choice." + planned.grain().key()));
    says.add(words.say("desk.today.reading.nth", next.done() + 1, planned.repeats()));
    String ofLesson = lessons.says(planned.lessonId());
    if (!ofLesson.isEmpty()) {
      says.add(ofLesson);
    }
    return new MyReadings.Next(planned.id(), ofLesson.isEmpty(), says);
  }

  private String cloth(PlannedReading planned) {
    String name =
        planned.clothId() == null ? "" : names.of(Objects.requireNonNull(planned.clothId()));
    return name.isEmpty() ? words.say("desk.today.cloth-open") : name;
  }
}
