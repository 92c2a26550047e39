package walebook.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import walebook.record.Grain;
import walebook.record.ResultLine;

/**
 * Any number of pieces by setting: the same as {@link Comparison}, without the single pieces.
 *
 * @param factors what they are told apart by, in order; each has more than one level
 * @param rows one for each combination that was sewn, in the order of its levels
 * @param all every piece in one, without a level
 * @param setAside how many values the tutor set aside and that are left out
 */
public record TalliedComparison(
    List<Factor> factors, List<TalliedRow> rows, TalliedRow all, int setAside) {
  public TalliedComparison {
    factors = List.copyOf(factors);
    rows = List.copyOf(rows);
  }

  /**
   * Compares what was tallied.
   *
   * @param factors none that a setting does not tell: not the student
   * @param stretches what is known of each cloth's stretch
   */
  public static TalliedComparison of(
      LineTally tally,
      List<Factor> factors,
      Map<UUID, Map<Grain, ClothStretch>> stretches,
      Names names) {
    Map<ResultLine, SettingTally> byFirst = byFirst(tally);
    Settings settings = Settings.of(List.copyOf(byFirst.keySet()), factors, names);
    List<TalliedRow> rows = new ArrayList<>();
    settings
        .cells()
        .forEach(
            (levels, lines) ->
                rows.add(
                    TalliedRow.of(levels, lines.stream().map(byFirst::get).toList(), stretches)));
    return new TalliedComparison(
        settings.telling(),
        rows,
        TalliedRow.of(List.of(), tally.settings(), stretches),
        tally.setAside());
  }

  static Map<ResultLine, SettingTally> byFirst(LineTally tally) {
    Map<ResultLine, SettingTally> byFirst = new LinkedHashMap<>();
    tally.settings().forEach(each -> byFirst.put(each.first(), each));
    return byFirst;
  }

  public int pieces() {
    return all.pieces();
  }

  /** How many students sewed them. */
  public int students() {
    return all.students();
  }
}
