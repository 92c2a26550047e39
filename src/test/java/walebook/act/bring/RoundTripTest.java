package walebook.act.bring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.MakeDemoBook;
import walebook.act.bring.match.BringWhat;
import walebook.act.bring.match.ColumnMatch;
import walebook.act.bring.match.DayOrder;
import walebook.act.classroom.ExportTerm;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.book.open.SqliteFiles;
import walebook.quantity.Unit;
import walebook.record.By;
import walebook.record.Lesson;
import walebook.record.Parent;
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
 * (the new one has its own), when it was logged (it is logged now), photos, notes and marks.
 */
class RoundTripTest {
  private static final Words WORDS = Words.english();
  private static final SharedTables TABLES = SharedTables.read();

  @TempDir Path folder;

  @Test
  void ourOwnWorkbookComesBackPieceByPiece() {
    Path file = folder.resolve("term.xlsx");
    try (Book demo =
            new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK)
                .make(folder.resolve("demo.walebook"), MakeDemoBook.SEED)
                .value();
        Book bare =
            new SqliteFiles()
                .make(folder.resolve("bare.walebook"), "Bare", true, Unit.MM, Classroom.CLOCK)
                .value()) {
      SchoolClass of = demo.classes().all().get(0);
      bare.inOneStep(
          () -> {
            copyWithoutPieces(demo, bare, of);
            return of;
          });
      assertThat(
              new ExportTerm(demo, WORDS, TABLES, Classroom.CLOCK)
                  .export(
                      file,
                      of.id(),
                      TermChoice.CODES.withNames(true),
                      false,
                      ExportProgress.UNHEARD)
                  .isGood())
          .isTrue();
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
  }

  private static Trial bringIn(Book book, Path file, UUID classId) {
    ReadSpreadsheet read = new ReadSpreadsheet(book, WORDS);
    SpreadsheetFile opened = read.open(file, BringWhat.PIECES).value();
    assertThat(opened.usual()).isEqualTo("Pieces");
    Spreadsheet sheet = read.read(opened, opened.usual(), BringWhat.PIECES).value();
    List<ColumnMatch> columns = read.guess(sheet, BringWhat.PIECES);
    BringPlan plan =
        new BringPlan(
            BringWhat.PIECES, sheet, columns, classId, null, DayOrder.UNKNOWN, false, true);
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
    from.clothLog().allReadings().forEach(each -> to.clothLog().add(each));
  }

  private static walebook.record.Student fresh(walebook.record.Student each) {
    return new walebook.record.Student(
        each.id(), each.name(), each.alias(), each.tier(), Stamp.fresh(Classroom.NOW));
  }
}
