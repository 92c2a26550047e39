package walebook.book.open;

import java.sql.SQLException;

/** What the disk or the database says is in the way, short enough to stand in a sentence. */
final class Reason {
  private static final int LONGEST = 160;

  private Reason() {}

  static String of(Exception e) {
    String says = String.valueOf(e.getMessage()).lines().findFirst().orElse("");
    // The database puts its code in brackets first, which tells nobody anything.
    String plain = e instanceof SQLException ? says.replaceFirst("^\\[[A-Z_]+\\] +", "") : says;
    return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST) + "…";
  }

  static String of(String says) {
    return of(new IllegalStateException(says));
  }
}
