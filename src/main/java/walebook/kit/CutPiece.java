package walebook.kit;

/**
 * A kind of rectangle to be cut.
 *
 * @param name as it is called on the list
 * @param count how many, at least 1
 * @param acrossMm size across the cloth's width, over 0
 * @param alongMm size along the cloth's length, over 0
 * @param turnable whether it may be laid the other way round: its grain is free
 */
public record CutPiece(String name, int count, double acrossMm, double alongMm, boolean turnable) {
  public CutPiece {
    if (count < 1) {
      throw new IllegalArgumentException("count must be at least 1: " + count);
    }
    if (!(acrossMm > 0 && alongMm > 0 && Double.isFinite(acrossMm + alongMm))) {
      throw new IllegalArgumentException("acrossMm and alongMm must be over 0: " + name);
    }
  }

  /** Area of all of them, mm². */
  public double areaMm2() {
    return count * acrossMm * alongMm;
  }

  /** True when one fits on a rectangle, turned if it may be. */
  boolean fits(double acrossMost, double alongMost) {
    boolean straight = acrossMm <= acrossMost + Skyline.EVEN && alongMm <= alongMost + Skyline.EVEN;
    boolean turned = alongMm <= acrossMost + Skyline.EVEN && acrossMm <= alongMost + Skyline.EVEN;
    return straight || (turnable && turned);
  }
}
