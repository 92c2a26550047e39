package walebook.compare;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Which two settings are compared with each other. What a setting does is asked of one cloth: a
 * zigzag on one against a straight stitch on another tells nothing of either stitch. So where more
 * than the cloth tells pieces apart, both of a pair lie on the same cloth, and along different
 * grains only where all else is alike.
 *
 * @param telling what settings are told apart by, in the order of their levels
 */
record Ground(List<Factor> telling) {
  Ground {
    telling = List.copyOf(telling);
  }

  /** True when pairs are kept to one cloth; not where cloths alone are asked about. */
  boolean isOneCloth() {
    return telling.size() > 1 && telling.contains(Factor.CLOTH);
  }

  /** What both of a pair share: the cloth, and the grain unless it is all they differ in. */
  List<Factor> shared() {
    List<Factor> shared = new ArrayList<>();
    if (isOneCloth()) {
      shared.add(Factor.CLOTH);
    }
    boolean more = telling.stream().anyMatch(f -> f != Factor.CLOTH && f != Factor.GRAIN);
    if (more && telling.contains(Factor.GRAIN)) {
      shared.add(Factor.GRAIN);
    }
    return shared;
  }

  /** The cloth of a setting where pairs are kept to one; else empty. */
  String cloth(List<String> levels) {
    return isOneCloth() ? levels.get(telling.indexOf(Factor.CLOTH)) : "";
  }

  boolean compares(List<String> first, List<String> second) {
    if (!cloth(first).equals(cloth(second))) {
      return false;
    }
    int grain = telling.indexOf(Factor.GRAIN);
    return grain < 0
        || first.get(grain).equals(second.get(grain))
        || without(first, grain).equals(without(second, grain));
  }

  private static List<String> without(List<String> levels, int place) {
    List<String> others = new ArrayList<>(levels);
    others.remove(place);
    return others;
  }

  /** How many pairs are compared. */
  int pairs(Collection<List<String>> settings) {
    List<List<String>> all = List.copyOf(settings);
    int pairs = 0;
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        pairs += compares(all.get(i), all.get(j)) ? 1 : 0;
      }
    }
    return pairs;
  }
}
