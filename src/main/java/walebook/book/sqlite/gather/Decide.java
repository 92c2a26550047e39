package walebook.book.sqlite.gather;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.gather.Choice;
import walebook.book.gather.Conflict;
import walebook.book.sqlite.SqliteLink;
import walebook.record.By;

/** Carries out a person's decision of a conflict, in one transaction. */
public final class Decide {
  private final Path book;
  private final NewIds ids;
  private final By by;
  private final UUID stepId;
  private final GatherBooks.Check check;

  private record Open(
      String id, String source, String why, Kind kind, String rowId, String ourId, String theirs) {}

  /** A decision in a book that nobody else writes meanwhile. */
  public Decide(Path book, Clock clock, UUID stepId, By by, GatherBooks.Check check) {
    this.book = book;
    this.check = check;
    this.ids = new NewIds(clock.millis());
    this.by = by;
    this.stepId = stepId;
  }

  /**
   * Decides it.
   *
   * @return false when there is no such conflict to decide
   * @throws IllegalArgumentException when theirs is no record; nothing has changed then
   */
  public boolean decide(UUID conflictId, Choice choice) throws SQLException {
    try (Link link = new Link(book)) {
      link.run("BEGIN IMMEDIATE");
      try {
        Open open = find(link, conflictId);
        if (open != null) {
          carryOut(link, open, choice == Choice.THEIRS);
          read(link, open);
          link.run(
              "UPDATE gather_conflict SET choice = ?, decided_at = ?, who = ?, changed_at = ?,"
                  + " row_version = row_version + 1 WHERE id = ?",
              choice == Choice.THEIRS ? "theirs" : "mine",
              ids.now(),
              by.name(),
              ids.now(),
              open.id());
        }
        link.run("COMMIT");
        return open != null;
      } catch (SQLException | RuntimeException e) {
        SqliteLink.rollBack(link.connection(), e);
        throw e;
      }
    }
  }

  /** What waited as text has to be a record as well before it counts. */
  private void read(Link link, Open open) throws SQLException {
    link.run("CREATE TEMP TABLE plan (entity TEXT, our_id TEXT, fate TEXT)");
    link.run("INSERT INTO temp.plan VALUES (?, ?, 'take')", open.kind().table(), open.ourId());
    check.read(link.connection());
  }

  private static @Nullable Open find(Link link, UUID id) throws SQLException {
    List<@Nullable String[]> rows =
        link.ask(
            "SELECT id, source_id, kind, entity, row_id, our_id, theirs_json FROM gather_conflict"
                + " WHERE id = ? AND choice IS NULL",
            id.toString());
    if (rows.isEmpty()) {
      return null;
    }
    List<String> row = new ArrayList<>();
    for (String each : rows.get(0)) {
      row.add(String.valueOf(each));
    }
    return new Open(
        row.get(0),
        row.get(1),
        row.get(2),
        Kind.of(row.get(3)),
        row.get(4),
        row.get(5),
        row.get(6));
  }

  private void carryOut(Link link, Open open, boolean theirs) throws SQLException {
    switch (Conflict.Why.of(open.why())) {
      case BOTH_CHANGED, REMOVED_HERE -> {
        if (theirs) {
          putTheirs(link, open);
        }
        base(link, open, theirs);
      }
      case TWIN -> {
        if (theirs) {
          swap(link, open);
        }
      }
      case SAME_NAME -> {
        if (!theirs) {
          merge(link, open);
        }
      }
    }
  }

  private void log(Link link, Kind kind, String id, @Nullable String before, @Nullable String after)
      throws SQLException {
    link.run(
        "INSERT INTO change_log (id, step_id, done_at, who, act, entity, entity_id, before_json,"
            + " after_json, is_undone, created_at, changed_at, row_version) SELECT "
            + ids.sql()
            + ", ?, ?, ?, 'gather.decide', ?, ?, ?, ?, 0, ?, ?, 1",
        stepId.toString(),
        ids.now(),
        by.name(),
        kind.table(),
        id,
        before,
        after,
        ids.now(),
        ids.now());
  }

  private void putTheirs(Link link, Open open) throws SQLException {
    String before = AsJson.ours(link, open.kind(), open.ourId());
    new PutTheirs(link, ids, open.source(), open.theirs())
        .put(open.kind(), open.ourId(), before != null);
    log(link, open.kind(), open.ourId(), before, AsJson.ours(link, open.kind(), open.ourId()));
  }

  /** After mine this book has what the other never saw; after theirs both are one. */
  private void base(Link link, Open open, boolean theirs) throws SQLException {
    String ours = "(SELECT m." + "%s FROM main." + open.kind().table() + " m WHERE m.id = our_id)";
    link.run(
        "INSERT INTO gathered_row (id, source_id, entity, row_id, our_id, their_version,"
            + " their_changed_at, our_version, our_changed_at, is_born, created_at, changed_at)"
            + " SELECT "
            + ids.sql()
            + ", source_id, entity, row_id, our_id, their_version,"
            + " their_changed_at, "
            + (theirs
                ? ours.formatted("row_version") + ", " + ours.formatted("changed_at")
                : "0, 0")
            + ", 0, ?, ? FROM gather_conflict WHERE id = ?"
            + " ON CONFLICT (source_id, entity, row_id) DO UPDATE SET"
            + " their_version = excluded.their_version,"
            + " their_changed_at = excluded.their_changed_at, our_version = excluded.our_version,"
            + " our_changed_at = excluded.our_changed_at, changed_at = excluded.changed_at,"
            + " row_version = gathered_row.row_version + 1",
        ids.now(),
        ids.now(),
        open.id());
  }

  private void swap(Link link, Open open) throws SQLException {
    Kind kind = open.kind();
    String ourBefore = AsJson.ours(link, kind, open.ourId());
    String theirBefore = AsJson.ours(link, kind, open.rowId());
    new SwapUnique(link, ids).swap(kind, open.ourId(), open.rowId(), open.theirs());
    log(link, kind, open.ourId(), ourBefore, AsJson.ours(link, kind, open.ourId()));
    log(link, kind, open.rowId(), theirBefore, AsJson.ours(link, kind, open.rowId()));
  }

  /** Theirs is the same thing as ours: all that referred to it refers to ours from now on. */
  private void merge(Link link, Open open) throws SQLException {
    new MergeRows(link, ids, (kind, id, before) -> log(link, kind, id, before, null))
        .merge(open.kind(), open.ourId(), open.rowId());
  }
}
