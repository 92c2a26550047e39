package walebook.command;

import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;

/** Which thing of the book is meant by a kind and a word. */
final class HistoryThings {
  private static final Map<String, String> ENTITIES =
      Map.of(
          "piece", "test_piece",
          "planned", "planned_piece",
          "planned-reading", "planned_reading",
          "cloth", "cloth",
          "reading", "cloth_reading",
          "wash", "cloth_wash",
          "note", "note",
          "photo", "photo",
          "garment", "garment_sheet");

  private HistoryThings() {}

  static String entity(String kind) {
    String entity = ENTITIES.get(kind);
    if (entity == null) {
      String known = String.join(", ", ENTITIES.keySet().stream().sorted().toList());
      throw Refused.field("kind", "choice.unknown", kind, known);
    }
    return entity;
  }

  /** A planned piece by its code, anything else by its key. */
  static @Nullable UUID id(String kind, String typed, Book book) {
    String code = PieceCode.read(typed);
    PlannedPiece planned =
        kind.equals("planned") && code != null ? book.lessons().plannedByCode(code) : null;
    if (planned != null) {
      return planned.id();
    }
    try {
      return UUID.fromString(typed);
    } catch (IllegalArgumentException e) {
      return null;
    }
  }
}
