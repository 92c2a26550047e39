package walebook.garment;

/**
 * A part of an opening between two marks.
 *
 * @param lengthMm along the seam line, over 0
 * @param weight its share of the shortening for each mm; alike for even strain, 0 for a part that
 *     is sewn on without being stretched
 */
public record Segment(double lengthMm, double weight) {
  public Segment {
    if (!(lengthMm > 0 && Double.isFinite(lengthMm))) {
      throw new IllegalArgumentException("lengthMm must be over 0: " + lengthMm);
    }
    if (!(weight >= 0 && Double.isFinite(weight))) {
      throw new IllegalArgumentException("weight must not be negative: " + weight);
    }
  }
}
