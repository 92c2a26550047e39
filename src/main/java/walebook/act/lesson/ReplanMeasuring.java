package walebook.act.lesson;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import walebook.book.Book;
import walebook.lesson.ClassToPlan;
import walebook.lesson.PlanReadings;
import walebook.lesson.ReadingsPlan;
import walebook.lesson.Replan;
import walebook.lesson.ReplanReadings;
import walebook.record.Lesson;
import walebook.record.PlannedReading;
import walebook.record.ReadingLine;
import walebook.record.Stamp;
import walebook.record.Student;

/** Plans a lesson of readings again; what has one reading or more stays with its student. */
record ReplanMeasuring(Book book, Clock clock) {

  ReplanLesson.Replanned replan(
      Lesson lesson, ReadingsPlan plan, PlanLimits limits, List<Student> students, long seed) {
    List<ReadingLine> now = book.readingPlans().of(lesson.id());
    PlanReadings.Ask ask =
        new PlanReadings.Ask(
            plan,
            new ClassToPlan(
                limits.of(students),
                PlannedCloths.ofReadings(now),
                leftOut(plan, now, limits),
                seed));
    Replan.Change<PlanReadings.ToMeasure, ReadingsPlan.Cell> change =
        ReplanReadings.of(ask, soFar(now));
    return book.inOneStep(() -> save(lesson, now, change));
  }

  private static ReadingsPlan.Cell cell(ReadingLine line) {
    return new ReadingsPlan.Cell(line.planned().slot(), line.planned().grain());
  }

  private static List<String> leftOut(ReadingsPlan plan, List<ReadingLine> now, PlanLimits limits) {
    return limits.leftOutOf(
        plan.cells().stream().map(ReadingsPlan.Cell::label).toList(),
        now.stream().map(each -> cell(each).label()).toList());
  }

  private static List<Replan.Has<ReadingsPlan.Cell>> soFar(List<ReadingLine> now) {
    List<Replan.Has<ReadingsPlan.Cell>> all = new ArrayList<>();
    now.stream()
        .collect(Collectors.groupingBy(each -> each.planned().studentId()))
        .forEach(
            (student, lines) -> {
              Map<Boolean, List<ReadingsPlan.Cell>> begun =
                  lines.stream()
                      .collect(
                          Collectors.partitioningBy(
                              each -> !each.measured().isEmpty(),
                              Collectors.mapping(ReplanMeasuring::cell, Collectors.toList())));
              int last = lines.stream().mapToInt(each -> each.planned().place()).max().orElse(0);
              all.add(
                  new Replan.Has<>(
                      student,
                      begun.getOrDefault(true, List.of()),
                      begun.getOrDefault(false, List.of()),
                      last));
            });
    return all;
  }

  private ReplanLesson.Replanned save(
      Lesson lesson,
      List<ReadingLine> now,
      Replan.Change<PlanReadings.ToMeasure, ReadingsPlan.Cell> change) {
    List<PlannedReading> back = new ArrayList<>();
    for (Replan.Back<ReadingsPlan.Cell> each : change.back()) {
      for (ReadingLine line : now) {
        if (line.planned().studentId().equals(each.student()) && cell(line).equals(each.cell())) {
          PlannedReading dropped = line.planned().takenBack(clock.instant());
          book.readingPlans().replan(dropped);
          back.add(dropped);
        }
      }
    }
    List<PlannedReading> added =
        HandOut.readings(change.added(), lesson.id(), Stamp.fresh(clock.instant()));
    book.readingPlans().plan(added);
    return new ReplanLesson.Replanned(lesson, List.of(), List.of(), added, back);
  }
}
