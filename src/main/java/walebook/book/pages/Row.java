package walebook.book.pages;

import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One row as it lies in the file.
 *
 * @param values {@code Long}, {@code Double}, {@code String}, {@code byte[]} or null
 */
public record Row(List<@Nullable Object> values) {
  public Row {
    values = Collections.unmodifiableList(values);
  }

  /** A value as text; empty when it is none. */
  public String text(int column) {
    return column < values.size() && values.get(column) instanceof String text ? text : "";
  }
}
