package walebook.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import walebook.statistics.BlockTask;

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
   * What a class is planned by.
   *
   * @param readings how many pulls each piece is read with
   */
  public record Ask(PiecesPlan plan, int readings, ClassToPlan room) {}

  /** The plan for a class that has everything and leaves nothing out. */
  public static List<PieceToSew> plan(
      PiecesPlan plan,
      int readings,
      List<PlanStudent> students,
      Map<String, UUID> cloths,
      long seed) {
    return plan(new Ask(plan, readings, new ClassToPlan(students, cloths, seed)));
  }

  /** The pieces of a class, student by student in the order given, each in sewing order. */
  public static List<PieceToSew> plan(Ask ask) {
    PlanTable table = new PlanTable(ask.plan(), ask.room().students(), ask.room().leftOut());
    PlanPieces made = new PlanPieces(ask.readings(), ask.room().cloths());
    List<List<Integer>> taken = allot(ask, table);
    for (int i = 0; i < ask.room().students().size(); i++) {
      UUID student = ask.room().students().get(i).id();
      made.add(student, 1, ask.plan().controlCell());
      int place = 2;
      for (int cell : taken.get(i)) {
        made.add(student, place++, table.cell(cell));
      }
    }
    return List.copyOf(made.pieces);
  }

  /** How many combinations there are that somebody of those asked for can sew. */
  public static int possible(Ask ask) {
    return new PlanTable(ask.plan(), ask.room().students(), ask.room().leftOut()).size();
  }

  private static List<List<Integer>> allot(Ask ask, PlanTable table) {
    List<BlockTask.Share> shares =
        ask.room().students().stream()
            .map(
                each ->
                    new BlockTask.Share(
                        List.of(), each.share(ask.plan().tiers()), table.barred(each)))
            .toList();
    return ShareOut.first(table.size(), shares, table.likeness(), ask.room().seed());
  }

  /** One piece as its student is asked for it. */
  static PieceToSew piece(Ask ask, UUID student, int place, PiecesPlan.Cell cell) {
    PlanPieces made = new PlanPieces(ask.readings(), ask.room().cloths());
    made.add(student, place, cell);
    return made.pieces.get(0);
  }

  private void add(UUID student, int place, PiecesPlan.Cell cell) {
    String slot = Objects.requireNonNull(cell.settings().get(SettingKey.CLOTH), "cloth");
    boolean control = cell.label().equals(CONTROL);
    pieces.add(
        new PieceToSew(
            student,
            place,
            control,
            cell.label(),
            cell.settings().asked(readings),
            slot,
            cloths.get(slot)));
  }
}
