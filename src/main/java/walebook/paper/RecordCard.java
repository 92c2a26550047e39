package walebook.paper;

import java.util.List;

/** A card to write a piece's record on: its head and the form's fields in the form's order. */
public record RecordCard(PieceSlip slip, String lesson, List<CardField> fields) {
  public RecordCard {
    fields = List.copyOf(fields);
  }
}
