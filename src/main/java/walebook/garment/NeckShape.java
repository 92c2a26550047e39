package walebook.garment;

import java.util.Objects;

/**
 * A row of the table of neck shapes.
 *
 * @param turn by how much the opening turns in its plane over its whole length, in radians; a flat
 *     circle turns by 2π
 */
public record NeckShape(String key, String name, double turn, String source) {
  public NeckShape {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(source, "source");
    if (!(turn >= 0 && turn <= 2 * Math.PI)) {
      throw new IllegalArgumentException("turn must be 0 to 2π: " + key);
    }
  }
}
