package walebook.act.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.MyPlan;
import walebook.book.Book;
import walebook.record.Lesson;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Reads the pieces of a class that are to be printed, and how everything about them is called. */
final class GatherPieces {
  private final Book book;
  private final PrintScope scope;
  private final CallStudents called;
  private final PieceWording wording;
  private final Map<UUID, Lesson> lessons;

  GatherPieces(Book book, PrintScope scope, Words words, SharedTables tables) {
    this.book = book;
    this.scope = scope;
    this.called =
        new CallStudents(book.enrolments().studentsOf(scope.classId()), scope.naming(), words);
    this.wording = new PieceWording(words, tables, book);
    this.lessons =
        book.lessons().of(scope.classId()).stream()
            .collect(Collectors.toMap(Lesson::id, each -> each));
  }

  CallStudents called() {
    return called;
  }

  PieceWording wording() {
    return wording;
  }

  /** The lesson asked for, else the class, by name; empty when there is none. */
  String title() {
    Lesson lesson = lesson();
    if (lesson != null) {
      return lesson.title();
    }
    SchoolClass of = book.classes().find(scope.classId());
    return of == null ? "" : of.name();
  }

  @Nullable Lesson lesson() {
    UUID id = scope.lessonId();
    return id == null ? null : lessons.get(id);
  }

  List<Student> students() {
    return called.inOrder().stream()
        .filter(each -> scope.studentId() == null || each.id().equals(scope.studentId()))
        .toList();
  }

  /** Everybody's pieces, one student after the other. */
  List<PieceLine> all() {
    List<PieceLine> all = new ArrayList<>();
    students().forEach(each -> all.addAll(of(each.id())));
    return all;
  }

  /** A student's pieces: those planned in their order, then those sewn without a plan. */
  List<PieceLine> of(UUID studentId) {
    MyPlan plan = MyPlan.of(book, scope.classId(), studentId);
    List<PieceLine> lines = new ArrayList<>();
    for (MyPlan.Line each : plan.lines()) {
      if (isWanted(each.planned().lessonId())) {
        lines.add(
            new PieceLine(
                studentId,
                each.logged() == null ? each.planned().code() : each.logged().code(),
                lessons.get(each.planned().lessonId()),
                each.planned(),
                each.logged()));
      }
    }
    plan.own().stream()
        .sorted(
            Comparator.comparing((TestPiece each) -> each.whose().sewnOn())
                .thenComparing(TestPiece::code))
        .filter(each -> isWanted(each.whose().lessonId()))
        .forEach(each -> lines.add(own(studentId, each)));
    return lines;
  }

  private PieceLine own(UUID studentId, TestPiece piece) {
    UUID lesson = piece.whose().lessonId();
    return new PieceLine(
        studentId, piece.code(), lesson == null ? null : lessons.get(lesson), null, piece);
  }

  private boolean isWanted(@Nullable UUID lessonId) {
    return scope.lessonId() == null || scope.lessonId().equals(lessonId);
  }
}
