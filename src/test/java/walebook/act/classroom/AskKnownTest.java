package walebook.act.classroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.compare.FairQuestion;
import walebook.compare.Outcome;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

class AskKnownTest {
  @TempDir Path folder;

  private static FairQuestion question() {
    return FairQuestion.of(Outcome.SEAM_STRETCH, List.of());
  }

  @Test
  void everyStitchIsNamedOnceWhateverItsClothAndInTheAlphabetsOrder() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      room.book.pieces().add(piece);
      room.book.pieces().add(room.piece(SeamEnd.HELD, 150));
      AskKnown act = new AskKnown(List.of(room.book));
      assertThat(act.stitches(null)).containsExactly(piece.setting().stitchName());
      assertThat(act.stitches("no such cloth")).isEmpty();
    }
  }

  @Test
  void itStopsWhereItIsToldToAndTheBookCanBeAskedAgain() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      room.book.pieces().add(room.piece(SeamEnd.GAVE, 140));
      Runnable stopped =
          () -> {
            throw new CancellationException();
          };
      AskKnown act = new AskKnown(List.of(room.book), stopped);
      assertThatThrownBy(() -> act.ask(question(), null, null, false))
          .isInstanceOf(CancellationException.class);
      assertThat(new AskKnown(List.of(room.book)).ask(question(), null, null, false).classes())
          .hasSize(1);
    }
  }
}
