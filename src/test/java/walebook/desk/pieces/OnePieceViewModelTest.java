package walebook.desk.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.desk.PlannedClass;
import walebook.desk.WaitingWork;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.record.Parent;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;
import walebook.working.Verdict;

class OnePieceViewModelTest {
  @TempDir Path folder;

  @Test
  void showsSettingsMeasuresAndTheChainOfAttempts() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("class.walebook"), 1)) {
      TestPiece first = made.room.piece(SeamEnd.GAVE, 130);
      TestPiece second =
          made.room.piece(
              made.room.first.id(),
              3.5,
              List.of(new PullReading(1, SeamEnd.HELD, 160)),
              List.of(Classroom.fault("wavy-seam", 2)),
              new Parent(first.id(), "dial-width"));
      made.room.book.pieces().add(first);
      made.room.book.pieces().add(second);
      Session session = made.session(Worker.sameThread(), PlannedClass.OneFile.NONE);
      OnePieceViewModel one = new OnePieceViewModel(session);
      one.open(second.id());
      WholePiece shown = Objects.requireNonNull(one.pieceProperty().get());
      assertThat(shown.settings()).contains(new WholePiece.Line("cloth", "Grey jersey"));
      assertThat(shown.measures()).contains(new WholePiece.Line("seam stretch", "≥ 60.0 %"));
      assertThat(shown.seen())
          .contains(
              new WholePiece.Line("wavy seam", "2 at arm's length, all along, off the machine"));
      assertThat(shown.meaning().verdict().verdict()).isEqualTo(Verdict.MET);
      assertThat(shown.chain()).hasSize(2);
      assertThat(shown.chain().get(1).change()).isEqualTo("changed: stitch width");
      assertThat(shown.chain().get(1).shown()).isTrue();
      assertThat(shown.who()).startsWith("Ada Pier");
      assertThat(shown.causes()).extracting(CauseCard::fault).containsExactly("wavy-seam");
      CauseCard card = shown.causes().get(0);
      assertThat(card.title()).isEqualTo("Likely causes: wavy seam");
      assertThat(card.likely()).isNotEmpty().allMatch(each -> !each.why().isEmpty());
      // Seen off the machine, so that no iron had touched it.
      assertThat(card.ruledOut())
          .extracting(CauseCard.Line::says)
          .contains("iron dragged along it");
      session.namesHiddenProperty().set(true);
      assertThat(Objects.requireNonNull(one.pieceProperty().get()).who()).startsWith("S01");
    }
  }

  @Test
  void nothingIsShownWhileAnotherPieceIsReadAndALateAnswerIsDropped() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("slow.walebook"), 1)) {
      List<TestPiece> pieces =
          List.of(
              made.room.piece(SeamEnd.GAVE, 130),
              made.room.piece(SeamEnd.GAVE, 140),
              made.room.piece(SeamEnd.HELD, 150));
      pieces.forEach(made.room.book.pieces()::add);
      WaitingWork work = new WaitingWork();
      OnePieceViewModel one = new OnePieceViewModel(made.session(work, PlannedClass.OneFile.NONE));
      one.open(pieces.get(0).id());
      assertThat(shownBy(one)).isEqualTo(pieces.get(0).id());
      work.hold();
      one.open(pieces.get(1).id());
      assertThat(one.pieceProperty().get()).isNull();
      one.open(pieces.get(2).id());
      work.release();
      assertThat(shownBy(one)).isEqualTo(pieces.get(2).id());
    }
  }

  private static UUID shownBy(OnePieceViewModel one) {
    return Objects.requireNonNull(one.pieceProperty().get()).id();
  }

  @Test
  void showsNothingForAPieceThatIsNotThere() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("empty.walebook"), 1)) {
      Session session = made.session(Worker.sameThread(), PlannedClass.OneFile.NONE);
      OnePieceViewModel one = new OnePieceViewModel(session);
      one.open(Ids.next());
      assertThat(one.pieceProperty().get()).isNull();
    }
  }
}
