package walebook.book.jooq;

import static walebook.book.jooq.made.Tables.BIN_ITEM;
import static walebook.book.jooq.made.Tables.CHANGE_LOG;
import static walebook.book.jooq.made.Tables.DRAFT;
import static walebook.book.jooq.made.Tables.DRAFT_FIELD;
import static walebook.book.jooq.made.Tables.FAULT_SEEN;
import static walebook.book.jooq.made.Tables.GARMENT_EDGE;
import static walebook.book.jooq.made.Tables.GARMENT_GIRTH;
import static walebook.book.jooq.made.Tables.GARMENT_OPENING;
import static walebook.book.jooq.made.Tables.GARMENT_SHEET;
import static walebook.book.jooq.made.Tables.GATHERED_BOOK;
import static walebook.book.jooq.made.Tables.GATHERED_ROW;
import static walebook.book.jooq.made.Tables.GATHER_CONFLICT;
import static walebook.book.jooq.made.Tables.KEPT_BLOB;
import static walebook.book.jooq.made.Tables.MACHINE;
import static walebook.book.jooq.made.Tables.MACHINE_DIAL;
import static walebook.book.jooq.made.Tables.MACHINE_STITCH;
import static walebook.book.jooq.made.Tables.PACK;
import static walebook.book.jooq.made.Tables.PACK_PICTURE;
import static walebook.book.jooq.made.Tables.PHOTO;
import static walebook.book.jooq.made.Tables.PHOTO_IMAGE;
import static walebook.book.jooq.made.Tables.PIECE_PULL;
import static walebook.book.jooq.made.Tables.PRIVATE_GIRTH;
import static walebook.book.jooq.made.Tables.ROW_ADDED;
import static walebook.book.jooq.made.Tables.STEP_MIRROR;
import static walebook.book.jooq.made.Tables.TEST_PIECE;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Table;
import org.jooq.TableRecord;
import org.jspecify.annotations.Nullable;

/**
 * Which rows make one thing: a piece with its pulls and faults, a machine with its card. History
 * and bin deal in whole things. A table that is not named here is a thing of its own, so a new one
 * is in the history from its first day.
 */
final class Wholes {
  private record Part(Table<?> table, Field<UUID> owner, Table<?> of) {}

  private static final List<Part> PARTS =
      List.of(
          new Part(PIECE_PULL, PIECE_PULL.PIECE_ID, TEST_PIECE),
          new Part(FAULT_SEEN, FAULT_SEEN.PIECE_ID, TEST_PIECE),
          new Part(MACHINE_STITCH, MACHINE_STITCH.MACHINE_ID, MACHINE),
          new Part(MACHINE_DIAL, MACHINE_DIAL.MACHINE_ID, MACHINE),
          new Part(GARMENT_GIRTH, GARMENT_GIRTH.SHEET_ID, GARMENT_SHEET),
          new Part(GARMENT_OPENING, GARMENT_OPENING.SHEET_ID, GARMENT_SHEET),
          new Part(GARMENT_EDGE, GARMENT_EDGE.OPENING_ID, GARMENT_OPENING),
          new Part(PACK_PICTURE, PACK_PICTURE.PACK_ID, PACK),
          new Part(PHOTO_IMAGE, PHOTO_IMAGE.ID, PHOTO));

  /**
   * What the history is made of, what is nobody else's business (drafts and bodies), and what was
   * agreed with other books.
   */
  private static final Set<Table<?>> UNRECORDED =
      Set.of(
          CHANGE_LOG,
          ROW_ADDED,
          STEP_MIRROR,
          BIN_ITEM,
          KEPT_BLOB,
          DRAFT,
          DRAFT_FIELD,
          PRIVATE_GIRTH,
          GATHERED_BOOK,
          GATHERED_ROW,
          GATHER_CONFLICT);

  private Wholes() {}

  /** Whether changes of this table's rows stand in the history under their own key. */
  static boolean isThing(Table<?> table) {
    return !UNRECORDED.contains(table) && part(table) == null;
  }

  /** Whether a change of it is written into the history, by itself or as part of a thing. */
  static boolean isRecorded(Table<?> table) {
    return !UNRECORDED.contains(table);
  }

  /** Whether it is a table of the history or the bin itself. */
  static boolean isOfHistory(Table<?> table) {
    return Set.of(CHANGE_LOG, ROW_ADDED, STEP_MIRROR, BIN_ITEM, KEPT_BLOB).contains(table);
  }

  /** The thing a part's row belongs to; null for things and for parts of parts. */
  static @Nullable Key ownerOf(TableRecord<?> row) {
    Part part = part(row.getTable());
    return part == null || part(part.of()) != null
        ? null
        : new Key(part.of(), row.get(part.owner()));
  }

  private static @Nullable Part part(Table<?> table) {
    return PARTS.stream().filter(each -> each.table().equals(table)).findFirst().orElse(null);
  }

  /** One thing. */
  record Key(Table<?> table, UUID id) {
    static Key of(TableRecord<?> row) {
      return new Key(row.getTable(), row.get(Rows.id(row.getTable())));
    }
  }

  /** The rows of a thing as they stand, its own first; none when it is not there. */
  static List<TableRecord<?>> of(DSLContext dsl, Key key) {
    List<TableRecord<?>> rows =
        new ArrayList<>(where(dsl, key.table(), Rows.id(key.table()), key.id()));
    if (!rows.isEmpty()) {
      addParts(dsl, rows, key);
    }
    return rows;
  }

  private static void addParts(DSLContext dsl, List<TableRecord<?>> rows, Key of) {
    for (Part part : PARTS) {
      if (part.of().equals(of.table())) {
        for (TableRecord<?> row : where(dsl, part.table(), part.owner(), of.id())) {
          rows.add(row);
          addParts(dsl, rows, Key.of(row));
        }
      }
    }
  }

  /** A table's rows in which a column holds a key, oldest first. */
  static List<TableRecord<?>> where(DSLContext dsl, Table<?> table, Field<UUID> column, UUID id) {
    List<TableRecord<?>> rows = new ArrayList<>();
    dsl.selectFrom(table)
        .where(column.eq(id))
        .orderBy(Rows.id(table))
        .fetch()
        .forEach(row -> rows.add((TableRecord<?>) row));
    return rows;
  }
}
