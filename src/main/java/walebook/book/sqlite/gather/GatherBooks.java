package walebook.book.sqlite.gather;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import walebook.book.gather.FromBook;
import walebook.book.gather.GatherProgress;
import walebook.book.gather.SourceBook;
import walebook.book.sqlite.SqliteLink;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.By;

/** One gathering: all its books in one transaction, each behind a savepoint of its own. */
public final class GatherBooks {
  private final Path book;
  private final Clock clock;
  private final Check check;
  private final UUID stepId;

  /** Looks at what came of one book before it counts. */
  @FunctionalInterface
  public interface Check {
    /**
     * Reads the records of {@code temp.plan} that are new or taken.
     *
     * @throws IllegalArgumentException when one of them is none
     */
    void read(java.sql.Connection link);
  }

  /**
   * A gathering into a book that nobody else writes meanwhile.
   *
   * @param stepId of the changes in the history, which are taken back together
   */
  public GatherBooks(Path book, Clock clock, UUID stepId, Check check) {
    this.book = book;
    this.clock = clock;
    this.stepId = stepId;
    this.check = check;
  }

  /**
   * Gathers, or only tries to.
   *
   * @param progress told 1 when nothing but the last step is left
   * @throws CancellationException from the progress; nothing has happened then
   */
  public List<FromBook> gather(
      List<SourceBook> books, boolean really, By by, GatherProgress progress) throws SQLException {
    List<FromBook> results = new ArrayList<>();
    try (Link link = new Link(book)) {
      scratch(link);
      link.run("BEGIN IMMEDIATE");
      try {
        for (int i = 0; i < books.size(); i++) {
          double from = (double) i / books.size();
          double to = (i + 1.0) / books.size();
          results.add(one(link, i, books.get(i), by, part(progress, from, to, books.get(i))));
        }
        if (!books.isEmpty()) {
          progress.at(1, books.get(books.size() - 1).shown());
        }
        // Where nothing came, not even the file's own count of its changes may move.
        boolean came = results.stream().anyMatch(each -> each.problem() == null);
        link.run(really && came ? "COMMIT" : "ROLLBACK");
      } catch (SQLException | RuntimeException e) {
        SqliteLink.rollBack(link.connection(), e);
        throw e;
      }
    }
    return results;
  }

  private static OneBook.Share part(
      GatherProgress progress, double from, double to, SourceBook book) {
    return share -> progress.at(from + share * (to - from), book.shown());
  }

  private static void scratch(Link link) throws SQLException {
    link.run(
        "CREATE TEMP TABLE base (entity TEXT, row_id TEXT, our_id TEXT, their_version INTEGER,"
            + " their_changed_at INTEGER, our_version INTEGER, our_changed_at INTEGER,"
            + " PRIMARY KEY (entity, row_id)) WITHOUT ROWID");
    link.run(
        "CREATE TEMP TABLE plan (entity TEXT, row_id TEXT, our_id TEXT, fate TEXT,"
            + " PRIMARY KEY (entity, row_id)) WITHOUT ROWID");
    link.run("CREATE TEMP TABLE free (row_id TEXT, field TEXT, value)");
    link.run(
        "CREATE TEMP TABLE twin (entity TEXT, row_id TEXT, our_id TEXT,"
            + " PRIMARY KEY (entity, row_id)) WITHOUT ROWID");
    link.run("CREATE TEMP TABLE was (entity TEXT, our_id TEXT, json TEXT)");
  }

  private FromBook one(Link link, int number, SourceBook source, By by, OneBook.Share share)
      throws SQLException {
    Path shown = source.shown();
    if (number >= SqliteLink.MOST_ATTACHED) {
      return refused(shown, "", "gather.too-many", "", "" + SqliteLink.MOST_ATTACHED);
    }
    String schema = "book" + number;
    String name = "";
    link.run("SAVEPOINT one");
    try {
      link.attachStill(source.file(), schema);
      String odd = oddTable(link, schema);
      if (odd != null) {
        return back(link, refused(shown, "", "gather.other-tables", odd, ""));
      }
      name = String.valueOf(link.one("SELECT name FROM " + schema + ".book_info"));
      NewIds ids = new NewIds(clock.millis());
      FromBook done =
          new OneBook(link, schema, ids, by, stepId, new Random()).gather(source, name, share);
      check.read(link.connection());
      link.run("RELEASE one");
      return done;
    } catch (SQLException e) {
      if (isTroubleHere(e)) {
        throw e;
      }
      return back(link, refused(shown, name, "gather.breaks-rule", text(e), ""));
    } catch (IllegalArgumentException e) {
      return back(link, refused(shown, name, "gather.breaks-rule", text(e), ""));
    }
  }

  private static String text(Exception e) {
    return String.valueOf(e.getMessage());
  }

  private static FromBook back(Link link, FromBook result) throws SQLException {
    link.run("ROLLBACK TO one");
    link.run("RELEASE one");
    return result;
  }

  private static FromBook refused(
      Path file, String name, String code, String found, String wanted) {
    return FromBook.refused(
        file, name, Problem.refuse(code, new Place.Path(file.toString()), found, wanted));
  }

  /** Views, triggers and tables of another make could do or hold anything: such a book is none. */
  private static @Nullable String oddTable(Link link, String schema) throws SQLException {
    String what = "SELECT type, name, tbl_name, sql FROM ";
    String theirs = what + schema + ".sqlite_schema WHERE name NOT LIKE 'sqlite_%'";
    String ours = what + "main.sqlite_schema WHERE name NOT LIKE 'sqlite_%'";
    return link.one(
        "SELECT name FROM (SELECT * FROM ("
            + theirs
            + " EXCEPT "
            + ours
            + ") UNION ALL SELECT *"
            + " FROM ("
            + ours
            + " EXCEPT "
            + theirs
            + ")) LIMIT 1");
  }

  /** Trouble with the disk of this book ends the whole gathering; a foreign book's does not. */
  private static boolean isTroubleHere(SQLException e) {
    if (!(e instanceof SQLiteException sqlite)) {
      return false;
    }
    int plain = sqlite.getResultCode().code & 0xff;
    return plain == SQLiteErrorCode.SQLITE_FULL.code
        || plain == SQLiteErrorCode.SQLITE_IOERR.code
        || plain == SQLiteErrorCode.SQLITE_READONLY.code
        || plain == SQLiteErrorCode.SQLITE_BUSY.code
        || plain == SQLiteErrorCode.SQLITE_NOMEM.code;
  }
}
