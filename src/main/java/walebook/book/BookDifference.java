package walebook.book;

import java.util.List;

/**
 * What going back to a copy would change.
 *
 * @param nowReadable false when the present book can't be read; the rest tells of the copy alone
 * @param counts rows of each table that differs or holds anything a person asks for
 * @param lost codes of pieces that are in the book now and not in the copy
 * @param back codes of pieces that are in the copy and not in the book now
 * @param changed codes of pieces that are in both, in another version
 */
public record BookDifference(
    boolean nowReadable,
    List<Count> counts,
    List<String> lost,
    List<String> back,
    List<String> changed) {
  public BookDifference {
    counts = List.copyOf(counts);
    lost = List.copyOf(lost);
    back = List.copyOf(back);
    changed = List.copyOf(changed);
  }

  /**
   * Rows of one table.
   *
   * @param now in the present book
   * @param then in the copy
   * @param otherVersion in both, but changed since; those of pieces are named by their codes
   */
  public record Count(String table, long now, long then, long otherVersion) {
    public boolean isSame() {
      return now == then && otherVersion == 0;
    }
  }

  /** True when the copy holds what the book holds, each row in the same version. */
  public boolean isNone() {
    return nowReadable
        && lost.isEmpty()
        && back.isEmpty()
        && changed.isEmpty()
        && counts.stream().allMatch(Count::isSame);
  }
}
