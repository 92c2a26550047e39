package walebook.book.open;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import walebook.book.gather.SourceBook;
import walebook.book.sqlite.Migrations;
import walebook.book.sqlite.SqliteLink;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/**
 * Makes somebody else's book ready to be read. The file and its folder stay as they are: a book of
 * an older shape, or one whose last program ended in the middle, is brought in order in a copy.
 */
final class BorrowBook {
  private static final String MAGIC = "SQLite format 3\0";

  /** Where the header of a file holds its shape and the program's id (SQLite file format, 1.3). */
  private static final int SHAPE_AT = 60;

  private static final int PROGRAM_AT = 68;
  private static final int HEADER = 100;

  private BorrowBook() {}

  static Answer<SourceBook> borrow(Path file, Path scratch) {
    try {
      if (Files.isDirectory(file)) {
        return refuse("book.is-folder", file, "");
      }
      if (!Files.exists(file)) {
        return refuse("book.missing", file, "");
      }
      byte[] header;
      try (InputStream in = Files.newInputStream(file)) {
        header = in.readNBytes(HEADER);
      }
      if (header.length == 0) {
        return refuse("book.empty-file", file, "");
      }
      String magic = new String(header, 0, Math.min(16, header.length), StandardCharsets.US_ASCII);
      if (!magic.equals(MAGIC)) {
        return refuse("book.not-a-book", file, "");
      }
      if (header.length < HEADER) {
        return refuse("book.damaged", file, "");
      }
      if (isOpen(file)) {
        return refuse("book.open-elsewhere", file, "");
      }
      return ready(file, ByteBuffer.wrap(header), scratch);
    } catch (IOException e) {
      return refuse("book.unreadable", file, String.valueOf(e.getMessage()));
    } catch (SQLException e) {
      return refuse("book.damaged", file, "");
    }
  }

  private static Answer<SourceBook> ready(Path file, ByteBuffer header, Path scratch)
      throws IOException, SQLException {
    if (header.getInt(PROGRAM_AT) != SqliteLink.APPLICATION_ID) {
      return refuse("book.other-program", file, "");
    }
    int shape = header.getInt(SHAPE_AT);
    if (shape > Migrations.newest()) {
      return refuse("book.newer", file, shape + " > " + Migrations.newest());
    }
    Path log = file.resolveSibling(file.getFileName() + "-wal");
    boolean unfinished = Files.exists(log) && Files.size(log) > 0;
    if (!unfinished && shape == Migrations.newest()) {
      String state = checked(file);
      return state.equals("ok")
          ? Answer.good(new SourceBook(file, file))
          : refuse("book.damaged", file, "");
    }
    Path copy = scratch.resolve("book.walebook");
    Files.copy(file, copy);
    if (unfinished) {
      Files.copy(log, scratch.resolve("book.walebook-wal"));
    }
    try (Connection link = SqliteLink.migrator(copy)) {
      String state = SqliteLink.ask(link, "PRAGMA quick_check(1)");
      if (!state.equals("ok")) {
        return refuse("book.damaged", file, "");
      }
      int really = Migrations.shapeOf(link);
      if (really < 1) {
        return refuse("book.damaged", file, "");
      }
      if (really > Migrations.newest()) {
        return refuse("book.newer", file, really + " > " + Migrations.newest());
      }
    }
    Migrations.apply(copy);
    return Answer.good(new SourceBook(file, copy));
  }

  private static String checked(Path file) throws SQLException {
    try (Connection link = SqliteLink.onlyLook(file)) {
      return SqliteLink.ask(link, "PRAGMA quick_check(1)");
    }
  }

  /** Asks for the lock that an open book holds, without making one. */
  private static boolean isOpen(Path file) throws IOException {
    Path lockFile = file.resolveSibling(file.getFileName() + ".lock");
    if (!Files.exists(lockFile) || !Files.isWritable(lockFile)) {
      return false;
    }
    try (FileChannel channel = FileChannel.open(lockFile, StandardOpenOption.WRITE);
        FileLock lock = channel.tryLock()) {
      return lock == null;
    } catch (OverlappingFileLockException e) {
      return true;
    }
  }

  private static Answer<SourceBook> refuse(String code, Path file, String found) {
    return Answer.bad(Problem.refuse(code, new Place.Path(file.toString()), found, ""));
  }
}
