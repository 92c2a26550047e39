package walebook.garment;

import java.util.Objects;

/**
 * A row of the table of margins: what an opening must stretch beyond the girth that it passes.
 *
 * @param points percentage points on top of the demand
 */
public record OpeningMargin(String key, String name, double points, String source) {
  public OpeningMargin {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(source, "source");
    if (!(points >= 0 && points <= 100)) {
      throw new IllegalArgumentException("points must be 0 to 100: " + key);
    }
  }
}
