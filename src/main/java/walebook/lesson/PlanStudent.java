package walebook.lesson;

import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.MachineKind;
import walebook.record.Tier;

/**
 * A student to be planned for, and how much of the plan they take on.
 *
 * @param cells how many combinations, in the place of the tier's; null for the tier's
 * @param withoutMachines kinds of machine the student has none of
 * @param withoutCloths the plan's cloths the student has none of, by their slot
 */
public record PlanStudent(
    UUID id,
    Tier tier,
    @Nullable Integer cells,
    Set<MachineKind> withoutMachines,
    Set<String> withoutCloths) {
  public PlanStudent {
    withoutMachines = Set.copyOf(withoutMachines);
    withoutCloths = Set.copyOf(withoutCloths);
    if (cells != null && cells < 1) {
      throw new IllegalArgumentException("cells must be at least 1: " + cells);
    }
  }

  /** A student who has everything and takes on what the tier takes on. */
  public PlanStudent(UUID id, Tier tier) {
    this(id, tier, null, Set.of(), Set.of());
  }

  /** How many combinations the student takes on, of a plan's tiers. */
  int share(Tiers tiers) {
    return cells == null ? tiers.of(tier).cells() : cells;
  }
}
