package walebook.book.jooq;

import org.jooq.DSLContext;

/** References are checked at the end of the transaction, whatever the order of its steps. */
final class SqliteDefer {
  private SqliteDefer() {}

  static void foreignKeys(DSLContext dsl) {
    dsl.execute("PRAGMA defer_foreign_keys = ON");
  }
}
