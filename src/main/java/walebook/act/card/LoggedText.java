package walebook.act.card;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.FaultText;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.act.piece.StartPiece;
import walebook.quantity.Show;
import walebook.record.Keyed;
import walebook.record.Measure;
import walebook.record.PullReading;
import walebook.record.TestPiece;

/** A logged piece as it would have been typed on its card. */
public final class LoggedText {
  private static final List<PieceField> ENDS =
      List.of(PieceField.END, PieceField.END_2, PieceField.END_3);
  private static final List<PieceField> LENGTHS =
      List.of(PieceField.END_LENGTH, PieceField.END_LENGTH_2, PieceField.END_LENGTH_3);

  private final Map<PieceField, String> typed = new EnumMap<>(PieceField.class);

  private LoggedText() {}

  public static Map<PieceField, String> of(TestPiece piece, PieceRoom room) {
    LoggedText text = new LoggedText();
    PieceEntry bare = PieceEntry.of(piece);
    text.typed.putAll(StartPiece.typed(bare, piece, room).typed());
    text.measure(piece.measure());
    text.key(PieceField.OUTCOME, piece.seen().outcome());
    text.put(PieceField.FAULTS, FaultText.write(piece.seen().faults()));
    text.put(PieceField.REMARK, piece.seen().remark());
    Integer grade = piece.seen().grade();
    text.put(PieceField.GRADE, grade == null ? "" : grade.toString());
    return text.typed;
  }

  private void measure(Measure measure) {
    length(PieceField.GAUGE, measure.gaugeMm());
    length(PieceField.EDGE_BEFORE, measure.edgeBeforeMm());
    length(PieceField.EDGE_SEWN, measure.edgeSewnMm());
    length(PieceField.EDGE_PRESSED, measure.edgePressedMm());
    length(PieceField.RELEASED, measure.releasedMm());
    key(PieceField.BROKE, measure.broke());
    Double minutes = measure.sewingMinutes();
    put(PieceField.MINUTES, minutes == null ? "" : Show.upTo(minutes, 3));
    List<PullReading> pulls = measure.pulls();
    for (int i = 0; i < Math.min(ENDS.size(), pulls.size()); i++) {
      key(ENDS.get(i), pulls.get(i).end());
      length(LENGTHS.get(i), pulls.get(i).endMm());
    }
  }

  private void length(PieceField field, @Nullable Double mm) {
    put(field, mm == null ? "" : Show.mm(mm));
  }

  private void key(PieceField field, @Nullable Keyed choice) {
    put(field, choice == null ? "" : choice.key());
  }

  private void put(PieceField field, String text) {
    if (!text.isEmpty()) {
      typed.put(field, text);
    }
  }
}
