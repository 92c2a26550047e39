package walebook.book.sqlite.gather;

import java.util.Locale;

/** Keys made inside a statement, in the form of UUID version 7 (RFC 9562), all of one moment. */
record NewIds(long now) {
  /** An expression that is another key in each row. */
  String sql() {
    String time = String.format(Locale.ROOT, "%012x", now);
    return "lower('"
        + time.substring(0, 8)
        + "-"
        + time.substring(8)
        + "-7' || substr(hex(randomblob(2)), 1, 3) || '-8' || substr(hex(randomblob(2)), 1, 3)"
        + " || '-' || hex(randomblob(6)))";
  }
}
