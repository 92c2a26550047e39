package walebook.act.bring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import walebook.act.book.DemoBook;
import walebook.act.bring.match.BringWhat;
import walebook.act.classroom.ExportTerm;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.book.PieceFilter;
import walebook.book.open.SqliteFiles;
import walebook.quantity.Unit;
import walebook.record.By;
import walebook.record.ClassNote;
import walebook.record.ClothReading;
import walebook.record.ClothWash;
import walebook.record.CutEdge;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.How;
import walebook.record.Lesson;
import walebook.record.Note;
import walebook.record.Parent;
import walebook.record.Pull;
import walebook.record.SchoolClass;
import walebook.record.Stamp;
import walebook.record.TestPiece;
import walebook.sheet.ExportProgress;
import walebook.sheet.TermChoice;
import walebook.tables.SharedTables;
import walebook.words.Words;

/**
 * Our own workbook read back into a book with the same people, cloths, machines and lessons, but no
 * pieces: every piece comes back field by field. What the workbook does not hold: a piece's key
 * (the new one has its own), when it was logged (it is logged now), photos and marks. Readings,
 * washes and notes come back from their own sheets; plans do not, since they belong to a pack.
 */
class RoundTripTest {
  private static final Words WORDS = Words.english();
  private static final SharedTables TABLES = SharedTables.read();

  @TempDir Path folder;
  private Path file;
  private Book demo;
  private Book bare;

  @BeforeEach
  void open() {
    file = folder.resolve("term.xlsx");
    demo = DemoBook.open(folder.resolve("demo.walebook"));
    bare =
        new SqliteFiles()
            .make(folder.resolve("bare.walebook"), "Bare", true, Unit.MM, Classroom.CLOCK)
            .value();
  }

  @AfterEach
  void close() {
    demo.close();
    bare.close();
  }

  @ParameterizedTest(name = "with names: {0}")
  @ValueSource(booleans = {true, false})
  void ourOwnWorkbookComesBackPieceByPiece(boolean names) {
    SchoolClass of = demo.classes().all().get(0);
    copyWithoutPieces(demo, bare, of);
    export(demo, file, of, names);
    Trial trial = bringIn(bare, file, of.id());
    List<TestPiece> before = demo.pieces().list(PieceFilter.ALL.ofClass(of.id()));
    assertThat(trial.fates()).allMatch(each -> each.fate() == RowFate.Fate.NEW);
    assertThat(trial.fates()).hasSize(before.size()).hasSizeGreaterThan(50);
    assertSame(before, bare.pieces().list(PieceFilter.ALL.ofClass(of.id())));

    assertThat(bringIn(bare, file, of.id()).fates())
        .as("a second time nothing is added")
        .allMatch(each -> each.fate() == RowFate.Fate.THERE);
    UUID step = Objects.requireNonNull(trial.stepId());
    assertThat(new UndoBringIn(bare).undo(step, By.NOBODY).isGood()).isTrue();
    assertThat(bare.pieces().count(PieceFilter.ALL)).isZero();
  }

  /** With the pieces there, all that stands beside them comes back, too: field by field. */
  @ParameterizedTest(name = "with names: {0}")
  @ValueSource(booleans = {true, false})
  void readingsWashesAndNotesComeBackFieldByField(boolean names) {
    SchoolClass of = demo.classes().all().get(0);
    addToLog(demo, of);
    copyWithoutPieces(demo, bare, of);
    export(demo, file, of, names);
    bringIn(bare, file, of.id());
    for (BringWhat what : List.of(BringWhat.READINGS, BringWhat.WASHES, BringWhat.NOTES)) {
      Trial trial = log(bare, file, of.id(), what);
      assertThat(trial.fates()).as(what.key()).allMatch(each -> each.fate() == RowFate.Fate.NEW);
      assertThat(log(bare, file, of.id(), what).fates())
          .as("a second time nothing is added of " + what.key())
          .allMatch(each -> each.fate() == RowFate.Fate.THERE);
    }
    assertThat(readings(bare)).isEqualTo(readings(demo)).hasSizeGreaterThan(200);
    assertThat(washes(bare)).isEqualTo(washes(demo)).hasSizeGreaterThan(5);
    assertThat(notes(bare, of)).isEqualTo(notes(demo, of)).hasSizeGreaterThan(3);
    UUID step = Objects.requireNonNull(bare.history().lastDone(null));
    assertThat(new UndoBringIn(bare).undo(step, By.NOBODY).isGood()).isTrue();
    assertThat(notes(bare, of)).isEmpty();
    assertThat(readings(bare)).isEqualTo(readings(demo));
  }

  /** Codes and covered names are resolved, so that no record doubles in the book it came from. */
  @ParameterizedTest(name = "with names: {0}")
  @ValueSource(booleans = {true, false})
  void everySheetReadBackIntoItsOwnBookIsThereAlready(boolean names) {
    SchoolClass of = demo.classes().all().get(0);
    addToLog(demo, of);
    addNamesInWords(demo, of);
    export(demo, file, of, names);
    assertAllThere(bringIn(demo, file, of.id()), "pieces");
    for (BringWhat what : List.of(BringWhat.READINGS, BringWhat.WASHES, BringWhat.NOTES)) {
      assertAllThere(log(demo, file, of.id(), what), what.key());
    }
  }

  private static void assertAllThere(Trial trial, String what) {
    assertThat(trial.fates())
        .as(what)
        .isNotEmpty()
        .allMatch(each -> each.fate() == RowFate.Fate.THERE);
  }

  /** Words that go out covered with codes, and a writer whom no code stands for. */
  private static void addNamesInWords(Book demo, SchoolClass of) {
    String tutor = demo.tutors().all().get(0).name();
    String student = demo.students().all().get(1).name();
    UUID cloth = demo.cloths().all().get(0).id();
    String words = "Said by " + tutor + " to " + student + ".";
    note(demo, Note.About.CLOTH, cloth, "A visitor", words);
    note(demo, Note.About.CLOTH, cloth, tutor, words);
    note(demo, Note.About.CLOTH, cloth, student, words);
    ClothReading reading =
        demo.clothLog().allReadings().stream()
            .filter(each -> of.id().equals(each.classId()))
            .findFirst()
            .orElseThrow();
    demo.clothLog()
        .add(
            new ClothReading(
                Ids.next(),
                reading.clothId(),
                reading.classId(),
                reading.lessonId(),
                reading.measuredBy(),
                reading.grain(),
                reading.gaugeMm(),
                reading.stretchedMm(),
                reading.releasedMm(),
                reading.how(),
                reading.edge(),
                reading.cycle(),
                reading.measuredOn(),
                words,
                Classroom.FRESH));
    LocalDate day = LocalDate.of(2026, 10, 2);
    demo.clothLog()
        .add(new ClothWash(Ids.next(), cloth, Grain.COURSE, 100, 96, words, day, Classroom.FRESH));
  }

  /** What the demo class leaves empty: a load, a selvedge, a lesson of no reading, odd words. */
  private static void addToLog(Book demo, SchoolClass of) {
    UUID cloth = demo.cloths().all().get(0).id();
    demo.clothLog()
        .add(
            new ClothReading(
                Ids.next(),
                cloth,
                of.id(),
                null,
                null,
                Grain.BIAS,
                101.5,
                163.25,
                null,
                new How(Fold.SINGLE, Pull.LOAD, 500.0, 12.5, null),
                CutEdge.SELVEDGE,
                3,
                LocalDate.of(2026, 10, 1),
                "=1+1, then slipped",
                Classroom.FRESH));
    TestPiece piece = demo.pieces().list(PieceFilter.ALL.ofClass(of.id())).get(0);
    String student = demo.students().all().get(2).name();
    note(demo, Note.About.PIECE, piece.id(), student, "First line.\nSecond, with \"quotes\".");
    note(demo, Note.About.CLOTH, cloth, "", "+44 is no number here");
    note(demo, Note.About.LESSON, demo.lessons().of(of.id()).get(0).id(), "", "Ran late.");
  }

  private static void note(Book book, Note.About about, UUID id, String author, String body) {
    Stamp stamp = Stamp.fresh(Classroom.NOW.minus(Duration.ofDays(9)));
    book.notes().add(new Note(Ids.next(), about, id, author, body, stamp));
  }

  /** Everything but keys and stamps. */
  private static List<Object> readings(Book book) {
    return sorted(
        book.clothLog().allReadings().stream()
            .map(
                each ->
                    Arrays.asList(
                        each.clothId(),
                        each.classId(),
                        each.lessonId(),
                        each.measuredBy(),
                        each.grain(),
                        each.gaugeMm(),
                        each.stretchedMm(),
                        each.releasedMm(),
                        each.how(),
                        each.edge(),
                        each.cycle(),
                        each.measuredOn(),
                        each.remark())));
  }

  private static List<Object> washes(Book book) {
    return sorted(
        book.cloths().all().stream()
            .flatMap(each -> book.clothLog().washesOf(each.id()).stream())
            .map(
                each ->
                    List.of(
                        each.clothId(),
                        each.grain(),
                        each.beforeMm(),
                        each.afterMm(),
                        each.wash(),
                        each.washedOn())));
  }

  private static List<Object> notes(Book book, SchoolClass of) {
    Map<UUID, String> codes = codes(book.pieces().list(PieceFilter.ALL.ofClass(of.id())));
    return sorted(
        book.notes().ofClass(of.id()).stream()
            .map(ClassNote::note)
            .map(
                each ->
                    List.of(
                        each.about(),
                        codes.getOrDefault(each.aboutId(), each.aboutId().toString()),
                        each.author(),
                        LocalDate.ofInstant(each.stamp().created(), Classroom.CLOCK.getZone()),
                        each.body())));
  }

  private static List<Object> sorted(Stream<? extends List<?>> rows) {
    return rows.<Object>map(each -> each).sorted(Comparator.comparing(Object::toString)).toList();
  }

  private static void export(Book book, Path file, SchoolClass of, boolean names) {
    assertThat(
            new ExportTerm(book, WORDS, TABLES, Classroom.CLOCK)
                .export(
                    file, of.id(), TermChoice.CODES.withNames(names), false, ExportProgress.UNHEARD)
                .isGood())
        .isTrue();
  }

  private static Trial log(Book book, Path file, UUID classId, BringWhat what) {
    BringPlan plan = GuessedPlan.of(book, classId, file, what, false, true);
    return new BringInLog(book, TABLES, WORDS, Classroom.CLOCK, new Random(5))
        .bring(plan, By.NOBODY)
        .value();
  }

  private static Trial bringIn(Book book, Path file, UUID classId) {
    BringPlan plan = GuessedPlan.of(book, classId, file, BringWhat.PIECES, false, true);
    assertThat(plan.sheet().name()).isEqualTo("Pieces");
    return new BringInPieces(book, TABLES, WORDS, Classroom.CLOCK, new Random(5))
        .bring(plan, By.NOBODY)
        .value();
  }

  /** The same but for keys and the time of logging. */
  private static void assertSame(List<TestPiece> before, List<TestPiece> after) {
    Map<UUID, String> codesBefore = codes(before);
    Map<UUID, String> codesAfter = codes(after);
    Map<String, TestPiece> found = new HashMap<>();
    after.forEach(each -> found.put(each.code(), each));
    assertThat(found).hasSameSizeAs(before);
    for (TestPiece each : before) {
      TestPiece back = Objects.requireNonNull(found.get(each.code()));
      assertThat(back.whose()).as(each.code()).isEqualTo(each.whose());
      assertThat(back.cloth()).as(each.code()).isEqualTo(each.cloth());
      assertThat(back.setting()).as(each.code()).isEqualTo(each.setting());
      assertThat(back.measure()).as(each.code()).isEqualTo(each.measure());
      assertThat(back.seen()).as(each.code()).isEqualTo(each.seen());
      assertThat(parent(back.parent(), codesAfter)).isEqualTo(parent(each.parent(), codesBefore));
    }
  }

  private static Map<UUID, String> codes(List<TestPiece> pieces) {
    Map<UUID, String> codes = new HashMap<>();
    pieces.forEach(each -> codes.put(each.id(), each.code()));
    return codes;
  }

  private static String parent(
      @org.jspecify.annotations.Nullable Parent parent, Map<UUID, String> codes) {
    return parent == null ? "" : codes.get(parent.pieceId()) + " " + parent.changed();
  }

  private static void copyWithoutPieces(Book from, Book to, SchoolClass of) {
    to.inOneStep(
        () -> {
          copy(from, to, of);
          return of;
        });
  }

  private static void copy(Book from, Book to, SchoolClass of) {
    from.terms().all().forEach(to.terms()::add);
    from.tutors().all().forEach(to.tutors()::add);
    from.classes().all().forEach(to.classes()::add);
    from.students().all().forEach(each -> to.students().add(fresh(each)));
    from.enrolments()
        .everyoneOf(of.id())
        .forEach(
            each ->
                to.enrolments()
                    .join(
                        of.id(),
                        each.id(),
                        Classroom.NOW.atZone(java.time.ZoneOffset.UTC).toLocalDate()));
    from.cloths().all().forEach(to.cloths()::add);
    from.machines().all().forEach(to.machines()::add);
    List<UUID> packs = new ArrayList<>();
    for (Lesson each : from.lessons().of(of.id())) {
      UUID pack = each.packId();
      if (!packs.contains(pack)) {
        packs.add(pack);
        to.lessons()
            .keepPack(
                Objects.requireNonNull(from.lessons().pack(pack)), from.lessons().picturesOf(pack));
      }
      to.lessons().add(each);
      to.lessons().plan(from.lessons().planOf(each.id()));
    }
  }

  private static walebook.record.Student fresh(walebook.record.Student each) {
    return new walebook.record.Student(
        each.id(), each.name(), each.alias(), each.tier(), Stamp.fresh(Classroom.NOW));
  }
}
