package walebook.desk.typing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** What is typed on cards and not yet saved, as plain texts, and back onto the cards. */
final class CardDraft {
  private static final String TYPED = "|";
  private static final String FOR_ALL = "~";
  private static final String PIECE = "#piece";

  private CardDraft() {}

  /** What is worth keeping; empty when nothing is. */
  static Map<String, String> of(List<CardRow> rows) {
    Map<String, String> kept = new LinkedHashMap<>();
    for (CardRow row : rows) {
      String key = row.card().key();
      for (CardCell cell : row.cells()) {
        if (cell.isTyped()) {
          kept.put(key + TYPED + cell.key(), cell.text());
        } else if (cell.isForAll()) {
          kept.put(key + FOR_ALL + cell.key(), cell.text());
        }
      }
      if (row.isReady()) {
        kept.put(key + TYPED + PIECE, row.pieceId().toString());
      }
    }
    return kept;
  }

  /** True when the draft has a card of this key. */
  static boolean has(Map<String, String> kept, String key) {
    return kept.keySet().stream()
        .anyMatch(each -> each.startsWith(key + TYPED) || each.startsWith(key + FOR_ALL));
  }

  /** Puts what was kept back onto a card. */
  static void onto(CardRow row, Map<String, String> kept) {
    String key = row.card().key();
    for (CardCell cell : row.cells()) {
      String typed = kept.get(key + TYPED + cell.key());
      String forAll = kept.get(key + FOR_ALL + cell.key());
      if (typed != null) {
        cell.textProperty().set(typed);
      } else if (forAll != null) {
        cell.putForAll(forAll, true);
      }
    }
    String piece = kept.get(key + TYPED + PIECE);
    if (piece != null && !row.isLogged()) {
      row.pieceId(UUID.fromString(piece));
    }
  }
}
