package walebook.book;

import java.nio.file.Path;
import java.time.Instant;

/**
 * One whole copy of a book among its backups.
 *
 * @param madeAt when it was made, to the second
 * @param why what it was made for
 * @param bytes its size
 */
public record BookCopy(Path file, Instant madeAt, Why why, long bytes) {

  /** What a copy was made for; the sign stands in its file's name. */
  public enum Why {
    /** On opening and on schedule. */
    ROUTINE(""),
    ASKED("asked"),
    BEFORE_MIGRATION("before-shape"),
    BEFORE_GATHERING("before-gathering"),
    BEFORE_RESTORE("before-restore");

    private final String sign;

    Why(String sign) {
      this.sign = sign;
    }

    public String sign() {
      return sign;
    }
  }
}
