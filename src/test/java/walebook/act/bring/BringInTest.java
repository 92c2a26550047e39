package walebook.act.bring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.bring.match.BringWhat;
import walebook.act.bring.match.ColumnMatch;
import walebook.act.bring.match.DayOrder;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.By;
import walebook.record.Change;
import walebook.record.NeedlePoint;
import walebook.record.SeamEnd;
import walebook.record.Seen;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.record.Tier;
import walebook.sheet.in.MadeWorkbook;
import walebook.tables.SharedTables;
import walebook.words.Words;

@SuppressWarnings("NullAway.Init")
class BringInTest {
  private static final Words WORDS = Words.english();
  private static final SharedTables TABLES = SharedTables.read();
  private static final Object[] HEAD = {
    "Student",
    "Date",
    "Fabric",
    "Grain",
    "Stitch",
    "Needle",
    "Gauge (in)",
    "Result",
    "Stretched to (cm)",
    "Notes"
  };
  private static final Object[] GOOD = {
    "S01",
    LocalDate.of(2026, 10, 1),
    "grey jersey",
    "crosswise",
    304,
    "Jersey 75/11",
    4,
    "gave",
    "14,2",
    "+44 20"
  };

  @TempDir Path folder;
  private Classroom room;

  @BeforeEach
  void make() {
    room = Classroom.in(folder.resolve("a.walebook"));
  }

  @AfterEach
  void close() {
    room.close();
  }

  private BringPlan plan(BringWhat what, boolean goodRows, boolean sure, byte[] bytes) {
    Path file = MadeWorkbook.file(folder, "t.xlsx", bytes);
    return GuessedPlan.of(room.book, room.schoolClass.id(), file, what, goodRows, sure);
  }

  private Trial pieces(boolean goodRows, boolean sure, Object[]... rows) {
    return bring(plan(BringWhat.PIECES, goodRows, sure, MadeWorkbook.of("Mine", rows)));
  }

  private Trial bring(BringPlan plan) {
    Random chance = new Random(5);
    return plan.what() == BringWhat.PIECES
        ? new BringInPieces(room.book, TABLES, WORDS, Classroom.CLOCK, chance)
            .bring(plan, By.named("Tutor"))
            .value()
        : new BringInRoster(room.book, TABLES, WORDS, Classroom.CLOCK, chance)
            .bring(plan, By.named("Tutor"))
            .value();
  }

  private static Object[] with(int column, Object value) {
    Object[] row = GOOD.clone();
    row[column] = value;
    return row;
  }

  private static List<RowFate.Fate> fates(Trial trial) {
    return trial.fates().stream().map(RowFate::fate).toList();
  }

  @Test
  void aRowOfSomebodysOwnBecomesAPieceInOurUnits() {
    Trial trial = pieces(false, false, HEAD, GOOD);
    assertThat(fates(trial)).containsExactly(RowFate.Fate.NEW);
    TestPiece piece = room.book.pieces().list(PieceFilter.ALL).get(0);
    assertThat(piece.whose().studentId()).isEqualTo(room.first.id());
    assertThat(piece.whose().sewnOn()).isEqualTo(LocalDate.of(2026, 10, 1));
    // 4 in is 101.6 mm (1 in is 25.4 mm by definition).
    assertThat(piece.measure().gaugeMm()).isEqualTo(101.6);
    assertThat(Objects.requireNonNull(piece.measure().counting()).end()).isEqualTo(SeamEnd.GAVE);
    assertThat(piece.measure().counting().endMm()).isEqualTo(142.0);
    assertThat(Objects.requireNonNull(piece.setting().needle()).point())
        .isEqualTo(NeedlePoint.JERSEY);
    assertThat(piece.setting().needle().nm()).isEqualTo(75);
    assertThat(piece.seen().remark()).isEqualTo("+44 20");
  }

  private List<Double> minutes(String header, boolean sure, Object... cells) {
    Object[] head = HEAD.clone();
    head[9] = header;
    Object[][] rows = new Object[cells.length + 1][];
    rows[0] = head;
    for (int i = 0; i < cells.length; i++) {
      rows[i + 1] = with(9, cells[i]);
      rows[i + 1][6] = 3 + i / 10.0;
    }
    pieces(true, sure, rows);
    return room.book.pieces().list(PieceFilter.ALL).stream()
        .sorted(java.util.Comparator.comparing(each -> each.measure().gaugeMm()))
        .map(each -> each.measure().sewingMinutes())
        .toList();
  }

  @Test
  void minutesComeInHoweverTheyWereWritten() {
    assertThat(minutes("Time to sew", false, 4, "4,5", "4:30", "4 min", ""))
        .containsExactly(4.0, 4.5, 4.5, 4.0, null);
  }

  @Test
  void secondsBecomeMinutesAndMinutesThatCantBeAreRefused() {
    assertThat(minutes("Time taken (s)", false, 270, "5 min", 0, "soon", 36_060))
        .containsExactly(4.5, 5.0);
  }

  /** Spreadsheet programs take 4:30 for half past four in the morning, 0.1875 of a day. */
  @Test
  void aTimeOfDayIsAskedAboutAndTakenAsMinutes() {
    Trial trial = clock(false);
    assertThat(trial.fates().get(0).problems())
        .extracting(Problem::code, Problem::found, Problem::wanted)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("bring.minutes-from-hours", "4:30", "4.5"));
    assertThat(fates(clock(true))).containsExactly(RowFate.Fate.NEW, RowFate.Fate.NEW);
    assertThat(room.book.pieces().list(PieceFilter.ALL))
        .extracting(each -> each.measure().sewingMinutes())
        .containsExactlyInAnyOrder(4.5, 2.25);
  }

  private Trial clock(boolean sure) {
    byte[] made =
        MadeWorkbook.with(
            workbook -> {
              var sheet = workbook.createSheet("Mine");
              var style = workbook.createCellStyle();
              style.setDataFormat(workbook.createDataFormat().getFormat("h:mm"));
              Object[] head = HEAD.clone();
              head[9] = "Minutes";
              double[] days = {0.1875, 2.25 / 1440};
              for (int i = 0; i < head.length; i++) {
                for (int row = 0; row <= 2; row++) {
                  var at = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
                  Object value = row == 0 ? head[i] : i == 6 ? 3 + row : GOOD[i];
                  if (row > 0 && i == 9) {
                    at.createCell(i).setCellValue(days[row - 1]);
                    at.getCell(i).setCellStyle(style);
                  } else if (value instanceof Number number) {
                    at.createCell(i).setCellValue(number.doubleValue());
                  } else {
                    at.createCell(i).setCellValue(value.toString());
                  }
                }
              }
            });
    return bring(plan(BringWhat.PIECES, false, sure, made));
  }

  @Test
  void everyRowThatIsInTheWayNamesItsCell() {
    Trial trial =
        pieces(
            false,
            false,
            HEAD,
            GOOD,
            with(0, "Nobody"),
            with(2, "Wool"),
            with(6, LocalDate.of(2026, 4, 3)),
            with(1, "3/4/2026"));
    assertThat(fates(trial).subList(1, 5)).containsOnly(RowFate.Fate.REFUSED);
    assertThat(trial.fates().subList(1, 5))
        .extracting(each -> each.problems().get(0).code(), each -> each.problems().get(0).place())
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("bring.no-student", new Place.Cell("Mine", 3, "A")),
            org.assertj.core.groups.Tuple.tuple("choice.unknown", new Place.Cell("Mine", 4, "C")),
            org.assertj.core.groups.Tuple.tuple(
                "bring.day-not-number", new Place.Cell("Mine", 5, "G")),
            org.assertj.core.groups.Tuple.tuple("bring.day-order", new Place.Cell("Mine", 6, "B")));
    assertThat(trial.needsOrder()).isTrue();
    assertThat(trial.stepId()).isNull();
    assertThat(room.book.pieces().count(PieceFilter.ALL)).as("all or nothing").isZero();
  }

  @Test
  void theGoodRowsAloneComeInWhereThatIsWantedAndAgainOnlyTheOthersAreLeft() {
    Trial trial = pieces(true, false, HEAD, GOOD, with(0, "Nobody"));
    assertThat(fates(trial)).containsExactly(RowFate.Fate.NEW, RowFate.Fate.REFUSED);
    assertThat(room.book.pieces().count(PieceFilter.ALL)).isEqualTo(1);
    Trial again = pieces(true, false, HEAD, GOOD, with(0, "S02"));
    assertThat(fates(again)).containsExactly(RowFate.Fate.THERE, RowFate.Fate.NEW);
  }

  @Test
  void whatIsUnlikelyIsAskedAboutAndTakenOnceItIsRight() {
    assertThat(fates(pieces(false, false, HEAD, with(8, "42"))))
        .containsExactly(RowFate.Fate.ASKED);
    assertThat(fates(pieces(false, true, HEAD, with(8, "42")))).containsExactly(RowFate.Fate.NEW);
  }

  @Test
  void aDryRunLeavesNothingAndForetellsWhatComes() {
    BringPlan plan =
        plan(BringWhat.PIECES, true, false, MadeWorkbook.of("Mine", HEAD, GOOD, with(4, "999")));
    List<Change> before = room.book.history().latest(100);
    Trial tried =
        new TryRows(room.book, TABLES, WORDS, Classroom.CLOCK, new Random(5)).of(plan).value();
    assertThat(room.book.pieces().count(PieceFilter.ALL)).isZero();
    assertThat(room.book.history().latest(100)).isEqualTo(before);
    assertThat(room.book.drafts().of("bring")).isEmpty();
    assertThat(bring(plan).fates()).isEqualTo(tried.fates());
  }

  @Test
  void theWholeStepIsTakenBackUnlessSomethingWasBuiltOnIt() {
    UUID step = Objects.requireNonNull(pieces(false, false, HEAD, GOOD, with(0, "S02")).stepId());
    List<Change> changes = room.book.history().step(step);
    assertThat(changes).hasSize(2).allMatch(each -> each.before() == null);
    assertThat(changes.get(0).by().name()).isEqualTo("Tutor");
    TestPiece piece = room.book.pieces().list(PieceFilter.ALL).get(0);
    TestPiece changed =
        piece
            .with(new Seen(2, null, List.of(), "changed since"))
            .with(piece.stamp().next(Classroom.NOW));
    UUID later = walebook.book.Ids.next();
    room.book.pieces().update(changed, By.NOBODY, "piece.correct", later);
    UndoBringIn undo = new UndoBringIn(room.book);
    assertThat(undo.undo(step, By.NOBODY).problems())
        .extracting(Problem::code)
        .containsExactly("bring.used-since");
    assertThat(room.book.pieces().count(PieceFilter.ALL)).isEqualTo(2);
    assertThat(undo.undo(UUID.randomUUID(), By.NOBODY).isGood()).isFalse();
  }

  @Test
  void aStudentWithPiecesStaysWhenTheRosterIsTakenBack() {
    byte[] roster =
        MadeWorkbook.of(
            "Class",
            new Object[] {"Name", "Code", "Tier"},
            new Object[] {"ליאור גל", "", "own work"},
            new Object[] {"🧵 Reed", "S01", ""},
            new Object[] {"Ada  Pier", "", ""},
            new Object[] {"=1+1", "S77", "most"});
    Trial trial = bring(plan(BringWhat.ROSTER, true, false, roster));
    assertThat(fates(trial))
        .containsExactly(
            RowFate.Fate.NEW, RowFate.Fate.REFUSED, RowFate.Fate.THERE, RowFate.Fate.REFUSED);
    Student added =
        room.book.enrolments().studentsOf(room.schoolClass.id()).stream()
            .filter(each -> each.name().equals("ליאור גל"))
            .findFirst()
            .orElseThrow();
    assertThat(added.alias()).isEqualTo("S03");
    assertThat(added.tier()).isEqualTo(Tier.OWN);
    UUID step = Objects.requireNonNull(trial.stepId());
    room.book.pieces().add(room.piece(added.id(), 2.5, List.of(), List.of(), null));
    UndoBringIn undo = new UndoBringIn(room.book);
    assertThat(undo.undo(step, By.NOBODY).problems())
        .extracting(Problem::code)
        .containsExactly("bring.used-since");
    assertThat(room.book.students().find(added.id())).isNotNull();
  }

  @Test
  void aRosterIsTakenBackWithItsPlacesInTheClass() {
    byte[] text = "Nuur Ebb\nCleo Mole\n".getBytes(StandardCharsets.UTF_8);
    Trial trial = bring(plan(BringWhat.ROSTER, false, false, text));
    assertThat(room.book.enrolments().studentsOf(room.schoolClass.id())).hasSize(4);
    UUID step = Objects.requireNonNull(trial.stepId());
    assertThat(new UndoBringIn(room.book).undo(step, By.NOBODY).isGood()).isTrue();
    assertThat(room.book.students().all()).hasSize(2);
  }

  @Test
  void whatTheColumnsHoldIsKeptForTheNextTime() {
    BringPlan plan = plan(BringWhat.PIECES, false, false, MadeWorkbook.of("Mine", HEAD, GOOD));
    List<ColumnMatch> columns = new java.util.ArrayList<>(plan.columns());
    columns.set(9, ColumnMatch.LEFT_OUT);
    bring(
        new BringPlan(
            plan.what(),
            plan.sheet(),
            columns,
            plan.classId(),
            null,
            DayOrder.UNKNOWN,
            false,
            false));
    BringPlan next =
        plan(BringWhat.PIECES, false, false, MadeWorkbook.of("Mine", HEAD, with(0, "S02")));
    assertThat(next.columns()).isEqualTo(columns);
  }

  @Test
  void rejectedRowsComeBackWithTheReasonAndAreNeverWrittenOverUnasked() {
    BringPlan plan =
        plan(
            BringWhat.PIECES,
            true,
            false,
            MadeWorkbook.of("Mine", HEAD, GOOD, with(0, "=Nobody"), with(2, "Wool")));
    Trial trial = bring(plan);
    Path out = folder.resolve("rejected.xlsx");
    WriteRejected write = new WriteRejected(WORDS);
    assertThat(write.write(out, plan.sheet(), trial, false).isGood()).isTrue();
    assertThat(write.write(out, plan.sheet(), trial, false).problems())
        .extracting(Problem::code)
        .containsExactly("sheet.exists");
    ReadSpreadsheet read = new ReadSpreadsheet(room.book, WORDS);
    SpreadsheetFile opened = read.open(out, BringWhat.PIECES).value();
    Spreadsheet back = read.read(opened, opened.usual(), BringWhat.PIECES).value();
    assertThat(back.headers()).hasSize(11).endsWith("Why it was not brought in");
    assertThat(back.samples(0, 9)).containsExactly("=Nobody", "S01");
    assertThat(back.samples(1, 9)).containsExactly("2026-10-01", "2026-10-01");
    assertThat(back.samples(10, 9).get(1)).contains("Wool").contains("Mine!C4");
    assertThat(read.guess(back, BringWhat.PIECES).subList(0, 10)).isEqualTo(plan.columns());
  }
}
