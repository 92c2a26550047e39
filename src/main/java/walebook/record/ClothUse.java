package walebook.record;

import java.util.UUID;

/**
 * The cloth of a piece and how it lay.
 *
 * @param grain along the seam
 */
public record ClothUse(UUID clothId, Grain grain, int layers) {
  public ClothUse {
    Check.within("layers", layers, 1, 6);
  }
}
