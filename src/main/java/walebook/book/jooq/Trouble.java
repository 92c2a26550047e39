package walebook.book.jooq;

import java.sql.SQLException;
import java.time.DateTimeException;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jooq.exception.DataAccessException;
import org.jooq.exception.DataTypeException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import walebook.book.BookTrouble;

/** Turns what the database throws into trouble with a name that a sentence can be found for. */
final class Trouble {
  private Trouble() {}

  static <T> T named(Callable<T> work) {
    try {
      return work.call();
    } catch (DataAccessException e) {
      SQLException cause = e.getCause(SQLException.class);
      throw cause == null ? e : of(cause);
    } catch (SQLException e) {
      throw of(e);
    } catch (RuntimeException e) {
      throw e;
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  /** Reads; a row that no record can be made of was overwritten by something else than us. */
  static <T> T ofRows(Supplier<T> query) {
    try {
      return query.get();
    } catch (DateTimeException | IllegalArgumentException | DataTypeException e) {
      throw new BookTrouble("damaged", String.valueOf(e.getMessage()), e);
    }
  }

  static BookTrouble of(SQLException e) {
    return new BookTrouble(code(e), String.valueOf(e.getMessage()), e);
  }

  private static String code(SQLException e) {
    if (!(e instanceof SQLiteException sqlite)) {
      return "unknown";
    }
    // Extended result codes keep the plain one in their lowest byte.
    int plain = sqlite.getResultCode().code & 0xff;
    // The log's index beside a book can't grow either on a full disk.
    boolean noIndex = sqlite.getResultCode() == SQLiteErrorCode.SQLITE_IOERR_SHMSIZE;
    if (plain == SQLiteErrorCode.SQLITE_FULL.code || noIndex) {
      return "full";
    } else if (plain == SQLiteErrorCode.SQLITE_BUSY.code
        || plain == SQLiteErrorCode.SQLITE_LOCKED.code) {
      return "busy";
    } else if (plain == SQLiteErrorCode.SQLITE_IOERR.code
        || plain == SQLiteErrorCode.SQLITE_CANTOPEN.code) {
      return "gone";
    } else if (plain == SQLiteErrorCode.SQLITE_READONLY.code) {
      return "read-only";
    } else if (plain == SQLiteErrorCode.SQLITE_CORRUPT.code
        || plain == SQLiteErrorCode.SQLITE_NOTADB.code) {
      return "damaged";
    } else if (plain == SQLiteErrorCode.SQLITE_CONSTRAINT.code) {
      return "constraint";
    }
    return "unknown";
  }
}
