package walebook.desk;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.desk.common.Background;
import walebook.desk.common.PickFile;
import walebook.desk.common.Session;
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
import walebook.record.TaughtPack;

/** The small invented class with a lesson, a plan of pieces and a cloth whose stretch is known. */
public final class PlannedClass implements AutoCloseable {
  public final Classroom room;
  public final Lesson lesson;
  public final List<PlannedPiece> plan = new ArrayList<>();

  private PlannedClass(Classroom room) {
    this.room = room;
    TaughtPack pack =
        new TaughtPack(
            Ids.next(),
            "stretching-seam",
            "1",
            "A seam that stretches",
            "0".repeat(64),
            "",
            "",
            Classroom.FRESH);
    room.book.lessons().keepPack(pack, java.util.Map.of());
    lesson =
        new Lesson(
            Ids.next(),
            room.schoolClass.id(),
            pack.id(),
            "A seam that stretches",
            LocalDate.of(2026, 10, 5),
            Classroom.FRESH);
    room.book.lessons().add(lesson);
    for (double stretched : new double[] {161, 163, 162}) {
      room.book
          .clothLog()
          .add(room.reading(room.cloth, lesson.id(), room.first.id(), Grain.COURSE, stretched));
    }
  }

  /** The class with pieces planned for its first student. */
  public static PlannedClass in(Path file, int readings) {
    PlannedClass made = new PlannedClass(Classroom.in(file));
    made.plan(made.room.first, readings);
    return made;
  }

  private void plan(Student student, int readings) {
    Random codes = new Random(11);
    double[][] settings = {{2.5, 2.5}, {1.5, 2.5}, {3.5, 1.5}, {4, 2}};
    for (double[] each : settings) {
      plan.add(
          new PlannedPiece(
              Ids.next(),
              lesson.id(),
              student.id(),
              PieceCode.draw(codes),
              plan.size() + 1,
              plan.isEmpty(),
              false,
              "",
              room.cloth.id(),
              new PieceAsked(
                  Grain.COURSE,
                  2,
                  Method.SEAM,
                  MachineKind.SEWING,
                  "304",
                  each[0],
                  each[1],
                  new Needle(NeedlePoint.JERSEY, 75),
                  "",
                  "",
                  50.0,
                  readings),
              Classroom.FRESH));
    }
    room.book.lessons().plan(plan);
  }

  /** A session over the book in which nobody has sat down yet. */
  public Session session(Background background, PickFile files) {
    return Sessions.bare(room.book, background, files);
  }

  /** A session in which the first student sits at the screen. */
  public Session sitting(Background background, PickFile files) {
    Session session = session(background, files);
    session.schoolClassProperty().set(room.schoolClass);
    session.studentProperty().set(room.first);
    return session;
  }

  public UUID planned(int place) {
    return plan.get(place).id();
  }

  @Override
  public void close() {
    room.close();
  }

  /** Hands out one file, whatever is asked for. */
  public record OneFile(@Nullable Path file) implements PickFile {
    public static final OneFile NONE = new OneFile(null);

    @Override
    public @Nullable Path open(Kind kind) {
      return file;
    }

    @Override
    public @Nullable Path save(Kind kind, String name) {
      return file;
    }
  }
}
