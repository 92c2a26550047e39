package walebook.act.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.DemoBook;
import walebook.book.Book;
import walebook.sheet.TermChoice;
import walebook.tables.SharedTables;
import walebook.words.Words;

class GatherExtrasTest {
  @TempDir Path folder;

  @Test
  void theKitNamesTheRoomsClothsAndTheirMetres() {
    Path file = folder.resolve("demo.walebook");
    try (Book book = DemoBook.open(file)) {
      assertThat(
              new GatherExtras(book, Words.english(), SharedTables.read())
                  .of(book.classes().all().get(0).id(), TermChoice.CODES)
                  .kit())
          .anySatisfy(
              row -> {
                assertThat(row.what()).contains("Gull jersey");
                assertThat(row.unit()).isEqualTo("m");
                // Twelve alike would need 1.7 (WorkOutKitTest); some were dealt fewer pieces.
                assertThat(row.forClass()).isEqualTo(1.6);
              });
    }
  }
}
