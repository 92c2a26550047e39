package walebook.book;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import walebook.record.Binned;
import walebook.record.By;

/**
 * What was thrown away and can come back. A binned row leaves its table with all that hangs on it,
 * so nothing that lists, compares or exports can meet it.
 */
public interface Bin {
  /** The tables whose rows can be put in the bin. */
  Set<String> CAN_BE_BINNED =
      Set.of(
          "test_piece",
          "planned_piece",
          "planned_reading",
          "cloth",
          "cloth_reading",
          "cloth_wash",
          "note",
          "photo",
          "garment_sheet");

  /** What lies in it, the newest first. */
  List<Binned> all();

  /**
   * Puts a row in the bin, with its photos, notes and marks. Attempts that came after a piece stay
   * and begin a chain of their own.
   *
   * @return the step by which it is taken back
   * @throws StillUsed when others rest on it, as pieces on a cloth
   * @throws StaleRow when it is not there
   */
  UUID put(String entity, UUID id, By by);

  /**
   * Puts an item back where it was.
   *
   * @return the step by which it is taken back
   * @throws StaleRow when it is not in the bin
   * @throws BookTrouble when what it belonged to is gone
   */
  UUID restore(UUID itemId, By by);

  /**
   * Forgets everything in it, pictures too; that cannot be undone.
   *
   * @return how many items there were
   */
  int empty(By by);
}
