package walebook.act.print;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.act.lesson.ReadTaught;
import walebook.book.Book;
import walebook.lesson.LessonPack;
import walebook.lesson.ReadPack;
import walebook.paper.PaperSize;
import walebook.paper.PlanPaper;
import walebook.problem.Answer;
import walebook.record.Lesson;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Prints who sews what, for the wall. */
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
                  line.logged() != null));
        }
      }
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

  private String question(@Nullable Lesson lesson) {
    if (lesson == null) {
      return "";
    }
    Answer<LessonPack> pack = new ReadTaught(book, new ReadPack()).pack(lesson.packId());
    return pack.isGood() ? pack.value().plan().question() : "";
  }
}
