package walebook.sheet;

import java.io.BufferedOutputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.UUID;

/** A file that appears whole or not at all: written beside its place, then moved there. */
public final class WholeFile {
  private WholeFile() {}

  /** What writes the content. */
  @FunctionalInterface
  public interface Content {
    void to(OutputStream out) throws IOException;
  }

  /**
   * Writes a file in the place of one that may be there. On any trouble what was there stays and
   * nothing else is left behind.
   */
  public static void write(Path file, Content content) throws IOException {
    Path absolute = file.toAbsolutePath();
    Path part = absolute.resolveSibling("." + UUID.randomUUID() + ".part");
    try {
      try (FileOutputStream raw = new FileOutputStream(part.toFile());
          OutputStream out = new BufferedOutputStream(raw, 1 << 16)) {
        content.to(out);
        out.flush();
        raw.getFD().sync();
      }
      move(part, absolute);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  private static void move(Path part, Path file) throws IOException {
    try {
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
