package walebook.book;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** A book that is made once and then only copied, since making it takes far longer. */
public final class BookBytes {
  /** Makes the book in this file and leaves it closed. */
  @FunctionalInterface
  public interface Making {
    void in(Path file) throws Exception;
  }

  private final byte[] bytes;

  private BookBytes(byte[] bytes) {
    this.bytes = bytes;
  }

  /** Makes it in a folder that is gone afterwards. */
  public static BookBytes of(Making making) {
    try {
      Path folder = Files.createTempDirectory("book");
      Path file = folder.resolve("made.walebook");
      making.in(file);
      BookBytes made = new BookBytes(Files.readAllBytes(file));
      try (Stream<Path> all = Files.walk(folder)) {
        all.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
      }
      return made;
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  /** Puts a copy there. */
  public Path copyTo(Path file) {
    try {
      return Files.write(file, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
