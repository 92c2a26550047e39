package walebook.record;

import java.util.Locale;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * Short codes of pieces: six signs out of 23 that are told apart on paper and by ear (no I O 0 1 B
 * 8 S 5 Z 2; no D, N or U, which sound like T, M and W). The sixth is a check sign over a prime
 * base, so that any one wrong sign and any two swapped ones are noticed.
 */
public final class PieceCode {
  /** The signs; 23 is prime, which the check rests on. */
  public static final String SIGNS = "ACEFGHJKLMPQRTVWXY34679";

  private static final int LENGTH = 6;

  private PieceCode() {}

  /** A code drawn from the given source of chance. */
  public static String draw(Random random) {
    StringBuilder code = new StringBuilder(LENGTH);
    for (int i = 0; i < LENGTH - 1; i++) {
      code.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
    }
    return code.append(check(code)).toString();
  }

  /** True for six of the signs of which the last fits the others. */
  public static boolean isCode(String text) {
    return text.length() == LENGTH
        && text.chars().allMatch(sign -> SIGNS.indexOf(sign) >= 0)
        && text.charAt(LENGTH - 1) == check(text);
  }

  /** What was typed, without blanks and hyphens and in capitals, or null when it is no code. */
  public static @Nullable String read(String typed) {
    String code = typed.replaceAll("[\\s\\-–]", "").toUpperCase(Locale.ROOT);
    return isCode(code) ? code : null;
  }

  /** The code in two groups of three, as printed and read aloud. */
  public static String spoken(String code) {
    return code.length() == LENGTH ? code.substring(0, 3) + "-" + code.substring(3) : code;
  }

  private static char check(CharSequence code) {
    int sum = 0;
    for (int i = 0; i < LENGTH - 1; i++) {
      sum += (i + 2) * SIGNS.indexOf(code.charAt(i));
    }
    return SIGNS.charAt(sum % SIGNS.length());
  }
}
