package walebook.seam;

import java.util.Objects;

/**
 * A row of the table of needle sizes.
 *
 * @param nm the size Nm, 100 × blade diameter in mm
 * @param older the older number printed beside it
 */
public record NeedleSize(int nm, int older, String source) {
  public NeedleSize {
    Objects.requireNonNull(source, "source");
    if (nm < 30 || nm > 200 || older < 1) {
      throw new IllegalArgumentException("no needle size: Nm " + nm + ", older " + older);
    }
  }
}
