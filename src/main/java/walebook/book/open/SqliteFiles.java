package walebook.book.open;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import walebook.book.Book;
import walebook.book.BookCopy;
import walebook.book.BookFiles;
import walebook.book.BookTrouble;
import walebook.book.Ids;
import walebook.book.gather.SourceBook;
import walebook.book.jooq.JooqBook;
import walebook.book.sqlite.Backups;
import walebook.book.sqlite.BookCheck;
import walebook.book.sqlite.Migrations;
import walebook.book.sqlite.gather.StarterBook;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.record.BookInfo;
import walebook.record.Stamp;

/** Books as SQLite files. */
public final class SqliteFiles implements BookFiles {
  private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
  private static final int HEADER = 100;
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
  private static final System.Logger LOG = System.getLogger(SqliteFiles.class.getName());

  @Override
  public Answer<Book> make(Path file, String name, boolean invented, Unit lengthUnit, Clock clock) {
    if (Files.exists(file)) {
      return refuse("book.exists", file, "");
    }
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      return refuse("book.no-folder", file, String.valueOf(folder));
    }
    if (name.isBlank()) {
      return Answer.bad(Problem.refuse("text.empty", Place.field("book-name"), "", ""));
    }
    return withLock(
        file,
        clock,
        lock -> {
          Migrations.apply(file);
          JooqBook book = JooqBook.over(file, lock, clock);
          Stamp fresh = Stamp.fresh(clock.instant());
          book.begin(new BookInfo(Ids.next(), name.strip(), invented, lengthUnit, fresh));
          return Answer.good(book);
        });
  }

  @Override
  public Answer<Book> open(Path file, Clock clock) {
    try {
      Problem wrong = atFirstSight(file, clock);
      if (wrong != null) {
        return Answer.bad(wrong);
      }
    } catch (IOException e) {
      return refuse("book.unreadable", file, Reason.of(e));
    }
    return withLock(
        file,
        clock,
        lock -> {
          Problem wrong = inspect(file, clock);
          if (wrong != null) {
            return Answer.bad(wrong);
          }
          List<Problem> said = copied(file, clock);
          return new Answer.Good<>(JooqBook.over(file, lock, clock), said);
        });
  }

  @Override
  public Answer<SourceBook> borrow(Path file, Path scratch) {
    return BorrowBook.borrow(file, scratch);
  }

  @Override
  public void starter(
      Path from, Path file, String name, UUID classId, UUID studentId, Clock clock) {
    try {
      new StarterBook(from, clock).write(file, Ids.next(), name, classId, studentId);
    } catch (IOException | SQLException e) {
      throw new BookTrouble(isFull(e) ? "full" : "unknown", Reason.of(e), e);
    }
  }

  @Override
  public Path backUpBeforeGathering(Path book, Clock clock) {
    try {
      return Backups.beforeGathering(book, clock);
    } catch (IOException | SQLException e) {
      throw new BookTrouble(isFull(e) ? "full" : "unknown", Reason.of(e), e);
    }
  }

  private static boolean isFull(Exception e) {
    return e instanceof SQLiteException sqlite
        && (sqlite.getResultCode() == SQLiteErrorCode.SQLITE_FULL
            || sqlite.getResultCode() == SQLiteErrorCode.SQLITE_IOERR_SHMSIZE);
  }

  private interface Opening {
    Answer<Book> run(BookLock lock) throws SQLException, IOException;
  }

  private static Answer<Book> withLock(Path file, Clock clock, Opening opening) {
    BookLock lock;
    try {
      lock = BookLock.take(file);
    } catch (IOException e) {
      return refuse("book.folder-read-only", file, Reason.of(e));
    }
    if (lock == null) {
      return refuse("book.open-elsewhere", file, "");
    }
    Answer<Book> answer;
    try {
      answer = opening.run(lock);
    } catch (SQLException e) {
      LOG.log(System.Logger.Level.DEBUG, "opening", e);
      answer =
          isFull(e)
              ? refuse("book.disk-full", file, Reason.of(e))
              : Answer.bad(damaged(file, clock));
    } catch (IOException e) {
      answer = refuse("book.folder-read-only", file, Reason.of(e));
    }
    if (!answer.isGood()) {
      letGo(lock);
    }
    return answer;
  }

  private static void letGo(BookLock lock) {
    try {
      lock.close();
    } catch (IOException e) {
      // The system drops the lock with the process; there is nothing a person could do here.
      LOG.log(System.Logger.Level.WARNING, "lock", e);
    }
  }

  /** What the bare file tells before any database touches it. */
  private static @Nullable Problem atFirstSight(Path file, Clock clock) throws IOException {
    if (Files.isDirectory(file)) {
      return problem("book.is-folder", file, "");
    }
    if (!Files.exists(file)) {
      return problem("book.missing", file, "");
    }
    if (!Files.isReadable(file) || !Files.isWritable(file)) {
      return problem("book.read-only", file, "");
    }
    byte[] header;
    try (InputStream in = Files.newInputStream(file)) {
      header = in.readNBytes(HEADER);
    }
    if (header.length == 0) {
      return problem("book.empty-file", file, "");
    }
    if (!Arrays.equals(MAGIC, Arrays.copyOf(header, MAGIC.length))) {
      return problem("book.not-a-book", file, "");
    }
    if (header.length < HEADER) {
      return damaged(file, clock);
    }
    return null;
  }

  private static @Nullable Problem inspect(Path file, Clock clock)
      throws SQLException, IOException {
    BookCheck.rollBack(file);
    BookCheck.Finding found = BookCheck.of(file);
    switch (found.kind()) {
      case OTHER_PROGRAM -> {
        return problem("book.other-program", file, "");
      }
      case NEWER -> {
        return problem("book.newer", file, found.shape() + " > " + Migrations.newest());
      }
      case DAMAGED -> {
        LOG.log(System.Logger.Level.DEBUG, found.says());
        return damaged(file, clock);
      }
      case WHOLE -> {
        if (found.shape() < Migrations.newest()) {
          Backups.beforeMigration(file, clock, Migrations.newest());
          Migrations.apply(file);
        }
      }
    }
    return null;
  }

  /** A book opens also where no copy of it can be made, such as on a full disk; it is said. */
  private static List<Problem> copied(Path file, Clock clock) {
    try {
      Backups.roll(file, clock);
      return List.of();
    } catch (SQLException | IOException e) {
      return List.of(
          Problem.ask("book.no-copy", new Place.Path(file.toString()), Reason.of(e), ""));
    }
  }

  /** Copies are spoken of only where there are some, with the day of the newest. */
  private static Problem damaged(Path file, Clock clock) {
    List<BookCopy> copies;
    try {
      copies = Backups.list(file);
    } catch (IOException e) {
      copies = List.of();
    }
    return copies.isEmpty()
        ? problem("book.damaged", file, "")
        : problem(
            "book.damaged-copied",
            file,
            WHEN.format(copies.get(0).madeAt().atZone(clock.getZone())));
  }

  private static Answer<Book> refuse(String code, Path file, String found) {
    return Answer.bad(problem(code, file, found));
  }

  private static Problem problem(String code, Path file, String found) {
    return Problem.refuse(code, new Place.Path(file.toString()), found, "");
  }
}
