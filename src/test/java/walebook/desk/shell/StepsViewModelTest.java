package walebook.desk.shell;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.record.SeamEnd;
import walebook.record.Seen;
import walebook.record.TestPiece;

class StepsViewModelTest {
  @TempDir Path folder;

  @Test
  void theLastThingIsOfferedTakenBackAndDoneAgain() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Session session = Sessions.of(room);
      StepsViewModel model = new StepsViewModel(session);
      session.studentProperty().set(room.first);
      assertThat(model.undoProperty().get()).isNull();
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      room.book.pieces().add(piece);
      session.changed();
      assertThat(requireNonNull(model.undoProperty().get()).says()).startsWith("saved piece ");
      assertThat(model.redoProperty().get()).isNull();
      model.undo();
      assertThat(room.book.pieces().list(PieceFilter.ALL)).isEmpty();
      assertThat(model.saysProperty().get()).startsWith("Taken back: saved piece ");
      assertThat(model.undoProperty().get()).isNull();
      assertThat(requireNonNull(model.redoProperty().get()).says()).startsWith("saved piece ");
      model.redo();
      assertThat(room.book.pieces().find(piece.id())).isNotNull();
      assertThat(model.saysProperty().get()).startsWith("Done again: ");
      assertThat(room.book.history().of("test_piece", piece.id()).get(0).by().name())
          .isEqualTo("Ada Pier");
      session.changed();
      assertThat(model.saysProperty().get()).isEmpty();
    }
  }

  @Test
  void whatSomebodyElseChangedSinceStaysAndTheyAreNamed() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Session session = Sessions.of(room);
      StepsViewModel model = new StepsViewModel(session);
      session.studentProperty().set(room.first);
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      room.book.pieces().add(piece);
      session.studentProperty().set(room.second);
      assertThat(model.undoProperty().get()).isNull();
      room.book.pieces().update(piece.with(Seen.NOTHING).with(piece.stamp().next(Classroom.NOW)));
      session.studentProperty().set(room.first);
      model.undo();
      assertThat(model.saysProperty().get()).contains("Bo Quay").contains("changed piece");
      assertThat(room.book.pieces().find(piece.id())).isNotNull();
      session.namesHiddenProperty().set(true);
      model.undo();
      assertThat(model.saysProperty().get()).contains("S02").doesNotContain("Bo Quay");
    }
  }
}
