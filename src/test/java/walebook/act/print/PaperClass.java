package walebook.act.print;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import walebook.act.lesson.KeepPack;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.lesson.Packs;
import walebook.paper.PaperProgress;
import walebook.record.Grain;
import walebook.record.Lesson;
import walebook.record.MachineKind;
import walebook.record.Method;
import walebook.record.Needle;
import walebook.record.NeedlePoint;
import walebook.record.PieceAsked;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.record.Tier;
import walebook.record.Whose;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** The small invented class with a lesson that it took up, and pieces planned as tests need. */
final class PaperClass implements AutoCloseable {
  static final Words WORDS = Words.english();
  static final SharedTables TABLES = SharedTables.read();

  final Classroom room;
  final Lesson lesson;
  private final Random codes = new Random(23);
  private final Set<String> taken = new HashSet<>();

  private PaperClass(Classroom room) {
    this.room = room;
    lesson =
        new Lesson(
            Ids.next(),
            room.schoolClass.id(),
            KeepPack.in(room.book, Packs.seam(), Classroom.FRESH),
            "A seam that stretches",
            LocalDate.of(2026, 10, 5),
            Classroom.FRESH);
    room.book.lessons().add(lesson);
  }

  static PaperClass in(Path folder) {
    return new PaperClass(Classroom.in(folder.resolve("class.walebook")));
  }

  /** Adds students who are called by this and a number. */
  List<Student> enrol(String name, int count) {
    List<Student> added = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Student student =
          new Student(
              Ids.next(),
              count == 1 ? name : name + " " + (i + 1),
              "X" + (100 + i + name.hashCode() % 50),
              Tier.STANDARD,
              Classroom.FRESH);
      room.book.students().add(student);
      room.book.enrolments().join(room.schoolClass.id(), student.id(), LocalDate.of(2026, 9, 7));
      added.add(student);
    }
    return added;
  }

  /** Plans so many zigzag pieces for a student, the first the control. */
  List<PlannedPiece> plan(Student student, int count) {
    List<PlannedPiece> plan = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      plan.add(
          new PlannedPiece(
              Ids.next(),
              lesson.id(),
              student.id(),
              code(),
              i + 1,
              i == 0,
              false,
              "",
              room.cloth.id(),
              new PieceAsked(
                  Grain.COURSE,
                  2,
                  Method.SEAM,
                  MachineKind.SEWING,
                  "304",
                  1 + i % 5 * 0.5,
                  2.5,
                  new Needle(NeedlePoint.STRETCH, 75),
                  "",
                  "",
                  50.0,
                  1),
              Classroom.FRESH));
    }
    room.book.lessons().plan(plan);
    return plan;
  }

  private String code() {
    String code = PieceCode.draw(codes);
    while (!taken.add(code)) {
      code = PieceCode.draw(codes);
    }
    return code;
  }

  /** Logs a planned piece under its code. */
  TestPiece log(PlannedPiece planned, TestPiece like) {
    TestPiece piece =
        Classroom.like(like, planned.code())
            .with(
                new Whose(
                    room.schoolClass.id(),
                    planned.studentId(),
                    lesson.id(),
                    planned.id(),
                    LocalDate.of(2026, 10, 5)));
    room.book.pieces().add(piece);
    return piece;
  }

  PrintScope scope(@Nullable Student student, Naming naming) {
    return new PrintScope(
        room.schoolClass.id(), lesson.id(), student == null ? null : student.id(), naming);
  }

  static PrintFile file(Path path) {
    return new PrintFile(path, false, PaperProgress.UNHEARD);
  }

  @Override
  public void close() {
    room.close();
  }
}
