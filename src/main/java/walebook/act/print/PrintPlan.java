package walebook.act.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.act.lesson.ReadTaught;
import walebook.book.Book;
import walebook.lesson.LessonPack;
import walebook.lesson.ReadPack;
import walebook.paper.PaperSize;
import walebook.paper.PlanPaper;
import walebook.problem.Answer;
import walebook.record.Cloth;
import walebook.record.Lesson;
import walebook.record.PlannedReading;
import walebook.record.ReadingLine;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Prints who sews or measures what, for the wall. */
public final class PrintPlan {
  private final Book book;
  private final Words words;
  private final SharedTables tables;

  public PrintPlan(Book book, Words words, SharedTables tables) {
    this.book = book;
    this.words = words;
    this.tables = tables;
  }

  public Answer<Printed> print(PrintScope scope, PaperSize size, PrintFile file) {
    PlanPaper plan = book.inOneStep(() -> plan(scope));
    return file.write(words, pages -> pages.plan(size, plan));
  }

  private PlanPaper plan(PrintScope scope) {
    GatherPieces gather = new GatherPieces(book, scope, words, tables);
    Map<UUID, List<ReadingLine>> readings =
        book.readingPlans().ofClass(scope.classId()).stream()
            .filter(
                each ->
                    scope.lessonId() == null || scope.lessonId().equals(each.planned().lessonId()))
            .collect(Collectors.groupingBy(each -> each.planned().studentId()));
    List<PlanPaper.Part> parts = new ArrayList<>();
    for (Student student : gather.students()) {
      List<PlanPaper.Piece> pieces = new ArrayList<>();
      for (PieceLine line : gather.of(student.id())) {
        if (line.planned() != null) {
          pieces.add(
              new PlanPaper.Piece(
                  gather.wording().spoken(line),
                  gather.wording().cloth(line),
                  gather.wording().settings(line),
                  line.control(),
                  line.logged() != null ? words.say("paper.plan.logged") : ""));
        }
      }
      readings.getOrDefault(student.id(), List.of()).forEach(each -> pieces.add(reading(each)));
      if (!pieces.isEmpty()) {
        parts.add(new PlanPaper.Part(gather.called().of(student.id()), pieces));
      }
    }
    Lesson lesson = gather.lesson();
    SchoolClass of = book.classes().find(scope.classId());
    String name = of == null ? "" : of.name();
    String when =
        lesson == null ? name : words.say("act.print.when", name, lesson.taughtOn().toString());
    return new PlanPaper(gather.title(), when, question(lesson), parts);
  }

  /** A cloth to measure has no label, so no code. */
  private PlanPaper.Piece reading(ReadingLine line) {
    PlannedReading planned = line.planned();
    UUID clothId = planned.clothId();
    Cloth cloth = clothId == null ? null : book.cloths().find(clothId);
    String done =
        line.measured().isEmpty()
            ? ""
            : words.say("act.print.readings-done", line.done(), planned.repeats());
    return new PlanPaper.Piece(
        "",
        cloth == null ? "" : cloth.name(),
        words.say(
            "act.print.readings",
            words.say("common.choice." + planned.grain().key()),
            planned.repeats()),
        planned.control(),
        done);
  }

  private String question(@Nullable Lesson lesson) {
    if (lesson == null) {
      return "";
    }
    Answer<LessonPack> pack = new ReadTaught(book, new ReadPack()).pack(lesson.packId());
    return pack.isGood() ? pack.value().plan().question() : "";
  }
}
