package walebook.book.jooq;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.function.Supplier;

/** Begin, commit, roll back, with statements that are prepared once. */
final class Transactions implements AutoCloseable {
  private final PreparedStatement begin;
  private final PreparedStatement commit;
  private final PreparedStatement rollback;

  Transactions(Connection link) throws SQLException {
    begin = link.prepareStatement("BEGIN IMMEDIATE");
    commit = link.prepareStatement("COMMIT");
    rollback = link.prepareStatement("ROLLBACK");
  }

  <T> T run(Supplier<T> steps) throws SQLException {
    begin.execute();
    try {
      T result = steps.get();
      commit.execute();
      return result;
    } catch (RuntimeException | SQLException e) {
      rollBack(e);
      throw e;
    }
  }

  /** A full disk ends the transaction by itself; that must not hide why. */
  private void rollBack(Exception why) {
    try {
      rollback.execute();
    } catch (SQLException e) {
      why.addSuppressed(e);
    }
  }

  @Override
  public void close() throws SQLException {
    begin.close();
    commit.close();
    rollback.close();
  }
}
