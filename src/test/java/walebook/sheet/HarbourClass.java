package walebook.sheet;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.ExportTerm;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.book.open.SqliteFiles;
import walebook.problem.Answer;
import walebook.quantity.Unit;
import walebook.record.Broke;
import walebook.record.Cloth;
import walebook.record.ClothReading;
import walebook.record.ClothUse;
import walebook.record.ClothWash;
import walebook.record.CutEdge;
import walebook.record.Edge;
import walebook.record.FaultPlace;
import walebook.record.FaultSeen;
import walebook.record.FaultWhen;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.How;
import walebook.record.Lesson;
import walebook.record.Machine;
import walebook.record.MachineKind;
import walebook.record.Measure;
import walebook.record.Method;
import walebook.record.Needle;
import walebook.record.NeedlePoint;
import walebook.record.Note;
import walebook.record.Parent;
import walebook.record.PieceCode;
import walebook.record.PieceOutcome;
import walebook.record.PlannedPiece;
import walebook.record.PlannedReading;
import walebook.record.Pull;
import walebook.record.PullReading;
import walebook.record.SchoolClass;
import walebook.record.SeamEnd;
import walebook.record.Seen;
import walebook.record.Setting;
import walebook.record.Step;
import walebook.record.StepDial;
import walebook.record.Student;
import walebook.record.TaughtPack;
import walebook.record.Term;
import walebook.record.TestPiece;
import walebook.record.Tier;
import walebook.record.Tutor;
import walebook.record.Whose;
import walebook.tables.SharedTables;
import walebook.words.Words;

/**
 * An invented class in a real book, drawn by chance from a seed, with names from several alphabets;
 * all free text may be the same words, to see what becomes of them.
 */
final class HarbourClass implements AutoCloseable {
  static final Words WORDS = Words.english();
  static final SharedTables TABLES = SharedTables.read();
  static final List<String> NAMES =
      List.of("Ada Pier", "José Núñez Muelle", "Бо Причал", "Θάλεια Μώλου", "林海波", "نور البحر");
  static final String TUTOR = "Marlis Ångfeld-Öst";

  final Book book;
  final List<Student> students = new ArrayList<>();
  final List<TestPiece> pieces = new ArrayList<>();
  final SchoolClass schoolClass;
  private final List<Cloth> cloths = new ArrayList<>();
  private final Machine machine;
  private final Random random;
  private final @Nullable String everywhere;
  private @Nullable Lesson lesson;

  private HarbourClass(Path file, long seed, List<String> names, @Nullable String everywhere) {
    this.random = new Random(seed);
    this.everywhere = everywhere;
    book =
        new SqliteFiles().make(file, text("Harbour hall"), true, Unit.MM, Classroom.CLOCK).value();
    Term term = new Term(Ids.next(), text("Autumn"), day(1), day(90), Classroom.FRESH);
    Tutor tutor = new Tutor(Ids.next(), TUTOR, Classroom.FRESH);
    book.terms().add(term);
    book.tutors().add(tutor);
    schoolClass =
        new SchoolClass(
            Ids.next(),
            term.id(),
            tutor.id(),
            text("Evening"),
            text("Mondays with " + TUTOR),
            Classroom.FRESH);
    book.classes().add(schoolClass);
    machine = machine();
    book.machines().add(machine);
    for (String name : names) {
      enrol(name);
    }
    for (String name : List.of("Grey jersey", "Rib from the quay")) {
      cloth(text(name));
    }
  }

  /** A class with so many pieces by chance. */
  static HarbourClass in(Path file, int pieces) {
    HarbourClass made = new HarbourClass(file, 20261005, NAMES, null);
    made.teach(made.text("Seams that stretch"));
    for (int i = 0; i < pieces; i++) {
      made.sew(made.random.nextInt(NAMES.size()), "slow feed");
    }
    return made;
  }

  /** A class in which every free text is the same. */
  static HarbourClass saying(Path file, String text) {
    HarbourClass made = new HarbourClass(file, 3, List.of(text), text);
    made.teach(text);
    made.sew(0, text);
    made.sew(0, text);
    return made;
  }

  static HarbourClass empty(Path file) {
    return new HarbourClass(file, 5, List.of(), null);
  }

  Answer<Path> export(Path file, boolean names) {
    return export(file, names, ExportProgress.UNHEARD);
  }

  Answer<Path> export(Path file, boolean names, ExportProgress progress) {
    return export(file, TermChoice.CODES.withNames(names), progress);
  }

  /** Writes over a file that is there. */
  Answer<Path> export(Path file, TermChoice choice, ExportProgress progress) {
    return new ExportTerm(book, WORDS, TABLES, Classroom.CLOCK)
        .export(file, schoolClass.id(), choice, true, progress);
  }

  TermFacts facts(boolean names) {
    TermFacts facts =
        new GatherTerm(book, Classroom.CLOCK, Map.of(), "the tutor")
            .of(schoolClass.id(), TermChoice.CODES.withNames(names), () -> TermExtras.NONE);
    return java.util.Objects.requireNonNull(facts);
  }

  /** Sews one piece with everything filled in. */
  TestPiece sew(int student, String remark) {
    Student who = students.get(student);
    double width = random.nextInt(4);
    boolean held = random.nextDouble() < 0.2 + 0.2 * width;
    SeamEnd end = held ? SeamEnd.HELD : SeamEnd.GAVE;
    double endMm = 120 + 10 * width + random.nextInt(300) / 10.0;
    TestPiece before = pieces.isEmpty() ? null : pieces.get(pieces.size() - 1);
    TestPiece piece =
        new TestPiece(
            Ids.next(),
            PieceCode.draw(random),
            whose(who),
            new ClothUse(
                cloths.get(random.nextInt(2)).id(),
                random.nextBoolean() ? Grain.WALE : Grain.COURSE,
                2),
            setting(width),
            measure(who, end, endMm),
            new Seen(
                1 + random.nextInt(5),
                PieceOutcome.CHANGE,
                List.of(
                    new FaultSeen(
                        "wavy-seam", FaultPlace.CURVE, random.nextInt(4), FaultWhen.PRESSED)),
                remark),
            before == null ? null : new Parent(before.id(), text("dial-width")),
            Classroom.FRESH);
    book.pieces().add(piece);
    pieces.add(piece);
    return piece;
  }

  private Whose whose(Student who) {
    UUID lessonId = lesson == null ? null : lesson.id();
    return new Whose(schoolClass.id(), who.id(), lessonId, null, day(1 + random.nextInt(60)));
  }

  private Setting setting(double width) {
    return new Setting(
        Method.SEAM,
        machine.id(),
        MachineKind.SEWING,
        "304",
        text("Zigzag"),
        width,
        2.5,
        width * 0.9,
        2.2,
        new Needle(NeedlePoint.STRETCH, 75),
        text("polyester"),
        Step.LOWER,
        text("1"),
        Step.NORMAL,
        text("4"),
        1.2,
        text("paper"),
        text("twin needle"));
  }

  private Measure measure(Student who, SeamEnd end, double endMm) {
    return new Measure(
        100.0,
        200.0,
        203.0,
        200.0 + random.nextInt(40) / 10.0,
        List.of(new PullReading(1, end, endMm), new PullReading(2, end, endMm + 3)),
        end == SeamEnd.GAVE ? Broke.NEEDLE_THREAD : null,
        102.0,
        50.0,
        new How(Fold.SINGLE, Pull.FIRM, null, 10.0, 60.0),
        who.id(),
        day(61),
        4.5);
  }

  void enrol(String name) {
    String alias = everywhere == null ? "S0" + (students.size() + 1) : everywhere;
    Student student = new Student(Ids.next(), name, alias, Tier.STANDARD, Classroom.FRESH);
    book.students().add(student);
    book.enrolments().join(schoolClass.id(), student.id(), day(1));
    students.add(student);
  }

  private void cloth(String name) {
    Cloth cloth =
        new Cloth(
            Ids.next(),
            name,
            text("single-jersey"),
            text("95 % cotton, 5 % elastane"),
            5.0,
            180.0,
            1500.0,
            0.6,
            new Edge(false, true, null, true, false),
            text("bought for José  Núñez Muelle"),
            false,
            Classroom.FRESH);
    book.cloths().add(cloth);
    cloths.add(cloth);
    for (int i = 0; i < 3; i++) {
      book.clothLog()
          .add(
              new ClothReading(
                  Ids.next(),
                  cloth.id(),
                  schoolClass.id(),
                  null,
                  students.isEmpty() ? null : students.get(0).id(),
                  Grain.COURSE,
                  100,
                  150 + i,
                  103.0,
                  new How(Fold.FOLDED, Pull.FIRM, null, null, null),
                  CutEdge.INSIDE,
                  1,
                  day(2),
                  "",
                  Classroom.FRESH));
    }
  }

  private Machine machine() {
    return new Machine(
        Ids.next(),
        4,
        text("by the window"),
        MachineKind.SEWING,
        List.of("304"),
        null,
        StepDial.UNKNOWN,
        StepDial.UNKNOWN,
        null,
        null,
        List.of(),
        "",
        false,
        Classroom.FRESH);
  }

  private void teach(String title) {
    TaughtPack pack =
        new TaughtPack(
            Ids.next(), "seams", "1", "Seams", "0".repeat(64), "name: x", "# x", Classroom.FRESH);
    book.lessons().keepPack(pack, Map.of());
    Lesson taught =
        new Lesson(Ids.next(), schoolClass.id(), pack.id(), title, day(7), Classroom.FRESH);
    book.lessons().add(taught);
    lesson = taught;
    List<PlannedPiece> plan = new ArrayList<>();
    int place = 1;
    for (Student each : students) {
      plan.add(planned(taught, each, place++));
    }
    book.lessons().plan(plan);
    log(taught);
  }

  /** A wash both ways, a reading asked of each student, and a note about each kind of thing. */
  private void log(Lesson taught) {
    UUID cloth = cloths.get(0).id();
    for (Grain grain : List.of(Grain.WALE, Grain.COURSE)) {
      double after = grain == Grain.WALE ? 475 : 505;
      book.clothLog()
          .add(
              new ClothWash(
                  Ids.next(),
                  cloth,
                  grain,
                  500,
                  after,
                  text("40 °C, line"),
                  day(3),
                  Classroom.FRESH));
    }
    List<PlannedReading> asked = new ArrayList<>();
    for (Student each : students) {
      asked.add(
          new PlannedReading(
              Ids.next(),
              taught.id(),
              each.id(),
              1,
              true,
              false,
              text("a"),
              cloth,
              Grain.COURSE,
              3,
              Classroom.FRESH));
    }
    book.readingPlans().plan(asked);
    note(Note.About.CLOTH, cloth, TUTOR, "Bought at the end of the roll.");
    note(Note.About.LESSON, taught.id(), "M", "Ran late: the irons tripped the fuse.");
    note(Note.About.STUDENT, students.get(0).id(), TUTOR, "Stays in the book.");
  }

  /** A note whose words are the same as all free text where that is so. */
  void note(Note.About about, UUID id, String author, String body) {
    book.notes().add(new Note(Ids.next(), about, id, text(author), text(body), Classroom.FRESH));
  }

  private PlannedPiece planned(Lesson taught, Student student, int place) {
    return new PlannedPiece(
        Ids.next(),
        taught.id(),
        student.id(),
        PieceCode.draw(random),
        place,
        false,
        false,
        "width=2.5",
        cloths.get(0).id(),
        Classroom.ZIGZAG,
        Classroom.FRESH);
  }

  private String text(String usual) {
    return everywhere == null ? usual : everywhere;
  }

  private static LocalDate day(int nth) {
    return LocalDate.of(2026, 9, 1).plusDays(nth);
  }

  @Override
  public void close() {
    book.close();
  }
}
