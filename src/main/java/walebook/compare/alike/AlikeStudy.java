package walebook.compare.alike;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.statistics.Agreement;

/**
 * Several students' readings of one cloth under the same conditions. Numbers are points of stretch.
 *
 * @param people by name, each with at least one reading
 * @param agreement repeatability, reproducibility and biases (ISO 5725-2, ASTM E691)
 * @param criticalH beyond this an h is odd; null with fewer than three people
 * @param setAside readings that the tutor set aside and that are left out
 * @param odd readings far from the others, which nobody has looked at yet
 * @param without the study without these; null where there are none, or nothing is left
 * @param mixedCycles true when first and later stretches of a strip stand together: later ones run
 *     longer, and that counts as scatter here
 */
public record AlikeStudy(
    Conditions conditions,
    List<Person> people,
    Agreement agreement,
    @Nullable Double criticalH,
    int setAside,
    Set<UUID> odd,
    @Nullable AlikeStudy without,
    boolean mixedCycles) {
  public AlikeStudy {
    people = List.copyOf(people);
    odd = Set.copyOf(odd);
  }

  public int readings() {
    return agreement.oneWay().n();
  }

  /** What is told of: the study without its odd readings, where there are any and others too. */
  public AlikeStudy told() {
    return without == null ? this : without;
  }

  /** A person's readings that are odd and that nobody has looked at yet. */
  public List<ReadingDot> oddOf(Person person) {
    return person.readings().stream().filter(dot -> odd.contains(dot.readingId())).toList();
  }

  /** Two readings of one person seldom differ by more, points; null when nobody read twice. */
  public @Nullable Double repeatabilityLimit() {
    return positive(agreement.repeatabilityLimit());
  }

  /** Single readings of two people seldom differ by more, points; null when it can't be told. */
  public @Nullable Double reproducibilityLimit() {
    return positive(agreement.reproducibilityLimit());
  }

  /** How far a person reads off the room, points; null where nobody else measured. */
  public @Nullable Double bias(Person person) {
    return people.size() < 2 ? null : Double.valueOf(person.member().bias());
  }

  /** True when there is a limit beyond which somebody's h or k is odd. */
  public boolean hasLimits() {
    return criticalH != null
        || people.stream().anyMatch(person -> person.member().criticalK() != null);
  }

  /** A limit of 0 comes from equal readings on a coarse scale: that is no limit known. */
  private static @Nullable Double positive(@Nullable Double limit) {
    return limit == null || limit == 0 ? null : limit;
  }
}
