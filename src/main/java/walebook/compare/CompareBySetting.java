package walebook.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import walebook.record.Grain;
import walebook.record.ResultLine;
import walebook.record.SetTo;
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

  /** As settings are shown; what else a machine would read as a number is a name here. */
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,15}(?:\\.[0-9]{1,15})?");

  private CompareBySetting() {}

  /**
   * Compares whole pieces by factors.
   *
   * @param stretches what is known of each cloth's stretch
   * @param names gives a level's shown name; rows are sorted by it
   */
  public static Comparison of(
      List<TestPiece> pieces,
      List<Factor> factors,
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Names names) {
    return ofLines(pieces.stream().map(ResultLine::of).toList(), factors, stretches, names);
  }

  /** Compares pieces cut down to their results. */
  public static Comparison ofLines(
      List<ResultLine> pieces,
      List<Factor> factors,
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Names names) {
    Settings settings = Settings.of(pieces, factors, names);
    List<SettingRow> rows = new ArrayList<>();
    settings
        .cells()
        .forEach(
            (cell, lines) ->
                rows.add(
                    new SettingRow(
                        cell,
                        lines.stream()
                            .map(each -> PieceResult.of(each, stretch(stretches, each)))
                            .toList())));
    int students = (int) pieces.stream().map(ResultLine::studentId).distinct().count();
    int cloths = (int) pieces.stream().map(each -> each.setTo().clothId()).distinct().count();
    return new Comparison(
        settings.telling(), settings.same(), rows, pieces.size(), students, cloths, 0);
  }

  /** The same without the values that were set aside, saying how many these were. */
  public static Comparison ofLines(
      LeaveOut leaving,
      List<Factor> factors,
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Names names) {
    return ofLines(leaving.lines(), factors, stretches, names).leavingOut(leaving.setAside());
  }

  public static @Nullable ClothStretch stretch(
      Map<UUID, Map<Grain, ClothStretch>> stretches, ResultLine piece) {
    SetTo set = piece.setTo();
    return stretches.getOrDefault(set.clothId(), Map.of()).get(set.grain());
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

  /** Never 0 for two that differ: one of them would take the other's pieces with it. */
  private static int level(String left, String right) {
    boolean first = NUMBER.matcher(left).matches();
    boolean second = NUMBER.matcher(right).matches();
    int order =
        first && second
            ? Double.compare(Double.parseDouble(left), Double.parseDouble(right))
            : Integer.compare(rank(left, first), rank(right, second));
    if (order != 0) {
      return order;
    }
    int byLetters = String.CASE_INSENSITIVE_ORDER.compare(left, right);
    return byLetters != 0 ? byLetters : left.compareTo(right);
  }

  /** What is missing, then numbers, then words: mixed up they would go round in a circle. */
  private static int rank(String level, boolean number) {
    return level.isEmpty() ? 0 : number ? 1 : 2;
  }
}
