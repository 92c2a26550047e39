package walebook.book.sqlite.gather;

import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.book.gather.FromBook;
import walebook.book.gather.SourceBook;
import walebook.record.By;

/** One attached book, gathered kind by kind. */
record OneBook(Link link, String schema, NewIds ids, By by, UUID stepId, Random chance) {

  /** Told how far this book is, 0 to 1. */
  interface Share {
    void at(double share);
  }

  FromBook gather(SourceBook source, String name, Share share) throws SQLException {
    link.run("DELETE FROM temp.plan");
    link.run("DELETE FROM temp.twin");
    link.run("DELETE FROM temp.was");
    String line = new Lines(link, schema, ids).take(source, name);
    Fates fates = new Fates(link, schema);
    Moves moves = new Moves(link, schema, fates, chance);
    int done = 0;
    for (Kind kind : Kind.ALL) {
      share.at((double) done++ / Kind.ALL.size());
      fates.decide(kind);
      boolean mayLack =
          !link.ask("SELECT 1 FROM temp.plan WHERE fate LIKE 'gone%' LIMIT 1").isEmpty();
      before(kind);
      sameName(kind, line);
      moves.carryOut(kind, mayLack);
      after(kind);
      conflicts(kind, line);
      bases(kind, line);
    }
    link.run(
        "UPDATE main.gathered_book SET name = ?, file_name = ?, gathered_at = ?, changed_at = ?,"
            + " row_version = row_version + 1 WHERE id = ?",
        name,
        String.valueOf(source.shown().getFileName()),
        ids.now(),
        ids.now(),
        line);
    settle(line);
    share.at(1);
    return result(source, name, line);
  }

  private void before(Kind kind) throws SQLException {
    if (link.blobs(kind.table()).isEmpty() && hasTaken(kind)) {
      link.run(
          "INSERT INTO temp.was SELECT p.entity, r.id, "
              + AsJson.whole(link, kind, "main", "r")
              + " FROM temp.plan p JOIN main."
              + kind.table()
              + " r ON r.id = p.our_id WHERE p.entity = ? AND p.fate = 'take'",
          kind.table());
    }
  }

  private boolean hasTaken(Kind kind) throws SQLException {
    return !link.ask(
            "SELECT 1 FROM temp.plan WHERE entity = ? AND fate = 'take' LIMIT 1", kind.table())
        .isEmpty();
  }

  /** What was taken over something is in the history, with what it was, as one step. */
  private void after(Kind kind) throws SQLException {
    if (hasTaken(kind) && !kind.isHistory()) {
      link.run(
          "INSERT INTO main.change_log (id, step_id, done_at, who, act, entity, entity_id,"
              + " before_json, after_json, is_undone, created_at, changed_at, row_version) SELECT "
              + ids.sql()
              + ", ?, ?, ?, 'gather', w.entity, w.our_id, w.json, "
              + AsJson.whole(link, kind, "main", "r")
              + ", 0, ?, ?, 1 FROM temp.was w JOIN main."
              + kind.table()
              + " r ON r.id = w.our_id WHERE w.entity = ?",
          stepId.toString(),
          ids.now(),
          by.name(),
          ids.now(),
          ids.now(),
          kind.table());
    }
  }

  /** Before the new ones are in: a new one called as one that is here is asked about. */
  private void sameName(Kind kind, String line) throws SQLException {
    if (Kind.BY_NAME.contains(kind.table())) {
      conflict(
          kind,
          line,
          "same-name",
          "(SELECT min(n.id) FROM main."
              + kind.table()
              + " n WHERE lower(trim(n.name)) = lower(trim(r.name)))",
          "p.fate = 'new' AND EXISTS (SELECT 1 FROM main."
              + kind.table()
              + " n WHERE lower(trim(n.name)) = lower(trim(r.name)))");
    }
  }

  private void conflicts(Kind kind, String line) throws SQLException {
    conflict(kind, line, "both-changed", "p.our_id", "p.fate = 'conflict'");
    conflict(kind, line, "removed-here", "p.our_id", "p.fate = 'gone-changed'");
    if (!kind.unique().isEmpty()) {
      String twin =
          "(SELECT t.our_id FROM temp.twin t WHERE t.entity = p.entity AND t.row_id = p.row_id)";
      conflict(kind, line, "twin", twin, twin + " IS NOT NULL");
    }
  }

  private void conflict(Kind kind, String line, String why, String ourId, String which)
      throws SQLException {
    if (kind.isHistory()) {
      return;
    }
    link.run(
        "INSERT INTO main.gather_conflict (id, source_id, kind, entity, row_id, our_id,"
            + " theirs_json, their_version, their_changed_at, created_at, changed_at) SELECT "
            + ids.sql()
            + ", ?, ?, p.entity, p.row_id, "
            + ourId
            + ", "
            + AsJson.whole(link, kind, schema, "r")
            + ", r.row_version, r.changed_at, ?, ? FROM temp.plan p JOIN "
            + schema
            + "."
            + kind.table()
            + " r ON r.id = p.row_id WHERE p.entity = ? AND "
            + which
            + " ON CONFLICT (source_id, entity, row_id, kind) WHERE choice IS NULL DO UPDATE SET"
            + " theirs_json = excluded.theirs_json, their_version = excluded.their_version,"
            + " their_changed_at = excluded.their_changed_at, changed_at = excluded.changed_at,"
            + " row_version = gather_conflict.row_version + 1"
            + " WHERE gather_conflict.their_version <> excluded.their_version"
            + " OR gather_conflict.their_changed_at <> excluded.their_changed_at",
        line,
        why,
        ids.now(),
        ids.now(),
        kind.table());
  }

  /** The versions on both sides now become the common ancestor, where both are one. */
  private void bases(Kind kind, String line) throws SQLException {
    String insert =
        "INSERT INTO main.gathered_row (id, source_id, entity, row_id, our_id, their_version,"
            + " their_changed_at, our_version, our_changed_at, is_born, created_at, changed_at)"
            + " SELECT "
            + ids.sql()
            + ", ?, p.entity, p.row_id, p.our_id, s.row_version, s.changed_at, ";
    String from =
        " FROM temp.plan p JOIN "
            + schema
            + "."
            + kind.table()
            + " s ON s.id = p.row_id JOIN main."
            + kind.table()
            + " m ON m.id = p.our_id";
    link.run(
        insert
            + "m.row_version, m.changed_at, p.fate = 'new', ?, ?"
            + from
            + " WHERE p.entity = ? AND p.fate IN ('new', 'take', 'same')"
            + " ON CONFLICT (source_id, entity, row_id) DO UPDATE SET"
            + " their_version = excluded.their_version,"
            + " their_changed_at = excluded.their_changed_at,"
            + " our_version = excluded.our_version, our_changed_at = excluded.our_changed_at,"
            + " changed_at = excluded.changed_at, row_version = gathered_row.row_version + 1"
            + " WHERE gathered_row.their_version <> excluded.their_version"
            + " OR gathered_row.their_changed_at <> excluded.their_changed_at"
            + " OR gathered_row.our_version <> excluded.our_version"
            + " OR gathered_row.our_changed_at <> excluded.our_changed_at",
        line,
        ids.now(),
        ids.now(),
        kind.table());
    // What is kept here has never been there: the ancestor stays what it was.
    link.run(
        insert.replace("INSERT INTO", "INSERT OR IGNORE INTO")
            + "coalesce(b.our_version, s.row_version), coalesce(b.our_changed_at, s.changed_at),"
            + " 0, ?, ?"
            + from
            + " LEFT JOIN temp.base b ON b.entity = p.entity AND b.row_id = p.row_id"
            + " WHERE p.entity = ? AND p.fate = 'keep'",
        line,
        ids.now(),
        ids.now(),
        kind.table());
  }

  /** What is one again in both books needs nobody to decide it. */
  private void settle(String line) throws SQLException {
    link.run(
        "UPDATE main.gather_conflict SET choice = 'settled', decided_at = ?, changed_at = ?,"
            + " row_version = row_version + 1 WHERE source_id = ? AND choice IS NULL"
            + " AND kind IN ('both-changed', 'removed-here') AND NOT EXISTS (SELECT 1 FROM"
            + " temp.plan p WHERE p.entity = gather_conflict.entity"
            + " AND p.row_id = gather_conflict.row_id"
            + " AND p.fate IN ('conflict', 'gone-changed'))",
        ids.now(),
        ids.now(),
        line);
  }

  private FromBook result(SourceBook source, String name, String line) throws SQLException {
    Map<String, Integer> all = new HashMap<>();
    Map<String, Integer> added = new HashMap<>();
    for (@Nullable String[] each :
        link.ask(
            "SELECT entity, fate, count(*) FROM temp.plan WHERE entity NOT IN ('change_log',"
                + " 'row_added') GROUP BY entity, fate")) {
      int count = Integer.parseInt(String.valueOf(each[2]));
      all.merge(String.valueOf(each[1]), count, Integer::sum);
      if ("new".equals(each[1])) {
        added.put(String.valueOf(each[0]), count);
      }
    }
    long open =
        link.count(
            "SELECT count(*) FROM main.gather_conflict WHERE source_id = ? AND choice IS NULL",
            line);
    return new FromBook(
        source.shown(),
        name,
        null,
        added.values().stream().collect(Collectors.summingInt(Integer::intValue)),
        added.getOrDefault("test_piece", 0),
        added.getOrDefault("photo", 0),
        all.getOrDefault("take", 0),
        all.getOrDefault("keep", 0),
        all.getOrDefault("same", 0),
        Math.toIntExact(open),
        all.getOrDefault("gone", 0));
  }
}
