package walebook.desk.today;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.drawing.StitchPicture;

/**
 * My next piece.
 *
 * @param code as spoken
 * @param settings each in words, cloth first
 * @param stitch to scale, or null when the plan names no length
 */
public record NextPiece(
    UUID plannedId, String code, List<String> settings, @Nullable StitchPicture stitch) {
  public NextPiece {
    settings = List.copyOf(settings);
  }
}
