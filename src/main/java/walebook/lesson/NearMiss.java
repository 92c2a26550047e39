package walebook.lesson;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Which known word somebody meant: the nearest by slips of the keys. */
final class NearMiss {
  private NearMiss() {}

  /** The known word within a third of its letters of what was typed, or begun by it, or null. */
  static @Nullable String of(String typed, Collection<String> known) {
    if (typed.length() > 60) {
      return null;
    }
    String plain = plain(typed);
    return known.stream()
        .filter(each -> isNear(plain, plain(each)))
        .min(Comparator.comparingInt(each -> slips(plain, plain(each))))
        .orElse(null);
  }

  private static boolean isNear(String typed, String known) {
    boolean begun = typed.length() > 2 && known.startsWith(typed + "_");
    return begun || slips(typed, known) <= Math.max(1, known.length() / 3);
  }

  private static String plain(String word) {
    return word.strip().toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
  }

  /**
   * Letters added, lost, changed or swapped with a neighbour (optimal string alignment distance,
   * after Damerau 1964).
   */
  static int slips(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 ? j : j == 0 ? i : cheapest(a, b, d, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int cheapest(String a, String b, int[][] d, int i, int j) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int best = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
