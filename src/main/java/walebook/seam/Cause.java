package walebook.seam;

import java.util.List;
import java.util.Objects;

/**
 * What may be behind a fault.
 *
 * @param says in plain words
 * @param clues all of which must fit for the settings to speak for it; one that is ruled out rules
 *     it out; empty when no setting tells
 * @param remedies what to try against it, in order, at least one
 */
public record Cause(String says, List<Clue> clues, List<Remedy> remedies) {
  public Cause {
    Objects.requireNonNull(says, "says");
    clues = List.copyOf(clues);
    remedies = List.copyOf(remedies);
    if (remedies.isEmpty()) {
      throw new IllegalArgumentException("a cause has a remedy: " + says);
    }
  }
}
