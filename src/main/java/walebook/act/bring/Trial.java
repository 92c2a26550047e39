package walebook.act.bring;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What came of all rows.
 *
 * @param stepId by which everything is taken back; null when nothing was brought in
 * @param needsOrder true when some day could be read two ways
 */
public record Trial(List<RowFate> fates, @Nullable UUID stepId, boolean needsOrder) {
  public Trial {
    fates = List.copyOf(fates);
  }

  public int count(RowFate.Fate fate) {
    return (int) fates.stream().filter(each -> each.fate() == fate).count();
  }

  /** True when some row stays outside and should not. */
  public boolean hasProblems() {
    return fates.stream().anyMatch(RowFate::isProblem);
  }
}
