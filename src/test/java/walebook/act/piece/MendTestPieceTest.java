package walebook.act.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.record.TestPiece;

/** A saved piece mended in the form that it was logged in. */
@SuppressWarnings("NullAway.Init")
class MendTestPieceTest {
  @TempDir Path folder;
  private Bench bench;
  private TestPiece piece;

  @BeforeEach
  void open() {
    bench = new Bench(folder.resolve("class.walebook"));
    piece =
        bench
            .log()
            .save(
                bench
                    .good()
                    .with(PieceField.REMARK, "slow feed")
                    .with(PieceField.SEWN_LENGTH, "2.31")
                    .with(PieceField.REST, "60")
                    .with(PieceField.PULL, "firm")
                    .with(PieceField.END_2, "held")
                    .with(PieceField.END_LENGTH_2, "151,5"),
                bench.pieceRoom(),
                true)
            .value();
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private MendTestPiece mend() {
    return new MendTestPiece(bench.room.book, Clock.offset(Classroom.CLOCK, Duration.ofMinutes(5)));
  }

  private Answer<TestPiece> save(PieceEntry entry, boolean over) {
    return mend().save(piece, entry, bench.pieceRoom(), true, over);
  }

  @Test
  void openedAndSavedUntouchedNothingIsLost() {
    TestPiece same = save(MendTestPiece.typed(piece, bench.pieceRoom()), false).value();
    assertThat(same.whose()).isEqualTo(piece.whose());
    assertThat(same.cloth()).isEqualTo(piece.cloth());
    assertThat(same.setting()).isEqualTo(piece.setting());
    assertThat(same.measure()).isEqualTo(piece.measure());
    assertThat(same.seen()).isEqualTo(piece.seen());
    assertThat(same.code()).isEqualTo(piece.code());
    assertThat(same.stamp()).isEqualTo(piece.stamp());
    assertThat(bench.room.book.history().of("test_piece", piece.id()))
        .allMatch(walebook.record.Change::isNew);
    assertThat(bench.room.book.pieces().find(piece.id())).isEqualTo(same);
  }

  @Test
  void aSlipOfTheKeysIsMended() {
    PieceEntry typed =
        MendTestPiece.typed(piece, bench.pieceRoom())
            .with(PieceField.END_LENGTH, "125")
            .with(PieceField.FAULTS, "");
    TestPiece mended = save(typed, false).value();
    assertThat(mended.measure().pulls().get(0).endMm()).isEqualTo(125);
    assertThat(mended.seen().faults()).isEmpty();
    assertThat(bench.room.book.pieces().find(piece.id())).isEqualTo(mended);
  }

  @Test
  void whatIsWrongIsRefusedAndTheBookStaysAsItWas() {
    Answer<TestPiece> refused =
        save(
            MendTestPiece.typed(piece, bench.pieceRoom()).with(PieceField.END_LENGTH, "12o"),
            false);
    assertThat(refused.problems())
        .extracting(Problem::code)
        .containsExactly("number.letter-for-digit");
    assertThat(bench.room.book.pieces().find(piece.id())).isEqualTo(piece);
  }

  @Test
  void somebodyElsesSaveIsAskedAboutBeforeItGivesWay() {
    PieceEntry mine = MendTestPiece.typed(piece, bench.pieceRoom()).with(PieceField.REMARK, "mine");
    TestPiece theirs = save(mine.with(PieceField.REMARK, "theirs"), false).value();
    int steps = bench.room.book.history().latest(100).size();
    Answer<TestPiece> asked = bench.room.book.inOneStep(() -> save(mine, false));
    assertThat(bench.room.book.history().latest(100)).as("no trace of it").hasSize(steps);
    assertThat(asked.problems()).extracting(Problem::code).containsExactly(MendTestPiece.STALE);
    assertThat(asked.problems().get(0).refuses()).isFalse();
    assertThat(bench.room.book.pieces().find(piece.id())).isEqualTo(theirs);
    assertThat(save(mine, true).value().seen().remark()).isEqualTo("mine");
    assertThat(Objects.requireNonNull(bench.room.book.pieces().find(piece.id())).stamp().version())
        .isEqualTo(3);
  }

  @Test
  void theChangeAgainstThePieceBeforeIsWorkedOutAnew() {
    PieceEntry again =
        new StartPiece(bench.room.book)
            .again(piece, bench.pieceRoom())
            .with(PieceField.DIAL_WIDTH, "3.5");
    piece = bench.log().save(again, bench.pieceRoom(), true).value();
    PieceEntry typed =
        MendTestPiece.typed(piece, bench.pieceRoom())
            .with(PieceField.DIAL_WIDTH, "2.5")
            .with(PieceField.PRESSURE, "higher");
    TestPiece mended = save(typed, false).value();
    assertThat(Objects.requireNonNull(mended.parent()).keys()).containsExactly("pressure");
  }

  @Test
  void whatIsTypedOverASavedPieceIsKeptAsADraftOfItsOwn() {
    KeepDraft drafts = new KeepDraft(bench.room.book);
    PieceEntry half =
        MendTestPiece.typed(piece, bench.pieceRoom()).with(PieceField.REMARK, "half a th");
    drafts.keepMending(half);
    assertThat(drafts.findMending(piece.id())).isEqualTo(half);
    assertThat(drafts.find(piece.whose().studentId(), null)).isNull();
    drafts.dropMending(half);
    assertThat(drafts.findMending(piece.id())).isNull();
  }
}
