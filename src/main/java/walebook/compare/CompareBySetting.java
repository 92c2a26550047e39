package walebook.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.ClothUse;
import walebook.record.Grain;
import walebook.record.TestPiece;

/** Sorts pieces into combinations of levels; pure, so that any choice of pieces can be compared. */
public final class CompareBySetting {
  /** What a comparison looks at when nothing is chosen. */
  public static final List<Factor> USUAL =
      List.of(
          Factor.CLOTH,
          Factor.GRAIN,
          Factor.STITCH,
          Factor.WIDTH,
          Factor.LENGTH,
          Factor.HEM_METHOD,
          Factor.FEED);

  private CompareBySetting() {}

  /**
   * Compares pieces by factors.
   *
   * @param stretches what is known of each cloth's stretch
   * @param names gives a level's shown name; rows are sorted by it
   */
  public static Comparison of(
      List<TestPiece> pieces,
      List<Factor> factors,
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Names names) {
    Map<Factor, Set<String>> levels = levels(pieces, factors, names);
    List<Factor> telling = factors.stream().filter(f -> several(levels, f)).toList();
    List<Comparison.FixedLevel> same = new ArrayList<>();
    levels.forEach(
        (factor, found) -> {
          if (found.size() == 1 && !found.iterator().next().isEmpty()) {
            same.add(new Comparison.FixedLevel(factor, found.iterator().next()));
          }
        });
    Map<List<String>, List<PieceResult>> cells = new TreeMap<>(byLevels());
    for (TestPiece piece : pieces) {
      List<String> cell = telling.stream().map(f -> names.show(f, f.level(piece))).toList();
      cells
          .computeIfAbsent(cell, key -> new ArrayList<>())
          .add(PieceResult.of(piece, stretch(stretches, piece.cloth())));
    }
    List<SettingRow> rows = new ArrayList<>();
    cells.forEach((cell, results) -> rows.add(new SettingRow(cell, results)));
    int students = (int) pieces.stream().map(each -> each.whose().studentId()).distinct().count();
    return new Comparison(telling, same, rows, pieces.size(), students);
  }

  private static @Nullable ClothStretch stretch(
      Map<UUID, Map<Grain, ClothStretch>> stretches, ClothUse use) {
    return stretches.getOrDefault(use.clothId(), Map.of()).get(use.grain());
  }

  private static boolean several(Map<Factor, Set<String>> levels, Factor factor) {
    return levels.getOrDefault(factor, Set.of()).size() > 1;
  }

  private static Map<Factor, Set<String>> levels(
      List<TestPiece> pieces, List<Factor> factors, Names names) {
    Map<Factor, Set<String>> levels = new EnumMap<>(Factor.class);
    for (Factor factor : factors) {
      Set<String> found = new LinkedHashSet<>();
      pieces.forEach(piece -> found.add(names.show(factor, factor.level(piece))));
      levels.put(factor, found);
    }
    return levels;
  }

  /** Level by level: numbers by size, words by the alphabet, a missing level first. */
  static Comparator<List<String>> byLevels() {
    return (left, right) -> {
      for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
        int order = level(left.get(i), right.get(i));
        if (order != 0) {
          return order;
        }
      }
      return Integer.compare(left.size(), right.size());
    };
  }

  private static int level(String left, String right) {
    Double a = number(left);
    Double b = number(right);
    if (a != null && b != null) {
      return Double.compare(a, b);
    }
    int order = String.CASE_INSENSITIVE_ORDER.compare(left, right);
    return order != 0 ? order : left.compareTo(right);
  }

  private static @Nullable Double number(String text) {
    try {
      return Double.valueOf(text);
    } catch (NumberFormatException e) {
      return null;
    }
  }
}
