package walebook.act.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.PieceCode;
import walebook.record.SeamEnd;
import walebook.record.Step;
import walebook.record.TestPiece;
import walebook.words.Words;
import walebook.working.Verdict;

/** From what was typed to a piece in the book. */
@SuppressWarnings("NullAway.Init")
class LogTestPieceTest {
  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void open() {
    bench = new Bench(folder.resolve("class.walebook"));
  }

  @AfterEach
  void close() {
    bench.close();
  }

  @Test
  void aWellFilledFormIsSavedAsTyped() {
    TestPiece piece = bench.log().save(bench.good(), bench.pieceRoom(), false).value();
    assertThat(bench.room.book.pieces().find(piece.id())).isEqualTo(piece);
    assertThat(PieceCode.isCode(piece.code())).isTrue();
    assertThat(piece.setting().dialWidth()).isEqualTo(2.5);
    assertThat(piece.measure().gaugeMm()).isEqualTo(100);
    assertThat(piece.measure().counting()).isNotNull();
    assertThat(piece.seen().faults()).hasSize(1);
  }

  @Test
  void theMachinesCardSaysWhatWasSewnAndWhatItsDialReads() {
    TestPiece piece = bench.log().save(bench.good(), bench.pieceRoom(), false).value();
    assertThat(piece.setting().sewnLengthMm()).isEqualTo(2.2);
    assertThat(piece.setting().pressure()).isEqualTo(Step.LOWER);
    assertThat(piece.setting().pressureDial()).isEqualTo("1");
  }

  @Test
  void theVerdictComparesTheSeamWithItsCloth() {
    TestPiece piece = bench.log().save(bench.good(), bench.pieceRoom(), false).value();
    assertThat(JudgePiece.of(piece, bench.pieceRoom()).verdict()).isEqualTo(Verdict.MET);
    PieceEntry weak = bench.good().with(PieceField.END, "gave").with(PieceField.END_LENGTH, "130");
    TestPiece gave = bench.log().save(weak, bench.pieceRoom(), false).value();
    assertThat(JudgePiece.of(gave, bench.pieceRoom()).verdict()).isEqualTo(Verdict.NOT_MET);
    assertThat(JudgePiece.of(gave, bench.pieceRoom()).seamShare()).isEqualTo(60);
  }

  /** What is typed wrong is refused at its field, and nothing reaches the book. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "DIAL_WIDTH|2.5x|number.letters",
        "DIAL_WIDTH|wide|number.not-a-number",
        "DIAL_WIDTH|-1|number.too-small",
        "DIAL_LENGTH|0|number.too-small",
        "GAUGE|0|number.too-small",
        "GAUGE|-100|number.too-small",
        "GAUGE|100 ft|length.unit",
        "GAUGE|''|field.needed",
        "END|''|end.needed",
        "END_LENGTH|''|field.needed",
        "END|broke|choice.unknown",
        "CLOTH|velvet|choice.unknown",
        "CLOTH|''|field.needed",
        "GRAIN|''|field.needed",
        "STITCH|''|field.needed",
        "STITCH|999|choice.unknown",
        "MACHINE|17|choice.unknown",
        "LAYERS|9|number.outside",
        "LAYERS|1.5|number.not-whole",
        "GRADE|6|number.outside",
        "NEEDLE_NM|''|field.needed",
        "NEEDLE_NM|12|number.outside",
        "SEWN_ON|5.10.2026|date.not-a-date",
        "PULL|load|field.needed",
        "FAULTS|wobbly|choice.unknown",
        "FAULTS|wavy-seam,nowhere|fault.part",
        "MINUTES|soon|minutes.not-minutes",
        "MINUTES|4 mm|minutes.unit",
        "MINUTES|0|minutes.outside",
        "MINUTES|-2|minutes.outside",
        "MINUTES|601|minutes.outside",
      })
  void whatIsWrongIsRefusedAtItsField(PieceField field, String typed, String code) {
    Answer<TestPiece> answer =
        bench.log().save(bench.good().with(field, typed), bench.pieceRoom(), true);
    assertThat(answer.isGood()).isFalse();
    Problem problem = answer.problems().stream().filter(Problem::refuses).findFirst().orElseThrow();
    assertThat(problem.code()).isEqualTo(code);
    assertThat(problem.place()).isInstanceOf(Place.Field.class);
    assertThat(bench.room.book.pieces().count(PieceFilter.ALL)).isZero();
  }

  /** What is only unlikely is asked about, and saved once it is agreed to. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "GAUGE|150 cm|number.unlikely",
        "DIAL_WIDTH|12|number.unlikely",
        "RELEASED|160|length.released-longer",
        "END_LENGTH|90|length.below-gauge",
        "END_LENGTH|400|stretch.unlikely",
        "END_LENGTH|180|stretch.beyond-cloth",
        "EDGE_PRESSED|180|edge.unlikely",
        "EDGE_SEWN|3.1|edge.unlikely",
        "STITCH|three-step|stitch.not-on-machine",
        "MEASURED_ON|2026-10-01|date.measured-before-sewn",
        "DIFFERENTIAL_FEED|3|number.unlikely",
        "MINUTES|75|minutes.unlikely",
        "MINUTES|1:30:00|minutes.unlikely",
      })
  void whatIsUnlikelyIsAskedAboutAndTakenOnAYes(PieceField field, String typed, String code) {
    PieceEntry entry = bench.good().with(field, typed);
    Answer<TestPiece> asked = bench.log().save(entry, bench.pieceRoom(), false);
    assertThat(asked.problems()).extracting(Problem::code).contains(code);
    assertThat(asked.problems()).noneMatch(Problem::refuses);
    assertThat(bench.room.book.pieces().count(PieceFilter.ALL)).isZero();
    assertThat(bench.log().save(entry, bench.pieceRoom(), true).isGood()).isTrue();
    assertThat(bench.room.book.pieces().count(PieceFilter.ALL)).isEqualTo(1);
  }

  @Test
  void minutesAtTheMachineAreKeptAndMayBeLeftOut() {
    TestPiece timed =
        bench
            .log()
            .save(bench.good().with(PieceField.MINUTES, "4:30"), bench.pieceRoom(), false)
            .value();
    assertThat(timed.measure().sewingMinutes()).isEqualTo(4.5);
    assertThat(bench.room.book.pieces().find(timed.id())).isEqualTo(timed);
    TestPiece untimed = bench.log().save(bench.good(), bench.pieceRoom(), false).value();
    assertThat(untimed.measure().sewingMinutes()).isNull();
  }

  /** How long one piece took says nothing of the next. */
  @Test
  void minutesAreNotCarriedOverToTheNextPiece() {
    TestPiece timed =
        bench
            .log()
            .save(bench.good().with(PieceField.MINUTES, "4.5"), bench.pieceRoom(), false)
            .value();
    StartPiece start = new StartPiece(bench.room.book);
    assertThat(start.again(timed, bench.pieceRoom()).at(PieceField.MINUTES)).isEmpty();
    assertThat(
            start
                .fresh(timed.whose().classId(), timed.whose().studentId(), null, bench.pieceRoom())
                .at(PieceField.MINUTES))
        .isEmpty();
  }

  @Test
  void allProblemsComeAtOnce() {
    PieceEntry entry = bench.good().with(PieceField.DIAL_WIDTH, "x").with(PieceField.GRADE, "9");
    assertThat(bench.log().save(entry, bench.pieceRoom(), false).problems()).hasSize(2);
  }

  @Test
  void ofThreePullsTheWeakestCounts() {
    PieceEntry entry =
        bench
            .good()
            .with(PieceField.END_2, "gave")
            .with(PieceField.END_LENGTH_2, "149")
            .with(PieceField.END_3, "gave")
            .with(PieceField.END_LENGTH_3, "14,6 cm");
    TestPiece piece = bench.log().save(entry, bench.pieceRoom(), false).value();
    assertThat(piece.measure().pulls()).hasSize(3);
    assertThat(piece.measure().counting()).isNotNull();
    assertThat(piece.measure().seamStretchPercent()).isEqualTo(46);
    assertThat(bench.room.book.pieces().find(piece.id())).isEqualTo(piece);
  }

  @Test
  void sewnAgainWithOneChangeItSaysWhichOne() {
    TestPiece first = bench.log().save(bench.good(), bench.pieceRoom(), false).value();
    PieceEntry again = new StartPiece(bench.room.book).again(first, bench.pieceRoom());
    assertThat(again.at(PieceField.DIAL_WIDTH)).isEqualTo("2.5");
    assertThat(again.at(PieceField.END_LENGTH)).isEmpty();
    PieceEntry wider =
        again
            .with(PieceField.DIAL_WIDTH, "3,5")
            .with(PieceField.END, "held")
            .with(PieceField.END_LENGTH, "153");
    TestPiece second = bench.log().save(wider, bench.pieceRoom(), false).value();
    assertThat(second.parent()).isNotNull();
    assertThat(java.util.Objects.requireNonNull(second.parent()).changed()).isEqualTo("dial-width");
    assertThat(bench.room.book.pieces().chainOf(second.id())).containsExactly(first, second);
  }

  @Test
  void twoChangesOrNoneAreAskedAbout() {
    TestPiece first = bench.log().save(bench.good(), bench.pieceRoom(), false).value();
    PieceEntry again = new StartPiece(bench.room.book).again(first, bench.pieceRoom());
    assertThat(codes(again)).containsExactly("change.none");
    PieceEntry two = again.with(PieceField.DIAL_WIDTH, "1").with(PieceField.PRESSURE, "higher");
    assertThat(codes(two)).containsExactly("change.several");
    Problem asked = OneChange.between(first, two, bench.pieceRoom()).asks().get(0);
    assertThat(Words.english().sayAtField(asked)).contains("(stitch width, presser-foot pressure)");
  }

  private List<String> codes(PieceEntry entry) {
    return bench.log().save(entry, bench.pieceRoom(), false).problems().stream()
        .map(Problem::code)
        .toList();
  }

  @Test
  void aRestWithoutAReadingAfterItIsNotRecorded() {
    PieceEntry usual = bench.good().with(PieceField.REST, "60");
    assertThat(saved(usual).measure().how().restS()).isEqualTo(60);
    PieceEntry unread = bench.good().with(PieceField.REST, "60").with(PieceField.RELEASED, "");
    assertThat(saved(unread).measure().how().restS()).isNull();
  }

  private TestPiece saved(PieceEntry entry) {
    return bench.log().save(entry, bench.pieceRoom(), false).value();
  }

  @Test
  void gaveAndHeldNeverBecomeOneNumber() {
    bench.log().save(bench.good(), bench.pieceRoom(), false).value();
    PieceEntry gave =
        bench.good().with(PieceField.END, "gave").with(PieceField.BROKE, "needle-thread");
    bench.log().save(gave, bench.pieceRoom(), false).value();
    assertThat(bench.room.book.pieces().list(PieceFilter.ALL))
        .extracting(each -> java.util.Objects.requireNonNull(each.measure().counting()).end())
        .containsExactlyInAnyOrder(SeamEnd.GAVE, SeamEnd.HELD);
  }

  @Test
  void aDraftIsThereAgainAndGoesOnceItsPieceIsSaved() {
    KeepDraft drafts = new KeepDraft(bench.room.book);
    PieceEntry half = bench.good().with(PieceField.END_LENGTH, "15x");
    drafts.keep(half);
    assertThat(drafts.find(half.studentId(), null)).isEqualTo(half);
    bench.log().save(half.with(PieceField.END_LENGTH, "152"), bench.pieceRoom(), false).value();
    assertThat(drafts.find(half.studentId(), null)).isNull();
  }

  /** A mistyped year is asked about; a machine whose clock is behind keeps nobody from saving. */
  @Test
  void aDayThatIsStillToComeIsAskedAbout() {
    PieceEntry entry =
        bench
            .good()
            .with(PieceField.SEWN_ON, "2062-10-05")
            .with(PieceField.MEASURED_ON, "2062-10-06");
    Answer<TestPiece> asked = bench.log().save(entry, bench.pieceRoom(), false);
    assertThat(asked.problems()).extracting(Problem::code).containsOnly("date.future").hasSize(2);
    assertThat(asked.problems()).noneMatch(Problem::refuses);
    TestPiece kept = bench.log().save(entry, bench.pieceRoom(), true).value();
    MendTestPiece mend = new MendTestPiece(bench.room.book, Classroom.CLOCK);
    PieceEntry again = MendTestPiece.typed(kept, bench.pieceRoom());
    assertThat(mend.save(kept, again, bench.pieceRoom(), false, false).isGood()).isTrue();
    PieceEntry other = again.with(PieceField.SEWN_ON, "2061-10-05");
    assertThat(mend.save(kept, other, bench.pieceRoom(), false, false).problems())
        .extracting(Problem::code)
        .containsExactly("date.future");
  }
}
