package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import walebook.book.Classroom;

/** A book whose file was cut short: the command line names what helps. */
class DamagedBookCommandTest {
  @TempDir Path folder;

  private Path cutBook() throws IOException {
    Path book = folder.resolve("class.walebook");
    Classroom.in(book).close();
    byte[] whole = Files.readAllBytes(book);
    return Files.write(book, Arrays.copyOf(whole, whole.length / 2));
  }

  @ParameterizedTest
  @ValueSource(strings = {"book show", "piece list"})
  void namesTheBackupsAndTheRescue(String command) throws IOException {
    Path book = cutBook();
    Ran ran = Ran.on(book, command.split(" "));
    assertThat(ran.exit()).isEqualTo(Exit.NO_BOOK.code());
    assertThat(ran.err())
        .contains("damaged")
        .contains("book backups --book \"" + book + "\"")
        .contains("book restore --book \"" + book + "\" --copy FILE")
        .contains("book rescue --book \"" + book + "\" --into FILE");
  }

  @Test
  void keepsTheErrorOfAProgramToItsOneLine() throws IOException {
    assertThat(Ran.on(cutBook(), "book", "show", "--json").err().strip())
        .startsWith("{")
        .doesNotContain("\n");
  }

  @Test
  void aMissingBookIsNotCalledDamaged() {
    assertThat(Ran.on(folder.resolve("none.walebook"), "book", "show").err())
        .doesNotContain("rescue");
  }
}
