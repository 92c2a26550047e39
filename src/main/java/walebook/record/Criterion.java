package walebook.record;

import java.util.EnumSet;
import java.util.Set;
import java.util.UUID;

/**
 * Something that a course asks for, in the words of its papers as the tutor typed them.
 *
 * @param code short, such as {@code 2.1}; each once in a class
 * @param place its place in the list, from 1
 * @param looksAt the marks that count for it, one at least
 */
public record Criterion(
    UUID id, UUID classId, String code, String says, int place, Set<Marking> looksAt, Stamp stamp) {
  /** Every mark counts. */
  public static final Set<Marking> ALL = Set.of(Marking.values());

  public Criterion {
    Check.text("code", code);
    Check.text("says", says);
    Check.within("place", place, 1, 10_000);
    looksAt = Set.copyOf(looksAt);
    if (looksAt.isEmpty()) {
      throw new IllegalArgumentException("looksAt: one mark at least");
    }
  }

  /** True when every mark counts for it, as for most. */
  public boolean looksAtAll() {
    return looksAt.size() == ALL.size();
  }

  /** The marks that count for it, in their usual order. */
  public Set<Marking> inOrder() {
    return EnumSet.copyOf(looksAt);
  }
}
