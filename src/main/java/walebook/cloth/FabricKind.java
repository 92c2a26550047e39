package walebook.cloth;

import java.util.Objects;

/**
 * A row of the table of fabric kinds: what a class usually meets, as a range to be surprised by,
 * not a property of any one bolt.
 *
 * @param structure how it is made, such as {@code single-jersey}
 * @param massFrom usual mass per unit area, g/m²
 * @param massTo usual mass per unit area, g/m²
 * @param courseFrom usual course-wise stretch, per cent
 * @param courseTo usual course-wise stretch, per cent
 * @param waleFrom usual wale-wise stretch, per cent
 * @param waleTo usual wale-wise stretch, per cent
 * @param edge what a cut edge does: lies, curls, ladders, sheds or frays
 */
public record FabricKind(
    String key,
    String name,
    String structure,
    double massFrom,
    double massTo,
    double courseFrom,
    double courseTo,
    double waleFrom,
    double waleTo,
    String edge,
    String source) {
  public FabricKind {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(structure, "structure");
    Objects.requireNonNull(edge, "edge");
    Objects.requireNonNull(source, "source");
    if (!(0 < massFrom && massFrom <= massTo)) {
      throw new IllegalArgumentException("masses must be over 0 and in order: " + key);
    }
    if (!(0 <= courseFrom && courseFrom <= courseTo && 0 <= waleFrom && waleFrom <= waleTo)) {
      throw new IllegalArgumentException("stretches must not be negative and in order: " + key);
    }
  }
}
