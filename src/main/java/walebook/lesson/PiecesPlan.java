package walebook.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A plan of test pieces: fixed settings, factors whose levels change, and a control that everybody
 * sews.
 *
 * @param control what differs from the fixed settings on the control piece
 */
public record PiecesPlan(
    String question,
    List<ClothSlot> cloths,
    Settings fixed,
    Settings control,
    List<Factor> factors,
    Tiers tiers)
    implements Plan {
  public static final String KIND = "pieces";

  public PiecesPlan {
    cloths = List.copyOf(cloths);
    factors = List.copyOf(factors);
  }

  /** A setting that the plan changes on purpose, and the values it takes. */
  public record Factor(SettingKey key, String says, List<String> levels) {
    public Factor {
      levels = List.copyOf(levels);
    }
  }

  /**
   * One combination of levels.
   *
   * @param label such as {@code cloth=a width=2 length=1.5}, factors in the plan's order
   * @param levels those of its label, each such as {@code width=2}; a level may hold blanks
   * @param settings everything about it, fixed ones included
   */
  public record Cell(String label, List<String> levels, Settings settings) {
    public Cell {
      levels = List.copyOf(levels);
    }
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public int cellCount() {
    return factors.stream().mapToInt(each -> each.levels().size()).reduce(1, Math::multiplyExact);
  }

  /** Every combination, the last factor changing fastest. */
  public List<Cell> cells() {
    List<Cell> cells = List.of(new Cell("", List.of(), fixed));
    for (Factor factor : factors) {
      List<Cell> longer = new ArrayList<>();
      for (Cell cell : cells) {
        for (String level : factor.levels()) {
          longer.add(with(cell, factor.key(), level));
        }
      }
      cells = longer;
    }
    return List.copyOf(cells);
  }

  /** Every level of every factor, each such as {@code width=2}. */
  @Override
  public List<String> levels() {
    return factors.stream()
        .flatMap(each -> each.levels().stream().map(level -> named(each.key(), level)))
        .toList();
  }

  private static String named(SettingKey key, String level) {
    return key.key() + "=" + level;
  }

  /** The control piece's settings, fixed ones included. */
  public Settings controlSettings() {
    return control.over(fixed);
  }

  /** The slot of the plan's cloth that a combination is sewn on. */
  public String slotOf(Cell cell) {
    return Objects.requireNonNull(cell.settings().get(SettingKey.CLOTH), "cloth");
  }

  /** The slot of the plan's cloth that the control piece is sewn on. */
  public String controlSlot() {
    return slotOf(controlCell());
  }

  /** The control piece as a combination of its own, called {@link PlanPieces#CONTROL}. */
  Cell controlCell() {
    return new Cell(PlanPieces.CONTROL, List.of(), controlSettings());
  }

  private static Cell with(Cell cell, SettingKey key, String level) {
    List<String> levels = new ArrayList<>(cell.levels());
    levels.add(named(key, level));
    Settings settings = new Settings(Map.of(key, level)).over(cell.settings());
    return new Cell(String.join(" ", levels), levels, settings);
  }
}
