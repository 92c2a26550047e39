package walebook.act.piece;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.compare.ReadingsThatCount;
import walebook.record.Cloth;
import walebook.record.Machine;
import walebook.record.TestPiece;
import walebook.tables.SharedTables;

/** Reads what the log form has to know of the room. */
public final class LoadPieceRoom {
  private LoadPieceRoom() {}

  public static PieceRoom of(Book book, SharedTables tables, UUID classId) {
    return of(book, tables, classId, null);
  }

  /**
   * The room with what a piece was sewn on and with, even if that is out of use by now.
   *
   * @param piece that is being mended, or null
   */
  public static PieceRoom of(
      Book book, SharedTables tables, UUID classId, @Nullable TestPiece piece) {
    UUID cloth = piece == null ? null : piece.cloth().clothId();
    UUID machine = piece == null ? null : piece.setting().machineId();
    return new PieceRoom(
        book.cloths().all().stream()
            .filter(each -> inUse(each) || each.id().equals(cloth))
            .toList(),
        book.machines().all().stream()
            .filter(each -> inUse(each) || each.id().equals(machine))
            .toList(),
        book.enrolments().everyoneOf(classId),
        tables.stitchTypes(),
        tables.faults(),
        ReadingsThatCount.stretches(book),
        book.info().lengthUnit());
  }

  private static boolean inUse(Cloth cloth) {
    return !cloth.retired();
  }

  private static boolean inUse(Machine machine) {
    return !machine.retired();
  }
}
