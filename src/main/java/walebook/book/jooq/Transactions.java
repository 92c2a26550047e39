package walebook.book.jooq;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.function.Supplier;
import walebook.book.sqlite.SqliteLink;

/**
 * Begin and commit, with statements that are prepared once. The driver throws a statement away that
 * failed, as on a full disk, so after a failure they are prepared anew.
 */
final class Transactions implements AutoCloseable {
  private final Connection link;
  private PreparedStatement begin;
  private PreparedStatement commit;

  Transactions(Connection link) throws SQLException {
    this.link = link;
    begin = link.prepareStatement("BEGIN IMMEDIATE");
    commit = link.prepareStatement("COMMIT");
  }

  <T> T run(Supplier<T> steps) throws SQLException {
    try {
      begin.execute();
      T result = steps.get();
      commit.execute();
      return result;
    } catch (RuntimeException | SQLException e) {
      SqliteLink.rollBack(link, e);
      prepareAnew(e);
      throw e;
    }
  }

  private void prepareAnew(Exception why) {
    try {
      close();
      begin = link.prepareStatement("BEGIN IMMEDIATE");
      commit = link.prepareStatement("COMMIT");
    } catch (SQLException e) {
      why.addSuppressed(e);
    }
  }

  @Override
  public void close() throws SQLException {
    begin.close();
    commit.close();
  }
}
