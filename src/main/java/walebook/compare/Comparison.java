package walebook.compare;

import java.util.List;

/**
 * A class's pieces by setting.
 *
 * @param factors what they are told apart by, in order; each has more than one level
 * @param same factors of the question that have the same level in all pieces
 * @param rows one for each combination that was sewn, in the order of its levels
 * @param pieces how many pieces went in
 * @param students how many students sewed them
 * @param cloths on how many cloths they lie
 * @param setAside how many values the tutor set aside and that are left out
 */
public record Comparison(
    List<Factor> factors,
    List<FixedLevel> same,
    List<SettingRow> rows,
    int pieces,
    int students,
    int cloths,
    int setAside) {

  /** A factor whose level is the same in all pieces. */
  public record FixedLevel(Factor factor, String level) {}

  public Comparison {
    factors = List.copyOf(factors);
    same = List.copyOf(same);
    rows = List.copyOf(rows);
  }

  /** The same, saying how many values were left out. */
  Comparison leavingOut(int values) {
    return new Comparison(factors, same, rows, pieces, students, cloths, values);
  }

  /** True when a setting's pieces lie on several cloths, so that cloth and setting stand as one. */
  public boolean mixesCloths() {
    return cloths > 1 && !factors.contains(Factor.CLOTH);
  }

  public boolean isEmpty() {
    return pieces == 0;
  }
}
