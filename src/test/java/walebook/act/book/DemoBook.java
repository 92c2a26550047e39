package walebook.act.book;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;

/**
 * The demo book for tests, made once for all that a runner runs; each gets a copy of its own and
 * may change it.
 */
public final class DemoBook {
  private static final byte[] MADE = made();

  private DemoBook() {}

  /** Puts a copy there, closed. */
  public static Path copyTo(Path file) {
    try {
      return Files.write(file, MADE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Puts a copy there and opens it. */
  public static Book open(Path file) {
    return new SqliteFiles().open(copyTo(file), Classroom.CLOCK).value();
  }

  private static byte[] made() {
    try {
      Path folder = Files.createTempDirectory("demo");
      Path file = folder.resolve(MakeDemoBook.FILE);
      new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK)
          .make(file, MakeDemoBook.SEED)
          .value()
          .close();
      byte[] made = Files.readAllBytes(file);
      try (Stream<Path> all = Files.walk(folder)) {
        all.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
      }
      return made;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
