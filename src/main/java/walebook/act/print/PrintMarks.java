package walebook.act.print;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.compare.assessed.AssessedClass;
import walebook.compare.assessed.AssessedPiece;
import walebook.compare.assessed.Coverage;
import walebook.compare.assessed.MarkWords;
import walebook.paper.MarkPaper;
import walebook.paper.PaperSize;
import walebook.problem.Answer;
import walebook.record.Criterion;
import walebook.record.Help;
import walebook.record.Lesson;
import walebook.record.Marking;
import walebook.record.PieceCheck;
import walebook.record.PieceCode;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.Term;
import walebook.record.Tutor;
import walebook.words.Words;

/** Prints the mark sheet for an assessor, of a class or of one student. */
public final class PrintMarks {
  private static final String NONE = "–";

  private final Book book;
  private final Words words;
  private final ZoneId zone;

  /** {@code zone} is the one that the last change is told in. */
  public PrintMarks(Book book, Words words, ZoneId zone) {
    this.book = book;
    this.words = words;
    this.zone = zone;
  }

  public Answer<Printed> print(PrintScope scope, PaperSize size, PrintFile file) {
    MarkPaper paper = book.inOneStep(() -> paper(scope));
    return file.write(words, pages -> pages.marks(size, paper));
  }

  private MarkPaper paper(PrintScope scope) {
    UUID only = scope.studentId();
    UUID lesson = scope.lessonId();
    AssessedClass assessed =
        AssessedClass.of(book, scope.classId())
            .only(
                only == null ? Set.of() : Set.of(only), lesson == null ? Set.of() : Set.of(lesson));
    CallStudents called =
        new CallStudents(book.enrolments().everyoneOf(scope.classId()), scope.naming(), words);
    Map<UUID, Coverage.Row> rows = new HashMap<>();
    assessed.coverage().rows().forEach(row -> rows.put(row.student().id(), row));
    List<MarkPaper.Part> parts = new ArrayList<>();
    List<MarkPaper.Covered> covered = new ArrayList<>();
    for (Student student : called.inOrder()) {
      Coverage.Row row = rows.get(student.id());
      List<AssessedPiece> own =
          assessed.pieces().stream().filter(each -> each.studentId().equals(student.id())).toList();
      if (row != null || !own.isEmpty()) {
        parts.add(part(called.of(student.id()), assessed, own));
      }
      if (row != null) {
        covered.add(
            new MarkPaper.Covered(
                called.of(student.id()),
                row.cells().stream().map(cell -> words.say(cell.says())).toList()));
      }
    }
    return new MarkPaper(
        words.say("act.print.marks.title"),
        lines(scope, assessed.term()),
        Arrays.stream(Marking.values()).map(each -> words.say(MarkWords.of(each))).toList(),
        parts,
        assessed.criteria().stream()
            .map(each -> new MarkPaper.Asked(each.code(), asks(each)))
            .toList(),
        covered,
        words.say(assessed.tallySays(zone)));
  }

  private String asks(Criterion criterion) {
    return criterion.looksAtAll()
        ? criterion.says()
        : words.say(
            "act.print.marks.looks-at",
            criterion.says(),
            MarkWords.of(criterion).stream().map(words::say).collect(Collectors.joining(", ")));
  }

  private MarkPaper.Part part(String who, AssessedClass assessed, List<AssessedPiece> own) {
    Map<UUID, String> titles =
        assessed.lessons().stream().collect(Collectors.toMap(Lesson::id, Lesson::title));
    List<MarkPaper.Row> rows = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (AssessedPiece each : own) {
      if (each.self() == null && each.tutor() == null) {
        others.add(PieceCode.spoken(each.code()));
      } else {
        rows.add(
            new MarkPaper.Row(
                PieceCode.spoken(each.code()),
                each.sewnOn().toString(),
                each.lessonId() == null ? "" : titles.getOrDefault(each.lessonId(), ""),
                assessed.codesOf(each),
                marks(each),
                beside(help(each.self()), help(each.tutor())),
                words.say(each.standing().says())));
      }
    }
    return new MarkPaper.Part(who, rows, others);
  }

  private static List<String> marks(AssessedPiece piece) {
    return Arrays.stream(Marking.values())
        .map(each -> beside(mark(piece.self(), each), mark(piece.tutor(), each)))
        .toList();
  }

  private static String beside(String self, String tutor) {
    return self + " | " + tutor;
  }

  private static String mark(@Nullable PieceCheck check, Marking marking) {
    Integer mark = check == null ? null : check.mark(marking);
    return mark == null ? NONE : mark.toString();
  }

  private String help(@Nullable PieceCheck check) {
    Help help = check == null ? null : check.help();
    return help == null ? NONE : words.say(MarkWords.of(help));
  }

  private List<String> lines(PrintScope scope, @Nullable Term term) {
    List<String> lines = new ArrayList<>();
    SchoolClass of = book.classes().find(scope.classId());
    if (of != null) {
      lines.add(words.say("act.print.term.class", of.name()));
    }
    if (term != null) {
      lines.add(words.say("act.print.term.term", term.name(), term.startsOn(), term.endsOn()));
    }
    UUID tutorId = of == null ? null : of.tutorId();
    Tutor tutor = tutorId == null ? null : book.tutors().find(tutorId);
    if (tutor != null && scope.naming() == Naming.NAME) {
      lines.add(words.say("act.print.term.tutor", tutor.name()));
    }
    return lines;
  }
}
