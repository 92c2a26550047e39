package walebook.act.card;

import java.util.List;
import java.util.Map;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.record.Lesson;

/**
 * All record cards of a lesson.
 *
 * @param columns the fields that the cards ask for, in the form's order
 * @param cards by student, each student's in the order of the plan
 * @param draft what was typed and not yet saved, as it was kept
 */
public record CardSheet(
    Lesson lesson,
    PieceRoom room,
    List<PieceField> columns,
    List<Card> cards,
    Map<String, String> draft) {
  public CardSheet {
    columns = List.copyOf(columns);
    cards = List.copyOf(cards);
    draft = Map.copyOf(draft);
  }
}
