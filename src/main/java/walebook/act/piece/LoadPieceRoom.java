package walebook.act.piece;

import java.util.UUID;
import walebook.book.Book;
import walebook.compare.ClothStretch;
import walebook.record.Cloth;
import walebook.record.Machine;
import walebook.tables.SharedTables;

/** Reads what the log form has to know of the room. */
public final class LoadPieceRoom {
  private LoadPieceRoom() {}

  public static PieceRoom of(Book book, SharedTables tables, UUID classId) {
    return new PieceRoom(
        book.cloths().all().stream().filter(LoadPieceRoom::inUse).toList(),
        book.machines().all().stream().filter(LoadPieceRoom::inUse).toList(),
        book.enrolments().everyoneOf(classId),
        tables.stitchTypes(),
        tables.faults(),
        ClothStretch.of(book.clothLog().allReadings()),
        book.info().lengthUnit());
  }

  private static boolean inUse(Cloth cloth) {
    return !cloth.retired();
  }

  private static boolean inUse(Machine machine) {
    return !machine.retired();
  }
}
