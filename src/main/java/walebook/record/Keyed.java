package walebook.record;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A choice that is kept in the book and in files by a lower-case key. */
public interface Keyed {
  String key();

  /**
   * The constant with this key.
   *
   * @throws IllegalArgumentException when the type has none
   */
  static <E extends Enum<E> & Keyed> E of(Class<E> type, String key) {
    E found = find(type, key);
    if (found == null) {
      throw new IllegalArgumentException("no " + type.getSimpleName() + " is called " + key);
    }
    return found;
  }

  /** The constant with this key, or null; a null key gives null. */
  static <E extends Enum<E> & Keyed> @Nullable E find(Class<E> type, @Nullable String key) {
    for (E each : Objects.requireNonNull(type.getEnumConstants())) {
      if (each.key().equals(key)) {
        return each;
      }
    }
    return null;
  }

  /** The key of a constant that may be missing. */
  static @Nullable String keyOf(@Nullable Keyed each) {
    return each == null ? null : each.key();
  }
}
