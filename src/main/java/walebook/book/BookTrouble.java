package walebook.book;

import java.io.Serial;

/**
 * The file could not be read or written.
 *
 * <p>{@link #code()} is the key of a sentence: {@code full}, {@code busy}, {@code read-only},
 * {@code damaged} or {@code unknown}.
 */
public final class BookTrouble extends RuntimeException {
  @Serial private static final long serialVersionUID = 1;

  private final String code;

  public BookTrouble(String code, String message, Throwable cause) {
    super(message, cause);
    this.code = code;
  }

  public String code() {
    return code;
  }
}
