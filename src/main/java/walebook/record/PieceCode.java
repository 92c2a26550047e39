package walebook.record;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
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
    String code = bare(typed);
    return isCode(code) ? code : null;
  }

  /** What was typed, without blanks and hyphens and in capitals, code or not. */
  public static String bare(String typed) {
    return typed.replaceAll("[\\s\\-–]", "").toUpperCase(Locale.ROOT);
  }

  /** True for a text as long as a code that is none: a sign is wrong or two are swapped. */
  public static boolean isMistyped(String bare) {
    return bare.length() == LENGTH && !isCode(bare);
  }

  /** Every code that a text becomes by mending one sign or swapping two; empty for a code. */
  public static List<String> near(String bare) {
    if (!isMistyped(bare)) {
      return List.of();
    }
    Set<String> found = new LinkedHashSet<>();
    for (int i = 0; i < LENGTH; i++) {
      for (int sign = 0; sign < SIGNS.length(); sign++) {
        found.add(bare.substring(0, i) + SIGNS.charAt(sign) + bare.substring(i + 1));
      }
      for (int j = i + 1; j < LENGTH; j++) {
        StringBuilder swapped = new StringBuilder(bare);
        swapped.setCharAt(i, bare.charAt(j));
        swapped.setCharAt(j, bare.charAt(i));
        found.add(swapped.toString());
      }
    }
    return found.stream().filter(PieceCode::isCode).toList();
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
