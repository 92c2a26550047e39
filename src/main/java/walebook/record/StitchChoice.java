package walebook.record;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A stitch that something will be sewn with.
 *
 * @param stitchType key of the stitch, as a test piece carries it
 * @param dialWidth as it would be set; null where the stitch has none or it is open
 * @param dialLength as it would be set; null while it is open
 */
public record StitchChoice(
    MachineKind machineKind,
    String stitchType,
    @Nullable Double dialWidth,
    @Nullable Double dialLength) {
  public StitchChoice {
    Objects.requireNonNull(machineKind, "machineKind");
    Check.text("stitchType", stitchType);
    Check.notNegative("dialWidth", dialWidth);
    Check.notNegative("dialLength", dialLength);
  }
}
