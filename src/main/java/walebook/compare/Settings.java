package walebook.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import walebook.record.ResultLine;
import walebook.record.SetTo;

/**
 * Pieces sorted into combinations of levels.
 *
 * @param telling factors with more than one level, in the order asked
 * @param same factors with one level in all pieces
 * @param cells pieces by combination, in the order of its levels
 */
record Settings(
    List<Factor> telling,
    List<Comparison.FixedLevel> same,
    Map<List<String>, List<ResultLine>> cells) {

  static Settings of(List<ResultLine> pieces, List<Factor> factors, Names names) {
    Map<Factor, Set<String>> levels = levels(pieces, factors, names);
    List<Factor> telling =
        factors.stream()
            .distinct()
            .filter(factor -> levels.getOrDefault(factor, Set.of()).size() > 1)
            .toList();
    List<Comparison.FixedLevel> same = new ArrayList<>();
    levels.forEach(
        (factor, found) -> {
          if (found.size() == 1 && !found.iterator().next().isEmpty()) {
            same.add(new Comparison.FixedLevel(factor, found.iterator().next()));
          }
        });
    return new Settings(telling, same, cells(pieces, telling, names));
  }

  /**
   * Some of the pieces by what tells all of them apart: what they have alike is then named too,
   * where it is another in the rest.
   */
  static Settings of(
      List<ResultLine> some, List<ResultLine> all, List<Factor> factors, Names names) {
    Settings together = of(all, factors, names);
    return new Settings(together.telling, together.same, cells(some, together.telling, names));
  }

  /**
   * Few combinations and many pieces: found by hash first, put in order once at the end. Pieces
   * that share the very same settings, as those read from a book in one go do, share the look-up.
   */
  private static Map<List<String>, List<ResultLine>> cells(
      List<ResultLine> pieces, List<Factor> telling, Names names) {
    Map<List<String>, List<ResultLine>> found = new HashMap<>();
    IdentityHashMap<SetTo, List<ResultLine>> lots = new IdentityHashMap<>();
    boolean byPiece = telling.contains(Factor.STUDENT);
    for (ResultLine piece : pieces) {
      List<ResultLine> lot = byPiece ? null : lots.get(piece.setTo());
      if (lot == null) {
        List<String> cell = telling.stream().map(f -> names.show(f, f.level(piece))).toList();
        lot = found.computeIfAbsent(cell, key -> new ArrayList<>());
        lots.put(piece.setTo(), lot);
      }
      lot.add(piece);
    }
    Map<List<String>, List<ResultLine>> cells = new TreeMap<>(CompareBySetting.byLevels());
    cells.putAll(found);
    return cells;
  }

  private static Map<Factor, Set<String>> levels(
      List<ResultLine> pieces, List<Factor> factors, Names names) {
    Map<Factor, Set<String>> levels = new EnumMap<>(Factor.class);
    Set<SetTo> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    List<ResultLine> one = pieces.stream().filter(piece -> seen.add(piece.setTo())).toList();
    for (Factor factor : factors) {
      Set<String> found = new LinkedHashSet<>();
      Set<String> shown = new LinkedHashSet<>();
      (factor == Factor.STUDENT ? pieces : one).forEach(piece -> found.add(factor.level(piece)));
      found.forEach(level -> shown.add(names.show(factor, level)));
      levels.put(factor, shown);
    }
    return levels;
  }
}
