package walebook.book;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The rows of one kind.
 *
 * @param <T> the kind
 */
public interface Shelf<T> {
  /** All of them, in the order people expect: by name or number. */
  List<T> all();

  @Nullable T find(UUID id);

  /** Saves a new one. */
  void add(T row);

  /**
   * Saves a changed one; its stamp must be the next after the saved one's.
   *
   * @throws StaleRow when somebody else saved it meanwhile
   */
  void update(T row);
}
