package walebook.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.IntBinaryOperator;
import walebook.record.Keyed;
import walebook.record.MachineKind;

/** The combinations of a plan that somebody in the class can sew, and who can't sew which. */
final class PlanTable {
  private final List<PiecesPlan.Cell> cells = new ArrayList<>();
  private final List<Set<String>> levels = new ArrayList<>();

  /**
   * The plan's combinations without those left out and those that no student can sew.
   *
   * @param leftOut levels or several joined by blanks, such as {@code width=3} or {@code cloth=b
   *     width=3}; every combination that has them all is left out
   */
  PlanTable(PiecesPlan plan, List<PlanStudent> students, List<String> leftOut) {
    List<Set<String>> without =
        leftOut.stream()
            .map(each -> Set.copyOf(plan.levelsIn(each)))
            .filter(each -> !each.isEmpty())
            .toList();
    for (PiecesPlan.Cell cell : plan.cells()) {
      Set<String> own = Set.copyOf(cell.levels());
      boolean wanted = without.stream().noneMatch(own::containsAll);
      boolean possible =
          students.isEmpty() || students.stream().anyMatch(each -> canSew(each, cell));
      if (wanted && possible) {
        cells.add(cell);
        levels.add(own);
      }
    }
  }

  static boolean canSew(PlanStudent student, PiecesPlan.Cell cell) {
    String machine = need(cell, SettingKey.MACHINE);
    return !student.withoutMachines().contains(Keyed.of(MachineKind.class, machine))
        && !student.withoutCloths().contains(need(cell, SettingKey.CLOTH));
  }

  private static String need(PiecesPlan.Cell cell, SettingKey key) {
    return Objects.requireNonNull(cell.settings().get(key), key.key());
  }

  int size() {
    return cells.size();
  }

  PiecesPlan.Cell cell(int number) {
    return cells.get(number);
  }

  /** What the combinations are called, in their order. */
  List<String> labels() {
    return cells.stream().map(PiecesPlan.Cell::label).toList();
  }

  /** The combinations a student can't sew. */
  List<Integer> barred(PlanStudent student) {
    List<Integer> barred = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      if (!canSew(student, cells.get(i))) {
        barred.add(i);
      }
    }
    return barred;
  }

  /** How many levels two combinations have in common. */
  IntBinaryOperator likeness() {
    int[][] common = new int[cells.size()][cells.size()];
    for (int i = 0; i < cells.size(); i++) {
      for (int j = 0; j < cells.size(); j++) {
        common[i][j] = (int) levels.get(i).stream().filter(levels.get(j)::contains).count();
      }
    }
    return (one, other) -> common[one][other];
  }
}
