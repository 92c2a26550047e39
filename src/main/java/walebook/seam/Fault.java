package walebook.seam;

import java.util.List;
import java.util.Objects;

/**
 * A row of the fault catalogue.
 *
 * @param name plain name
 * @param looksLike how it shows
 * @param causes in the order in which they usually come, at least one
 * @param remedies to be tried singly, in order, at least one
 * @param measure what to measure it by
 * @param firstSeen when it usually shows first: sewn, pressed, stretched or washed (common
 *     practice; a seam's twist is measured after the wash in AATCC 179, from memory)
 */
public record Fault(
    String key,
    String name,
    String looksLike,
    List<Cause> causes,
    List<Remedy> remedies,
    String measure,
    String firstSeen,
    String source) {
  public Fault {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(looksLike, "looksLike");
    Objects.requireNonNull(measure, "measure");
    Objects.requireNonNull(firstSeen, "firstSeen");
    Objects.requireNonNull(source, "source");
    causes = List.copyOf(causes);
    remedies = List.copyOf(remedies);
    if (causes.isEmpty() || remedies.isEmpty()) {
      throw new IllegalArgumentException("a fault has causes and remedies: " + key);
    }
  }
}
