package walebook.act.piece;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import walebook.compare.ClothStretch;
import walebook.problem.Problem;
import walebook.quantity.Show;
import walebook.quantity.Unit;
import walebook.record.Measure;
import walebook.record.PullReading;
import walebook.record.TestPiece;

/** What lengths can't be, or are unlikely to be, beside one another. */
public final class MeasureLimits {
  private static final double USUAL_STRETCH = 250;
  private static final double BEYOND_CLOTH_POINTS = 20;
  private static final double USUAL_EDGE_CHANGE = 40;

  private MeasureLimits() {}

  /**
   * What the log form would ask about a piece's lengths as they stand.
   *
   * @param cloth how far its cloth stretches that way; null when not known
   */
  public static List<Problem> asked(TestPiece piece, @Nullable ClothStretch cloth) {
    Map<PieceField, String> typed = new EnumMap<>(PieceField.class);
    MendTestPiece.measure(typed, piece.measure());
    PullReading counting = piece.measure().counting();
    if (counting != null) {
      typed.put(PieceField.END_LENGTH, Show.upTo(counting.endMm(), 3) + " mm");
    }
    FieldReader read = new FieldReader(PieceEntry.of(piece).with(typed), Unit.MM);
    check(read, piece.measure(), cloth);
    return List.copyOf(read.problems());
  }

  static void check(FieldReader read, Measure measure, @Nullable ClothStretch cloth) {
    PullReading pull = measure.counting();
    Double gauge = measure.gaugeMm();
    if (pull != null && gauge != null) {
      if (pull.endMm() < gauge) {
        read.ask(PieceField.END_LENGTH, "length.below-gauge", Show.mm(gauge));
      }
      Double stretch = measure.seamStretchPercent();
      if (stretch != null && stretch > USUAL_STRETCH) {
        read.ask(PieceField.END_LENGTH, "stretch.unlikely", Show.percent(stretch));
      } else if (stretch != null
          && cloth != null
          && stretch > cloth.percent() + BEYOND_CLOTH_POINTS) {
        read.ask(PieceField.END_LENGTH, "stretch.beyond-cloth", Show.percent(cloth.percent()));
      }
      if (measure.releasedMm() != null && measure.releasedMm() > pull.endMm()) {
        read.ask(PieceField.RELEASED, "length.released-longer", Show.mm(pull.endMm()));
      }
    }
    edge(read, PieceField.EDGE_SEWN, measure.edgeBeforeMm(), measure.edgeSewnMm());
    edge(read, PieceField.EDGE_PRESSED, measure.edgeBeforeMm(), measure.edgePressedMm());
  }

  /** Each length by itself: one that is right hides no slip in the other. */
  private static void edge(
      FieldReader read, PieceField field, @Nullable Double before, @Nullable Double after) {
    if (before != null && after != null) {
      double change = 100 * (after - before) / before;
      if (Math.abs(change) > USUAL_EDGE_CHANGE) {
        read.ask(field, "edge.unlikely", Show.percent(change));
      }
    }
  }
}
