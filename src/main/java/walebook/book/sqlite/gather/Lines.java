package walebook.book.sqlite.gather;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;
import walebook.book.gather.SourceBook;

/**
 * Which of the books known from before this one is. A book's id is not enough: copies share it. A
 * book goes on a line when it still has every record of it, at that version or a later one.
 */
record Lines(Link link, String schema, NewIds ids) {

  /** The line's key, and the common ancestors of its records in {@code temp.base}. */
  String take(SourceBook book, String name) throws SQLException {
    String bookId = link.must("SELECT id FROM " + schema + ".book_info");
    String ownId = link.must("SELECT id FROM main.book_info");
    String line = known(bookId, bookId.equals(ownId));
    if (line == null) {
      line = link.must("SELECT " + ids.sql());
      link.run(
          "INSERT INTO main.gathered_book VALUES (?, ?, ?, ?, ?, ?, ?, 1)",
          line,
          bookId,
          name,
          String.valueOf(book.shown().getFileName()),
          ids.now(),
          ids.now(),
          ids.now());
    }
    bases(line, ownId);
    return line;
  }

  private @Nullable String known(String bookId, boolean isCopyOfThis) throws SQLException {
    for (@Nullable String[] each :
        link.ask(
            "SELECT id FROM main.gathered_book WHERE book_id = ? ORDER BY gathered_at DESC, id",
            bookId)) {
      String line = String.valueOf(each[0]);
      if (goesOn(line) && (!isCopyOfThis || hasBorn(line))) {
        return line;
      }
    }
    return null;
  }

  private boolean goesOn(String line) throws SQLException {
    for (Kind kind : Kind.ALL) {
      String missing =
          Kind.ALIKE.contains(kind.table())
              ? "0"
              : "s.id IS NULL AND NOT EXISTS (SELECT 1 FROM "
                  + schema
                  + ".change_log c WHERE c.entity_id = g.row_id AND c.after_json IS NULL)";
      if (!link.ask(
              "SELECT 1 FROM main.gathered_row g LEFT JOIN "
                  + schema
                  + "."
                  + kind.table()
                  + " s ON s.id = g.row_id WHERE g.source_id = ? AND g.entity = ? AND ("
                  + missing
                  + " OR s.row_version < g.their_version OR (s.row_version = g.their_version"
                  + " AND s.changed_at <> g.their_changed_at)) LIMIT 1",
              line,
              kind.table())
          .isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /** Copies of this very book are told apart by what only one of them brought. */
  private boolean hasBorn(String line) throws SQLException {
    return !link.ask(
            "SELECT 1 FROM main.gathered_row WHERE source_id = ? AND is_born = 1 LIMIT 1", line)
        .isEmpty();
  }

  private void bases(String line, String ownId) throws SQLException {
    link.run("DELETE FROM temp.base");
    link.run(
        "INSERT INTO temp.base SELECT entity, row_id, our_id, their_version, their_changed_at,"
            + " our_version, our_changed_at FROM main.gathered_row WHERE source_id = ?",
        line);
    // A book that was given out carries its ancestors itself, seen from its own side.
    link.run(
        "INSERT OR IGNORE INTO temp.base SELECT g.entity, g.our_id, g.row_id, g.our_version,"
            + " g.our_changed_at, g.their_version, g.their_changed_at FROM "
            + schema
            + ".gathered_row g JOIN "
            + schema
            + ".gathered_book b ON b.id = g.source_id WHERE b.book_id = ? AND g.our_version > 0",
        ownId);
  }
}
