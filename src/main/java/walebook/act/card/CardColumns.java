package walebook.act.card;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import walebook.act.piece.PieceField;
import walebook.lesson.LogField;

/** The fields of the log form that a lesson's record cards ask for, in the form's order. */
public final class CardColumns {
  /** What is asked for when the lesson's pack can't be read any more. */
  private static final List<LogField> USUAL =
      List.of(
          LogField.CLOTH,
          LogField.GRAIN,
          LogField.MACHINE,
          LogField.STITCH,
          LogField.WIDTH,
          LogField.LENGTH,
          LogField.GAUGE,
          LogField.EDGE_BEFORE,
          LogField.EDGE_SEWN,
          LogField.EDGE_PRESSED,
          LogField.PULL,
          LogField.BROKE,
          LogField.RELEASED,
          LogField.APPEARANCE,
          LogField.FAULTS,
          LogField.NOTE);

  private CardColumns() {}

  /**
   * The fields.
   *
   * @param log what the pack has a student write down; empty for the usual
   * @param readings how many pulls a card has room for, 1 to 3
   */
  public static List<PieceField> of(List<LogField> log, int readings) {
    Set<PieceField> asked = EnumSet.noneOf(PieceField.class);
    (log.isEmpty() ? USUAL : log).forEach(each -> asked.addAll(fields(each, readings)));
    // The set keeps the order in which the form lists its fields.
    return List.copyOf(new ArrayList<>(asked));
  }

  private static List<PieceField> fields(LogField field, int readings) {
    return switch (field) {
      case CLOTH -> List.of(PieceField.CLOTH);
      case GRAIN -> List.of(PieceField.GRAIN);
      case LAYERS -> List.of(PieceField.LAYERS);
      case MACHINE -> List.of(PieceField.MACHINE);
      case STITCH -> List.of(PieceField.STITCH);
      case WIDTH -> List.of(PieceField.DIAL_WIDTH);
      case LENGTH -> List.of(PieceField.DIAL_LENGTH);
      case NEEDLE -> List.of(PieceField.NEEDLE_POINT, PieceField.NEEDLE_NM);
      case THREAD -> List.of(PieceField.THREAD);
      case PRESSURE -> List.of(PieceField.PRESSURE);
      case TENSION -> List.of(PieceField.TENSION);
      case DIFFERENTIAL_FEED -> List.of(PieceField.DIFFERENTIAL_FEED);
      case STABILISER -> List.of(PieceField.STABILISER);
      case HEM_METHOD -> List.of(PieceField.HEM_METHOD);
      case GAUGE -> List.of(PieceField.GAUGE);
      case EDGE_BEFORE -> List.of(PieceField.EDGE_BEFORE);
      case EDGE_SEWN -> List.of(PieceField.EDGE_SEWN);
      case EDGE_PRESSED -> List.of(PieceField.EDGE_PRESSED);
      case STRETCHED, PULL -> pulls(readings);
      case BROKE -> List.of(PieceField.BROKE);
      case RELEASED -> List.of(PieceField.RELEASED);
      case APPEARANCE -> List.of(PieceField.GRADE);
      case FAULTS -> List.of(PieceField.FAULTS);
      case OUTCOME -> List.of(PieceField.OUTCOME);
      case NOTE -> List.of(PieceField.REMARK);
      case MINUTES -> List.of(PieceField.MINUTES);
      case PHOTO -> List.of();
    };
  }

  private static List<PieceField> pulls(int readings) {
    List<PieceField> pulls = new ArrayList<>(List.of(PieceField.END, PieceField.END_LENGTH));
    if (readings >= 2) {
      pulls.addAll(List.of(PieceField.END_2, PieceField.END_LENGTH_2));
    }
    if (readings >= 3) {
      pulls.addAll(List.of(PieceField.END_3, PieceField.END_LENGTH_3));
    }
    return pulls;
  }
}
