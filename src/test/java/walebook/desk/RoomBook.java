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
import walebook.record.Broke;
import walebook.record.Cloth;
import walebook.record.ClothReading;
import walebook.record.ClothUse;
import walebook.record.CutEdge;
import walebook.record.Edge;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.How;
import walebook.record.Lesson;
import walebook.record.MachineKind;
import walebook.record.Measure;
import walebook.record.Method;
import walebook.record.PieceCode;
import walebook.record.PieceOutcome;
import walebook.record.PlannedPiece;
import walebook.record.Pull;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.Seen;
import walebook.record.Setting;
import walebook.record.Student;
import walebook.record.TaughtPack;
import walebook.record.TestPiece;
import walebook.record.Tier;
import walebook.record.Whose;

/**
 * An invented class with a lesson, cloths measured both ways and eighty pieces, to be looked at.
 */
public final class RoomBook {
  private static final List<String> NAMES =
      List.of(
          "Cleo Mole",
          "Dag Breakwater",
          "Esi Lightwater-Harbourmaster of the Long Eastern Quay",
          "Finn Slip",
          "Gro Capstan",
          "Hal Buoy",
          "Ivo Tide",
          "Jun Spar",
          "Kit Mast",
          "Lou Keel");
  private static final double[] WIDTHS = {0, 1.5, 2.5};

  private final Classroom room;
  private final Random chance = new Random(11);
  private final List<Student> students = new ArrayList<>();
  private final List<Cloth> cloths = new ArrayList<>();

  private RoomBook(Classroom room) {
    this.room = room;
  }

  /** Makes the class in a new book. */
  public static Classroom in(Path file) {
    Classroom room = Classroom.in(file);
    new RoomBook(room).fill();
    return room;
  }

  private void fill() {
    students.add(room.first);
    students.add(room.second);
    for (String name : NAMES) {
      String alias = "S" + (students.size() < 9 ? "0" : "") + (students.size() + 1);
      Student student = new Student(Ids.next(), name, alias, Tier.STANDARD, Classroom.FRESH);
      room.book.students().add(student);
      room.book.enrolments().join(room.schoolClass.id(), student.id(), room.term.startsOn());
      students.add(student);
    }
    cloths.add(room.cloth);
    cloths.add(cloth("Plum interlock with a long name from the bottom of the cupboard", 220.0));
    cloths.add(cloth("Sand rib", 240.0));
    cloths.forEach(this::readings);
    Lesson lesson = lesson();
    int nth = 0;
    for (Student student : students) {
      for (int i = 0; i < 7; i++) {
        piece(student, lesson, nth++);
      }
    }
  }

  private Cloth cloth(String name, double mass) {
    Edge edge = new Edge(false, null, true, true, false);
    Cloth cloth =
        new Cloth(
            Ids.next(),
            name,
            "interlock",
            "96 % cotton, 4 % elastane",
            4.0,
            mass,
            1600.0,
            0.8,
            edge,
            "washed once before cutting",
            false,
            Classroom.FRESH);
    room.book.cloths().add(cloth);
    return cloth;
  }

  private void readings(Cloth cloth) {
    if (cloths.indexOf(cloth) == 2) {
      return;
    }
    for (Grain grain : List.of(Grain.WALE, Grain.COURSE)) {
      for (int i = 0; i < 5; i++) {
        double stretched = (grain == Grain.WALE ? 132 : 158) + Math.rint(3 * chance.nextGaussian());
        room.book
            .clothLog()
            .add(
                new ClothReading(
                    Ids.next(),
                    cloth.id(),
                    room.schoolClass.id(),
                    null,
                    students.get(i).id(),
                    grain,
                    100,
                    stretched,
                    i == 4 ? null : 102.0 + i % 2,
                    new How(Fold.FOLDED, i == 0 ? Pull.COMFORTABLE : Pull.FIRM, null, 10.0, 60.0),
                    CutEdge.INSIDE,
                    1,
                    LocalDate.of(2026, 9, 14),
                    "",
                    Classroom.FRESH));
      }
    }
  }

  private Lesson lesson() {
    TaughtPack pack =
        new TaughtPack(
            Ids.next(),
            "seam-that-stretches",
            "1",
            "A seam that stretches",
            "a".repeat(64),
            "",
            "",
            Classroom.FRESH);
    room.book.lessons().keepPack(pack, java.util.Map.of());
    Lesson lesson =
        new Lesson(
            Ids.next(),
            room.schoolClass.id(),
            pack.id(),
            "A seam that stretches",
            LocalDate.of(2026, 9, 21),
            Classroom.FRESH);
    room.book.lessons().add(lesson);
    return lesson;
  }

  private void piece(Student student, Lesson lesson, int nth) {
    double width = WIDTHS[nth % WIDTHS.length];
    Cloth cloth = cloths.get(nth % 2);
    double reached = 118 + 14 * width + 6 * chance.nextGaussian();
    SeamEnd end = reached > 152 ? SeamEnd.HELD : SeamEnd.GAVE;
    @Nullable UUID planned = nth % 7 < 5 ? plan(student, lesson, nth) : null;
    if (nth % 7 == 4) {
      return;
    }
    List<PullReading> pulls = List.of(new PullReading(1, end, Math.rint(Math.min(158, reached))));
    room.book
        .pieces()
        .add(
            new TestPiece(
                Ids.next(),
                PieceCode.draw(chance),
                new Whose(
                    room.schoolClass.id(),
                    student.id(),
                    lesson.id(),
                    planned,
                    LocalDate.of(2026, 9, 21).plusDays(7L * (nth % 3))),
                new ClothUse(cloth.id(), Grain.COURSE, 2),
                setting(width),
                new Measure(
                    100.0,
                    200.0,
                    204.0 + nth % 3,
                    201.0 + nth % 4,
                    pulls,
                    end == SeamEnd.GAVE ? Broke.NEEDLE_THREAD : null,
                    101.0,
                    50.0,
                    How.UNKNOWN,
                    student.id(),
                    LocalDate.of(2026, 9, 21),
                    nth % 6 == 5 ? null : Double.valueOf(4 + nth % 3)),
                new Seen(
                    3 + nth % 3,
                    nth % 4 == 0 ? PieceOutcome.KEEP : PieceOutcome.CHANGE,
                    nth % 5 == 0 ? List.of(Classroom.fault("wavy-seam", 2)) : List.of(),
                    ""),
                null,
                Classroom.FRESH));
  }

  private Setting setting(double width) {
    boolean straight = width == 0;
    return new Setting(
        Method.SEAM,
        room.machine.id(),
        MachineKind.SEWING,
        straight ? "301" : "304",
        straight ? "straight stitch" : "zigzag",
        straight ? null : width,
        2.5,
        straight ? null : width,
        2.2,
        null,
        "polyester",
        null,
        "",
        null,
        "",
        null,
        "",
        "");
  }

  private UUID plan(Student student, Lesson lesson, int nth) {
    PlannedPiece planned =
        new PlannedPiece(
            Ids.next(),
            lesson.id(),
            student.id(),
            PieceCode.draw(chance),
            nth + 1,
            nth % 7 == 0,
            false,
            "width=" + WIDTHS[nth % 3],
            cloths.get(nth % 2).id(),
            Classroom.ZIGZAG,
            Classroom.FRESH);
    room.book.lessons().plan(List.of(planned));
    return planned.id();
  }
}
