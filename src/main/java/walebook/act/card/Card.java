package walebook.act.card;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.record.PlannedPiece;

/**
 * A record card before anything of it is typed.
 *
 * @param key stays the same each time the cards are opened
 * @param start what the form would begin with
 * @param planned the piece of the plan; null for one that was sewn beside it
 * @param logged what the book has of the piece, as it would have been typed; empty when not logged
 */
public record Card(
    String key, PieceEntry start, @Nullable PlannedPiece planned, Map<PieceField, String> logged) {
  public Card {
    Map<PieceField, String> copy = new EnumMap<>(PieceField.class);
    copy.putAll(logged);
    logged = java.util.Collections.unmodifiableMap(copy);
  }

  public boolean isLogged() {
    return !logged.isEmpty();
  }
}
