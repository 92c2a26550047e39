package walebook.book.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import walebook.book.BookCopy;

/**
 * Puts a copy in the place of a book. Until the last step, one move of a finished file, the book is
 * what it was; after it, it is the copy. There is no state between.
 */
public final class Restore {
  private static final DateTimeFormatter NAME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH-mm-ss", Locale.ROOT).withZone(ZoneOffset.UTC);

  private static final List<String> SIDES = List.of("-wal", "-shm", "-journal");

  private Restore() {}

  /**
   * Goes back to a copy; the book must be locked and closed.
   *
   * @return where the state from before is kept
   */
  public static Path run(Path book, Path copy, Clock clock) throws IOException, SQLException {
    Path fresh = book.resolveSibling(book.getFileName() + ".restoring");
    clear(fresh);
    try {
      Backups.copy(copy, fresh);
      // As a copy the file has no log yet; it gets its mode here, where a crash costs nothing.
      settle(fresh);
      BookCheck.rollBack(book);
      Path before = keep(book, clock);
      Backups.force(fresh);
      // A log left behind by a crash belongs to the old state and must not be laid over the new.
      for (String end : SIDES) {
        Files.deleteIfExists(beside(book, end));
      }
      Files.move(fresh, book, StandardCopyOption.ATOMIC_MOVE);
      return before;
    } finally {
      clear(fresh);
    }
  }

  private static void clear(Path file) throws IOException {
    Files.deleteIfExists(file);
    for (String end : SIDES) {
      Files.deleteIfExists(beside(file, end));
    }
  }

  private static Path keep(Path book, Clock clock) throws IOException, SQLException {
    if (Files.exists(book) && isWhole(book)) {
      settle(book);
      return Backups.make(book, clock, BookCopy.Why.BEFORE_RESTORE).file();
    }
    String name = book.getFileName() + ".damaged-" + NAME.format(clock.instant());
    Path aside = book.resolveSibling(name);
    for (int next = 2; Files.exists(aside); next++) {
      aside = book.resolveSibling(name + "-" + next);
    }
    if (Files.exists(beside(book, "-wal"))) {
      Files.copy(beside(book, "-wal"), beside(aside, "-wal"));
    }
    if (Files.exists(book)) {
      Files.copy(book, aside);
      Backups.force(aside);
    }
    return aside;
  }

  private static boolean isWhole(Path book) {
    try {
      return BookCheck.of(book).kind() == BookCheck.Kind.WHOLE;
    } catch (SQLException e) {
      return false;
    }
  }

  /** Carries the log into the file, so that the file alone is the book. */
  private static void settle(Path book) throws SQLException {
    try (Connection link = SqliteLink.migrator(book)) {
      SqliteLink.ask(link, "PRAGMA wal_checkpoint(TRUNCATE)");
    }
  }

  private static Path beside(Path file, String end) {
    return file.resolveSibling(file.getFileName() + end);
  }
}
