package walebook.record;

import org.jspecify.annotations.Nullable;

/**
 * The settings that a plan asks for.
 *
 * @param stitchType ISO 4915 number
 * @param needPercent how far the seam has to stretch; null when it is measured against the cloth
 * @param readings how many pulls are asked for
 */
public record PieceAsked(
    Grain grain,
    int layers,
    Method method,
    MachineKind machineKind,
    String stitchType,
    @Nullable Double dialWidth,
    @Nullable Double dialLength,
    @Nullable Needle needle,
    String hemMethod,
    String stabiliser,
    @Nullable Double needPercent,
    int readings) {
  public PieceAsked {
    Check.within("layers", layers, 1, 6);
    Check.text("stitchType", stitchType);
    Check.notNegative("dialWidth", dialWidth);
    Check.notNegative("dialLength", dialLength);
    Check.notNegative("needPercent", needPercent);
    Check.within("readings", readings, 1, 5);
  }

  /** Whether something is to lie under the seam or in the hem. */
  public boolean isStabilised() {
    return Setting.isSomething(stabiliser);
  }
}
