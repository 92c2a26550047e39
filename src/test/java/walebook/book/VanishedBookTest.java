package walebook.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.open.SqliteCare;
import walebook.record.By;
import walebook.record.SeamEnd;

/** The folder of an open book is moved away, as when a stick is pulled out, and comes back. */
class VanishedBookTest {
  @TempDir Path folder;

  @Test
  void nothingIsAcknowledgedWhileTheFolderIsGoneAndItGoesOnWhenItIsBack() throws Exception {
    Path stick = Files.createDirectory(folder.resolve("stick"));
    Path file = stick.resolve("class.walebook");
    Path away = folder.resolve("away");
    try (Classroom room = Classroom.in(file)) {
      room.book.pieces().add(room.piece(SeamEnd.GAVE, 140));
      assumeTrue(canMove(stick, away), "this system holds the folder of an open file");
      gone(() -> room.book.pieces().add(room.piece(SeamEnd.GAVE, 150)));
      gone(() -> room.book.bin().empty(By.NOBODY));
      gone(() -> room.book.gathering().conflicts());
      assertThat(stick).doesNotExist();
      assertThat(
              new SqliteCare()
                  .backUp(file, BookCopy.Why.ASKED, null, Classroom.CLOCK)
                  .problems()
                  .get(0)
                  .code())
          .isEqualTo("book.gone");
      Files.move(away, stick);
      room.book.pieces().add(room.piece(SeamEnd.GAVE, 160));
      assertThat(room.book.pieces().count(PieceFilter.ALL)).isEqualTo(2);
    }
    try (Book book = new walebook.book.open.SqliteFiles().open(file, Classroom.CLOCK).value()) {
      assertThat(book.pieces().count(PieceFilter.ALL)).isEqualTo(2);
    }
  }

  private static void gone(Runnable write) {
    assertThatThrownBy(write::run)
        .isInstanceOfSatisfying(
            BookTrouble.class, trouble -> assertThat(trouble.code()).isEqualTo("gone"));
  }

  private static boolean canMove(Path from, Path to) {
    try {
      Files.move(from, to);
      return true;
    } catch (IOException e) {
      return false;
    }
  }
}
