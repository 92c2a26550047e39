package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.ListBackups;
import walebook.book.Classroom;
import walebook.book.open.SqliteCare;
import walebook.record.PieceCode;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;
import walebook.words.Words;

class BackupsViewModelTest {
  @TempDir Path folder;
  private final List<Path> goneBack = new ArrayList<>();

  private BackupsViewModel model(Path book) {
    return new BackupsViewModel(
        book,
        new SqliteCare(),
        Words.english(),
        Classroom.CLOCK,
        Worker.sameThread(),
        fault -> {
          throw new AssertionError(fault);
        },
        goneBack::add);
  }

  @Test
  void showsWhatGoingBackWouldChangeAndGoesBackToTheChosenOne() {
    Path file = folder.resolve("class.walebook");
    try (Classroom room = Classroom.in(file)) {
      BackupsViewModel model = model(file);
      assertThat(model.backups()).isEmpty();
      model.goBack();
      assertThat(goneBack).isEmpty();
      model.make();
      ListBackups.Backup backup = model.backups().get(0);
      assertThat(model.line(backup)).contains("2026-10-05 18:30").doesNotContain("[");
      model.choose(backup);
      assertThat(model.changes()).singleElement().asString().contains("the same");
      TestPiece piece = room.piece(SeamEnd.GAVE, 131);
      room.book.pieces().add(piece);
      model.choose(backup);
      assertThat(String.join("\n", model.changes()))
          .contains(
              "would be gone: 1 (" + PieceCode.spoken(piece.code()) + ")", "Test pieces: 1 now, 0");
      model.goBack();
      assertThat(goneBack).containsExactly(backup.copy().file());
    }
  }

  @Test
  void aBackupThatIsDamagedItselfIsNotGoneBackTo() throws Exception {
    Path file = folder.resolve("class.walebook");
    Classroom.in(file).close();
    BackupsViewModel model = model(file);
    model.make();
    Files.write(model.backups().get(0).copy().file(), new byte[5000]);
    BackupsViewModel again = model(file);
    assertThat(again.backups().get(0).pieces()).isEqualTo(ListBackups.UNREADABLE);
    again.choose(again.backups().get(0));
    assertThat(again.saysProperty().get()).contains("can’t be read");
    again.goBack();
    assertThat(goneBack).isEmpty();
  }
}
