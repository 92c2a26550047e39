package walebook.kit;

/**
 * A left-over rectangle of cloth, straight with the grain.
 *
 * @param acrossMm usable size across the columns of loops, over 0
 * @param alongMm usable size along them, over 0
 */
public record Scrap(String name, double acrossMm, double alongMm) {
  public Scrap {
    if (!(acrossMm > 0 && alongMm > 0 && Double.isFinite(acrossMm + alongMm))) {
      throw new IllegalArgumentException("acrossMm and alongMm must be over 0: " + name);
    }
  }

  double areaMm2() {
    return acrossMm * alongMm;
  }
}
