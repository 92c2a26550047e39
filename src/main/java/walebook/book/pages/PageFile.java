package walebook.book.pages;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A database file as numbered pages, what its log of writes holds laid over it. Only ever reads.
 *
 * <p>Source: "Database File Format" and "WAL-mode File Format", the published description of the
 * SQLite file format.
 */
public final class PageFile implements Closeable {
  /** What this program writes; taken where the header does not say. */
  public static final int USUAL_SIZE = 4096;

  private static final int HEADER = 100;
  private static final int SIZE_AT = 16;
  private static final int RESERVED_AT = 20;
  private static final int FREE_AT = 32;
  private static final int SHAPE_AT = 60;
  private static final int LARGEST = 65536;

  private final FileChannel file;
  private final @Nullable FileChannel log;
  private final Map<Integer, Long> logged;
  private final int pageSize;
  private final int pages;

  private PageFile(
      FileChannel file,
      @Nullable FileChannel log,
      Map<Integer, Long> logged,
      int pageSize,
      int pages) {
    this.file = file;
    this.log = log;
    this.logged = logged;
    this.pageSize = pageSize;
    this.pages = pages;
  }

  /** Opens a file together with the log beside it. */
  public static PageFile open(Path path) throws IOException {
    FileChannel file = FileChannel.open(path, StandardOpenOption.READ);
    try {
      int size = pageSize(file);
      Path beside = path.resolveSibling(path.getFileName() + "-wal");
      FileChannel log =
          Files.isRegularFile(beside) ? FileChannel.open(beside, StandardOpenOption.READ) : null;
      Map<Integer, Long> logged = log == null ? Map.of() : WriteLog.frames(log, size);
      int most = logged.keySet().stream().mapToInt(Integer::intValue).max().orElse(0);
      long own = (file.size() + size - 1) / size;
      return new PageFile(file, log, logged, size, (int) Math.min(1 << 30, Math.max(own, most)));
    } catch (IOException | RuntimeException e) {
      file.close();
      throw e;
    }
  }

  private static int pageSize(FileChannel file) throws IOException {
    ByteBuffer header = ByteBuffer.allocate(HEADER);
    fill(file, header, 0);
    int size = header.getShort(SIZE_AT) & 0xffff;
    size = size == 1 ? LARGEST : size;
    return size >= 512 && Integer.bitCount(size) == 1 ? size : USUAL_SIZE;
  }

  static void fill(FileChannel from, ByteBuffer into, long at) throws IOException {
    while (into.hasRemaining()) {
      int read = from.read(into, at + into.position());
      if (read < 0) {
        return;
      }
    }
  }

  /** How many pages there are; they are numbered from 1. */
  public int pages() {
    return pages;
  }

  /** The number that the header gives for the shape; 0 when it gives none. */
  public int shape() throws IOException {
    return page(1).getInt(SHAPE_AT);
  }

  int firstFree() throws IOException {
    return page(1).getInt(FREE_AT);
  }

  /** Bytes of a page that cells may use. */
  int usable() throws IOException {
    int reserved = page(1).get(RESERVED_AT) & 0xff;
    return reserved > 32 ? pageSize : pageSize - reserved;
  }

  boolean holds(int number) {
    return number >= 1 && number <= pages;
  }

  /** A page whole; what the file lacks of it is zero. */
  ByteBuffer page(int number) throws IOException {
    ByteBuffer page = ByteBuffer.allocate(pageSize);
    Long at = logged.get(number);
    if (at != null && log != null) {
      fill(log, page, at);
    } else {
      fill(file, page, (number - 1L) * pageSize);
    }
    return page.clear();
  }

  @Override
  public void close() throws IOException {
    file.close();
    if (log != null) {
      log.close();
    }
  }
}
