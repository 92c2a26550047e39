package walebook.book;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.open.SqliteFiles;
import walebook.book.sqlite.Migrations;
import walebook.quantity.Unit;
import walebook.record.Cloth;
import walebook.record.ClothReading;
import walebook.record.ClothUse;
import walebook.record.Criterion;
import walebook.record.CutEdge;
import walebook.record.Dial;
import walebook.record.DialReading;
import walebook.record.Edge;
import walebook.record.FaultPlace;
import walebook.record.FaultSeen;
import walebook.record.FaultWhen;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.How;
import walebook.record.Machine;
import walebook.record.MachineKind;
import walebook.record.Measure;
import walebook.record.Method;
import walebook.record.Parent;
import walebook.record.PhotoInfo;
import walebook.record.PieceAsked;
import walebook.record.PieceCode;
import walebook.record.Pull;
import walebook.record.PullReading;
import walebook.record.SchoolClass;
import walebook.record.SeamEnd;
import walebook.record.Seen;
import walebook.record.Setting;
import walebook.record.Stamp;
import walebook.record.StepDial;
import walebook.record.Student;
import walebook.record.Term;
import walebook.record.TestPiece;
import walebook.record.Tier;
import walebook.record.Whose;

/** A small invented class in a book of its own, for tests. */
public final class Classroom implements AutoCloseable {
  public static final Instant NOW = Instant.parse("2026-10-05T18:30:00Z");
  public static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);
  public static final Stamp FRESH = Stamp.fresh(NOW);

  /** What a plan asks for where nothing else matters: a zigzag seam across two layers. */
  public static final PieceAsked ZIGZAG =
      new PieceAsked(
          Grain.COURSE, 2, Method.SEAM, MachineKind.SEWING, "304", 2.5, 2.5, null, "", "", 50.0, 1);

  public final Book book;
  public final Term term =
      new Term(Ids.next(), "Autumn", LocalDate.of(2026, 9, 1), LocalDate.of(2026, 12, 18), FRESH);
  public final SchoolClass schoolClass =
      new SchoolClass(Ids.next(), term.id(), null, "Monday evening", "Mondays, 18:30", FRESH);
  public final Student first = student("Ada Pier", "S01");
  public final Student second = student("Bo Quay", "S02");
  public final Cloth cloth =
      new Cloth(
          Ids.next(),
          "Grey jersey",
          "single-jersey",
          "95 % cotton, 5 % elastane",
          5.0,
          180.0,
          1500.0,
          0.6,
          Edge.UNKNOWN,
          "",
          false,
          FRESH);
  public final Machine machine =
      new Machine(
          Ids.next(),
          4,
          "by the window",
          MachineKind.SEWING,
          List.of("301", "304"),
          null,
          new StepDial("1", "2", "3"),
          StepDial.UNKNOWN,
          null,
          null,
          List.of(
              new DialReading(Ids.next(), null, Dial.LENGTH, 2.5, 2.2, LocalDate.of(2026, 9, 7))),
          "",
          false,
          FRESH);
  private final Random codes = new Random(7);

  private Classroom(Book book) {
    this.book = book;
    book.terms().add(term);
    book.classes().add(schoolClass);
    book.students().add(first);
    book.students().add(second);
    book.enrolments().join(schoolClass.id(), first.id(), term.startsOn());
    book.enrolments().join(schoolClass.id(), second.id(), term.startsOn());
    book.cloths().add(cloth);
    book.machines().add(machine);
  }

  /** Makes the class in a new book. */
  public static Classroom in(Path file) {
    return new Classroom(
        new SqliteFiles().make(file, "Harbour hall", true, Unit.MM, CLOCK).value());
  }

  private static Student student(String name, String alias) {
    return new Student(Ids.next(), name, alias, Tier.STANDARD, FRESH);
  }

  /** A zigzag piece of the first student that gave or held at the given length. */
  public TestPiece piece(SeamEnd end, double endMm) {
    return piece(first.id(), 2.5, List.of(new PullReading(1, end, endMm)), List.of(), null);
  }

  /** A zigzag piece, not yet saved. */
  public TestPiece piece(
      UUID student,
      double width,
      List<PullReading> pulls,
      List<FaultSeen> faults,
      @Nullable Parent parent) {
    return new TestPiece(
        Ids.next(),
        PieceCode.draw(codes),
        new Whose(schoolClass.id(), student, null, null, LocalDate.of(2026, 10, 5)),
        new ClothUse(cloth.id(), Grain.COURSE, 2),
        new Setting(
            Method.SEAM,
            machine.id(),
            MachineKind.SEWING,
            "304",
            "Zigzag",
            width,
            2.5,
            width,
            2.2,
            null,
            "polyester",
            null,
            "",
            null,
            "",
            null,
            "",
            ""),
        new Measure(
            100.0,
            200.0,
            203.0,
            201.0,
            pulls,
            null,
            102.0,
            50.0,
            How.UNKNOWN,
            student,
            LocalDate.of(2026, 10, 5),
            4.5),
        new Seen(4, null, faults, "slow feed"),
        parent,
        FRESH);
  }

  /** The same as a book kept it before pieces had minutes. */
  public static TestPiece untimed(TestPiece piece) {
    Measure was = piece.measure();
    return piece.with(
        new Measure(
            was.gaugeMm(),
            was.edgeBeforeMm(),
            was.edgeSewnMm(),
            was.edgePressedMm(),
            was.pulls(),
            was.broke(),
            was.releasedMm(),
            was.needPercent(),
            was.how(),
            was.measuredBy(),
            was.measuredOn(),
            null));
  }

  /** What a book of an older shape holds of a piece. */
  public static TestPiece inShape(TestPiece piece, int shape) {
    return shape <= Migrations.SCRIPTS.indexOf("V008__sewing_time.sql") ? untimed(piece) : piece;
  }

  /** Another piece sewn, measured and seen alike, under a code of its own. */
  public static TestPiece like(TestPiece one, String code) {
    return new TestPiece(
        Ids.next(),
        code,
        one.whose(),
        one.cloth(),
        one.setting(),
        one.measure(),
        one.seen(),
        null,
        one.stamp());
  }

  /** A reading of the cloth by the first student, not yet saved; back at 102 mm. */
  public ClothReading reading(Grain grain, double stretchedMm) {
    return reading(cloth, null, first.id(), grain, stretchedMm);
  }

  /** A reading on 100 mm, folded and pulled firmly, back at 102 mm; not yet saved. */
  public ClothReading reading(
      Cloth of, @Nullable UUID lessonId, @Nullable UUID by, Grain grain, double stretchedMm) {
    return new ClothReading(
        Ids.next(),
        of.id(),
        schoolClass.id(),
        lessonId,
        by,
        grain,
        100,
        stretchedMm,
        102.0,
        new How(Fold.FOLDED, Pull.FIRM, null, 10.0, 60.0),
        CutEdge.INSIDE,
        1,
        LocalDate.of(2026, 10, 5),
        "",
        FRESH);
  }

  /** A criterion of the class that looks at everything, not yet saved. */
  public Criterion criterion(String code) {
    return new Criterion(
        Ids.next(), schoolClass.id(), code, "Chooses a stitch", 1, Criterion.ALL, FRESH);
  }

  /** A photo of a piece, with a thumbnail of two bytes, not yet saved. */
  public static PhotoInfo photo(UUID pieceId) {
    return new PhotoInfo(
        Ids.next(), pieceId, null, "", "image/jpeg", 4, 3, new byte[] {9, 8}, FRESH);
  }

  /** The cloth with something else said of it. */
  public static Cloth remarked(Cloth was, String remark, Instant at) {
    return new Cloth(
        was.id(),
        was.name(),
        was.kind(),
        was.fibre(),
        was.elastanePercent(),
        was.massGm2(),
        was.widthMm(),
        was.thicknessMm(),
        was.edge(),
        remark,
        was.retired(),
        was.stamp().next(at));
  }

  /** A fault as seen off the machine. */
  public static FaultSeen fault(String key, int severity) {
    return new FaultSeen(key, FaultPlace.ALL_ALONG, severity, FaultWhen.SEWN);
  }

  @Override
  public void close() {
    book.close();
  }
}
