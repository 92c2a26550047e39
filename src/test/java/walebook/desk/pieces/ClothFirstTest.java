package walebook.desk.pieces;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.common.ToBin;
import walebook.quantity.Unit;

class ClothFirstTest {
  @TempDir Path folder;

  @Test
  void aRoomWithoutClothLeadsToTheCloths() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Session session = Sessions.of(room);
      session.studentProperty().set(room.first);
      PiecesViewModel place = new PiecesViewModel(session, Unit.MM);
      place.logOwn();
      assertThat(place.clothMissingProperty().get()).isFalse();
      new ToBin(session).put("cloth", room.cloth.id(), notice -> {}, () -> {});
      place.logOwn();
      assertThat(place.modeProperty().get()).isEqualTo(PiecesViewModel.Mode.FORM);
      assertThat(place.clothMissingProperty().get()).isTrue();
      place.toCloths();
      assertThat(place.modeProperty().get()).isEqualTo(PiecesViewModel.Mode.LIST);
      assertThat(requireNonNull(session.wishProperty().get()).place()).isEqualTo("cloths");
    }
  }
}
