package walebook.seam;

import org.jspecify.annotations.Nullable;

/**
 * The numbers of a test piece as the log form has them while it is being filled: lengths in mm,
 * null for what has not been typed yet. Any number is taken; what cannot be right is told, not
 * thrown.
 *
 * @param gaugeMm between the marks before stretching
 * @param edgeBeforeMm the edge before sewing
 * @param edgeSewnMm after sewing
 * @param edgePressedMm after pressing
 * @param end whether the seam gave or held
 * @param endMm the length at which it gave, or to which it held
 * @param clothPercent the cloth's stretch in the seam's direction
 * @param clothUncertainty its standard uncertainty in points
 * @param needPercent what the garment asks for
 * @param readToMm what the lengths are read to
 */
public record PieceNumbers(
    @Nullable Double gaugeMm,
    @Nullable Double edgeBeforeMm,
    @Nullable Double edgeSewnMm,
    @Nullable Double edgePressedMm,
    @Nullable SeamEnd end,
    @Nullable Double endMm,
    @Nullable Double clothPercent,
    @Nullable Double clothUncertainty,
    @Nullable Double needPercent,
    double readToMm) {
  public PieceNumbers {
    if (!(Double.isFinite(readToMm) && readToMm >= 0)) {
      throw new IllegalArgumentException("readToMm must not be negative: " + readToMm);
    }
  }
}
