package walebook.book.open;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * Says that a book is open, so that two programs never write one book. The system drops the lock
 * when a process ends in whatever way, so a file left behind locks nobody out.
 */
final class BookLock implements AutoCloseable {
  private final Path file;
  private final FileChannel channel;

  private BookLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Takes the lock.
   *
   * @return null when somebody else has it
   * @throws IOException when the folder can't be written
   */
  static @Nullable BookLock take(Path book) throws IOException {
    Path file = book.resolveSibling(book.getFileName() + ".lock");
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    FileLock lock = null;
    try {
      lock = channel.tryLock();
    } catch (OverlappingFileLockException e) {
      // Held by this very process: as good as held by another.
      lock = null;
    }
    if (lock == null) {
      channel.close();
      return null;
    }
    return new BookLock(file, channel);
  }

  @Override
  public void close() throws IOException {
    Files.deleteIfExists(file);
    channel.close();
  }
}
