package walebook.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;
import walebook.words.Words;

class BookWaysTest {
  @TempDir Path folder;

  @Test
  void aNewBookHasNothingToTakeBack() {
    BookWays ways =
        new BookWays(
            new SqliteFiles(),
            KeptSettings.at(folder.resolve("settings.properties")),
            Words.english(),
            Classroom.CLOCK,
            folder);
    try (Book book = ways.makeBook(folder.resolve("new.walebook"), "Pier hall").value()) {
      assertThat(book.history().latest(10)).isEmpty();
    }
  }
}
