package walebook.tables;

import java.util.Objects;

/**
 * A row of the table of cautions: the usual warning where something can hurt.
 *
 * @param key what a caution is called for, such as {@code needle-change}
 * @param where the part of the work it belongs to
 * @param says the sentence
 */
public record CautionRow(String key, String where, String says, String source) {
  public CautionRow {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(where, "where");
    Objects.requireNonNull(says, "says");
    Objects.requireNonNull(source, "source");
  }
}
