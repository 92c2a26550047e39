package walebook.record;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * How a machine was set for a piece.
 *
 * @param stitchType ISO 4915 number
 * @param stitchName plain name
 * @param dialWidth what the width dial was set to; null when the stitch has none
 * @param dialLength what the length dial was set to
 * @param sewnWidthMm what the machine's card makes of the width dial, or what was measured; mm
 * @param sewnLengthMm the same for the length, mm of seam for one stitch
 * @param differentialFeed front feed's travel over the rear's; 1 is neutral
 */
public record Setting(
    Method method,
    @Nullable UUID machineId,
    MachineKind machineKind,
    String stitchType,
    String stitchName,
    @Nullable Double dialWidth,
    @Nullable Double dialLength,
    @Nullable Double sewnWidthMm,
    @Nullable Double sewnLengthMm,
    @Nullable Needle needle,
    String thread,
    @Nullable Step pressure,
    String pressureDial,
    @Nullable Step tension,
    String tensionDial,
    @Nullable Double differentialFeed,
    String stabiliser,
    String hemMethod) {
  private static final String NOTHING = "none";

  public Setting {
    Check.text("stitchType", stitchType);
    Check.notNegative("dialWidth", dialWidth);
    Check.notNegative("dialLength", dialLength);
    Check.notNegative("sewnWidthMm", sewnWidthMm);
    Check.notNegative("sewnLengthMm", sewnLengthMm);
    Check.positive("differentialFeed", differentialFeed);
  }

  /** Whether something lies under the seam or in the hem. */
  public boolean isStabilised() {
    return isSomething(stabiliser);
  }

  /** Lesson packs write none where nothing is laid under; a form is left empty. */
  public static boolean isSomething(String stabiliser) {
    return !stabiliser.isBlank() && !stabiliser.strip().equalsIgnoreCase(NOTHING);
  }
}
