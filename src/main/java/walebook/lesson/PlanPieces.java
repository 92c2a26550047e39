package walebook.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.UUID;
import java.util.function.IntBinaryOperator;

/**
 * Works out who sews which pieces in which order: the control first, then a fair share of cells.
 */
public final class PlanPieces {
  /** What a control piece is called where others have their levels. */
  public static final String CONTROL = "control";

  private final int readings;
  private final Map<String, UUID> cloths;
  private final List<PieceToSew> pieces = new ArrayList<>();

  private PlanPieces(int readings, Map<String, UUID> cloths) {
    this.readings = readings;
    this.cloths = cloths;
  }

  /**
   * The pieces of a class, student by student in the order given, each in sewing order.
   *
   * @param readings how many pulls each piece is read with
   * @param students no student twice
   * @param cloths the room's cloth for each slot of the plan; a slot may be left out
   * @param seed the same seed gives the same plan
   * @throws IllegalArgumentException when a student stands twice
   */
  public static List<PieceToSew> plan(
      PiecesPlan plan,
      int readings,
      List<PlanStudent> students,
      Map<String, UUID> cloths,
      long seed) {
    if (students.stream().map(PlanStudent::id).distinct().count() != students.size()) {
      throw new IllegalArgumentException("students must not hold a student twice");
    }
    PlanPieces made = new PlanPieces(readings, cloths);
    List<PiecesPlan.Cell> cells = plan.cells();
    List<Integer> shares =
        students.stream().map(each -> plan.tiers().of(each.tier()).cells()).toList();
    List<List<Integer>> taken =
        AllotCells.allot(shares, cells.size(), alike(cells), new Random(seed));
    for (int i = 0; i < students.size(); i++) {
      UUID student = students.get(i).id();
      made.add(student, 1, CONTROL, plan.controlSettings());
      int place = 2;
      for (int cell : taken.get(i)) {
        made.add(student, place++, cells.get(cell).label(), cells.get(cell).settings());
      }
    }
    return List.copyOf(made.pieces);
  }

  /** How many levels two cells have in common. */
  private static IntBinaryOperator alike(List<PiecesPlan.Cell> cells) {
    List<List<String>> levels =
        cells.stream().map(each -> List.of(each.label().split(" "))).toList();
    return (one, other) ->
        (int) levels.get(one).stream().filter(levels.get(other)::contains).count();
  }

  private void add(UUID student, int place, String cell, Settings settings) {
    String slot = Objects.requireNonNull(settings.get(SettingKey.CLOTH), "cloth");
    boolean control = cell.equals(CONTROL);
    pieces.add(
        new PieceToSew(
            student, place, control, cell, settings.asked(readings), slot, cloths.get(slot)));
  }
}
