package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.CLOTH;
import static walebook.book.jooq.made.Tables.GARMENT_SHEET;
import static walebook.book.jooq.made.Tables.LESSON;
import static walebook.book.jooq.made.Tables.MACHINE;
import static walebook.book.jooq.made.Tables.PLANNED_PIECE;
import static walebook.book.jooq.made.Tables.PLANNED_READING;
import static walebook.book.jooq.made.Tables.SCHOOL_CLASS;
import static walebook.book.jooq.made.Tables.STUDENT;
import static walebook.book.jooq.made.Tables.TERM;
import static walebook.book.jooq.made.Tables.TEST_PIECE;
import static walebook.book.jooq.made.Tables.TUTOR;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.TableRecord;
import walebook.book.StillUsed;

/**
 * What refers to a row, found by the references of the file itself, so that a new table is never
 * missed. The generated classes know but one of two references to the same table.
 */
final class Hanging {
  private static final String REFERENCES =
      "SELECT tables.name, refers.\"from\", columns.\"notnull\""
          + " FROM sqlite_master AS tables, pragma_foreign_key_list(tables.name) AS refers,"
          + " pragma_table_info(tables.name) AS columns"
          + " WHERE tables.type = 'table' AND refers.\"table\" = ?"
          + " AND columns.name = refers.\"from\" ORDER BY tables.name, refers.\"from\"";

  /** Things that people keep for their own sake: they never go along with another. */
  private static final Set<Table<?>> STAND_ALONE =
      Set.of(
          TEST_PIECE,
          PLANNED_PIECE,
          PLANNED_READING,
          GARMENT_SHEET,
          LESSON,
          SCHOOL_CLASS,
          STUDENT,
          MACHINE,
          CLOTH,
          TERM,
          TUTOR);

  private Hanging() {}

  /**
   * A row that refers to another by one of its columns.
   *
   * @param loose whether the column may be empty
   */
  record On(TableRecord<?> row, Field<UUID> column, boolean loose) {}

  /** What refers to a row, but for the history. */
  static List<On> on(DSLContext dsl, Wholes.Key key) {
    List<On> all = new ArrayList<>();
    for (Record each : dsl.fetch(REFERENCES, key.table().getName())) {
      Table<?> table = Snapshots.table(each.get(0, String.class));
      if (!Wholes.isOfHistory(table)) {
        String name = each.get(1, String.class);
        boolean loose = each.get(2, Integer.class) == 0;
        Field<UUID> column = Rows.field(table, name, UUID.class);
        Wholes.where(dsl, table, column, key.id())
            .forEach(row -> all.add(new On(row, column, loose)));
      }
    }
    return all;
  }

  /**
   * What goes when a thing goes.
   *
   * @param rows its own first, then all that belongs to it, each after what it belongs to
   * @param loosened what stays and only forgets it
   */
  record Gone(List<TableRecord<?>> rows, List<On> loosened) {}

  /**
   * Finds out what goes with a thing.
   *
   * @param hard true when what would be left without its reference goes, too, whatever it is
   * @throws StillUsed when something that stands alone rests on it
   */
  static Gone with(DSLContext dsl, Wholes.Key root, boolean hard) {
    Map<Wholes.Key, TableRecord<?>> rows = new LinkedHashMap<>();
    Map<Wholes.Key, On> loosened = new LinkedHashMap<>();
    Wholes.of(dsl, root).forEach(row -> rows.put(Wholes.Key.of(row), row));
    List<Wholes.Key> open = new ArrayList<>(rows.keySet());
    for (int i = 0; i < open.size(); i++) {
      for (On on : on(dsl, open.get(i))) {
        Wholes.Key key = Wholes.Key.of(on.row());
        boolean alone = STAND_ALONE.contains(key.table());
        boolean loose = hard ? on.loose() : isChain(on);
        if (alone && loose) {
          loosened.put(key, on);
        } else if (alone && !hard) {
          throw new StillUsed(key.table().getName(), key.id());
        } else if (rows.putIfAbsent(key, on.row()) == null) {
          open.add(key);
        }
      }
    }
    loosened.keySet().removeAll(rows.keySet());
    return new Gone(List.copyOf(rows.values()), List.copyOf(loosened.values()));
  }

  /** The next attempt stays when the one before goes. */
  private static boolean isChain(On on) {
    return on.column().equals(TEST_PIECE.PARENT_ID);
  }
}
