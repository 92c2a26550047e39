package walebook.compare.assessed;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import walebook.record.Criterion;
import walebook.record.Student;
import walebook.working.Message;

/**
 * Students against criteria.
 *
 * @param criteria in the course's order
 * @param rows one for each student
 */
public record Coverage(List<Criterion> criteria, List<Row> rows) {

  /**
   * One student.
   *
   * @param cells in the order of the criteria
   */
  public record Row(Student student, List<Cell> cells) {
    public Row {
      cells = List.copyOf(cells);
    }

    /** How many criteria are covered. */
    public int covered() {
      return (int) cells.stream().filter(each -> each.standing().isCovered()).count();
    }
  }

  /**
   * One student and one criterion.
   *
   * @param standing that of the best piece
   * @param evidence how many pieces speak for it
   * @param passed how many of them pass, whole or in reasoning
   */
  public record Cell(Standing standing, int evidence, int passed) {

    /** In few words: how it stands and by how many pieces. */
    public Message says() {
      return switch (standing) {
        case NOTHING -> Message.of("compare.assessed.nothing");
        case BELOW -> Message.of("compare.assessed.below", String.valueOf(evidence));
        case UNCHECKED -> Message.of("compare.assessed.unchecked", String.valueOf(evidence));
        case REASONED ->
            Message.of(
                "compare.assessed.reasoned", String.valueOf(passed), String.valueOf(evidence));
        case MET ->
            Message.of("compare.assessed.met", String.valueOf(passed), String.valueOf(evidence));
      };
    }
  }

  /** A criterion that a student has not covered. */
  public record Gap(Student student, Criterion criterion, Cell cell) {}

  public Coverage {
    criteria = List.copyOf(criteria);
    rows = List.copyOf(rows);
  }

  /** Works it out from the pieces of those students. */
  public static Coverage of(
      List<Criterion> criteria, List<Student> students, List<AssessedPiece> pieces) {
    List<Row> rows = new ArrayList<>();
    for (Student student : students) {
      List<AssessedPiece> own =
          pieces.stream().filter(each -> each.studentId().equals(student.id())).toList();
      rows.add(new Row(student, criteria.stream().map(each -> cell(each, own)).toList()));
    }
    return new Coverage(criteria, rows);
  }

  private static Cell cell(Criterion criterion, List<AssessedPiece> own) {
    List<Standing> standings =
        own.stream()
            .filter(each -> each.criteria().contains(criterion.id()))
            .map(each -> each.standing(criterion))
            .toList();
    Standing best = standings.stream().max(Comparator.naturalOrder()).orElse(Standing.NOTHING);
    int passed = (int) standings.stream().filter(Standing::isCovered).count();
    return new Cell(best, standings.size(), passed);
  }

  /** What is missing for whom: by student, then in the course's order. */
  public List<Gap> missing() {
    List<Gap> gaps = new ArrayList<>();
    for (Row row : rows) {
      for (int i = 0; i < criteria.size(); i++) {
        if (!row.cells().get(i).standing().isCovered()) {
          gaps.add(new Gap(row.student(), criteria.get(i), row.cells().get(i)));
        }
      }
    }
    return gaps;
  }

  /** How many pairs of a student and a criterion are covered. */
  public int covered() {
    return rows.stream().mapToInt(Row::covered).sum();
  }
}
