package walebook.desk.today;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.drawing.StitchPicture;

/**
 * My next piece.
 *
 * @param code as spoken
 * @param ofLesson in words which other lesson it is of, or that it is for a garment; empty when it
 *     is of the plan of the lesson in hand
 * @param settings each in words, cloth first
 * @param stitch to scale, or null when the plan names no length
 */
public record NextPiece(
    UUID plannedId,
    String code,
    String ofLesson,
    List<String> settings,
    @Nullable StitchPicture stitch) {
  public NextPiece {
    settings = List.copyOf(settings);
  }

  /** Whether it is of the plan of the lesson in hand. */
  public boolean isInHand() {
    return ofLesson.isEmpty();
  }
}
