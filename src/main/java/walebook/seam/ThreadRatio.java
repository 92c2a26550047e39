package walebook.seam;

import java.util.Objects;
import walebook.working.Source;

/**
 * A row of the table of thread ratios: thread used per length of seam, all threads together.
 *
 * @param key the row's key; several rows may speak of one stitch type and disagree
 * @param stitchType ISO 4915 number
 * @param ratio over 0
 * @param kind how far to trust it
 */
public record ThreadRatio(
    String key, String stitchType, double ratio, Source.Kind kind, String source) {
  public ThreadRatio {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(stitchType, "stitchType");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(source, "source");
    if (!(Double.isFinite(ratio) && ratio > 0)) {
      throw new IllegalArgumentException("ratio must be over 0: " + key);
    }
  }
}
