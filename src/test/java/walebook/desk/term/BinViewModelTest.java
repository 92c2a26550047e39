package walebook.desk.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.desk.common.ToBin;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

class BinViewModelTest {
  @TempDir Path folder;

  private static Notice last(List<Notice> told) {
    return told.get(told.size() - 1);
  }

  @Test
  void aPieceIsPutInTakenOutAndForgottenAtTheSecondPress() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Session session = Sessions.of(room);
      BinViewModel model = new BinViewModel(session);
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      room.book.pieces().add(piece);
      List<Notice> told = new ArrayList<>();
      new ToBin(session).put("cloth", room.cloth.id(), told::add, () -> {});
      assertThat(last(told).says()).contains("still in use by piece");
      assertThat(last(told).undo()).isNull();
      new ToBin(session).put("test_piece", piece.id(), told::add, () -> {});
      assertThat(model.items()).hasSize(1);
      java.util.Objects.requireNonNull(last(told).undo()).run();
      assertThat(model.items()).isEmpty();
      assertThat(last(told).says()).startsWith("Back from the bin: piece ");
      new ToBin(session).put("test_piece", piece.id(), told::add, () -> {});
      model.restore(model.items().get(0));
      assertThat(room.book.pieces().find(piece.id())).isNotNull();
      assertThat(model.noticeProperty().get().says()).startsWith("Back from the bin: piece ");
      room.book
          .history()
          .undo(java.util.Objects.requireNonNull(room.book.history().lastDone(null)), session.by());
      session.changed();
      assertThat(model.items()).hasSize(1);
      assertThat(model.noticeProperty().get().says()).as("no longer true").isEmpty();
      model.restore(model.items().get(0));
      model.empty();
      assertThat(model.emptyingProperty().get()).isFalse();
      new ToBin(session).put("test_piece", piece.id(), told::add, () -> {});
      model.empty();
      assertThat(model.emptyingProperty().get()).isTrue();
      assertThat(model.items()).hasSize(1);
      model.empty();
      assertThat(model.items()).isEmpty();
      assertThat(model.noticeProperty().get().says()).contains("gone for good: 1");
    }
  }
}
