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
  /** A disk with less than this is full: a file system keeps some for itself. */
  private static final long ROOM_LEFT = 1 << 16;

  private WholeFile() {}

  /** There was no room for the whole file. */
  public static final class FullDisk extends IOException {
    private static final long serialVersionUID = 1;

    FullDisk(Throwable cause) {
      super(cause);
    }
  }

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
    write(file, true, content);
  }

  /**
   * The same where nothing is to be replaced.
   *
   * @throws java.nio.file.FileAlreadyExistsException when there is a file, even one that came while
   *     this was written
   */
  public static void writeNew(Path file, Content content) throws IOException {
    write(file, false, content);
  }

  private static void write(Path file, boolean replace, Content content) throws IOException {
    Path absolute = file.toAbsolutePath();
    Path part = absolute.resolveSibling("." + UUID.randomUUID() + ".part");
    try {
      try (FileOutputStream raw = new FileOutputStream(part.toFile());
          OutputStream out = new BufferedOutputStream(raw, 1 << 16)) {
        content.to(out);
        out.flush();
        raw.getFD().sync();
      } catch (IOException | RuntimeException e) {
        if (isFull(part)) {
          throw new FullDisk(e);
        }
        throw e;
      }
      if (replace) {
        move(part, absolute);
      } else {
        Files.move(part, absolute);
      }
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** Asked while what was written so far still stands there. */
  private static boolean isFull(Path part) throws IOException {
    return Files.exists(part) && Files.getFileStore(part).getUsableSpace() < ROOM_LEFT;
  }

  private static void move(Path part, Path file) throws IOException {
    try {
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
