package walebook.compare.assessed;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
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
    private static final Cell NONE = new Cell(Standing.NOTHING, 0, 0);

    private Cell and(Cell more) {
      return new Cell(
          standing.compareTo(more.standing) < 0 ? more.standing : standing,
          evidence + more.evidence,
          passed + more.passed);
    }

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
    Count count = new Count(criteria);
    pieces.forEach(count::add);
    return count.of(students);
  }

  /** Counts pieces that are told one by one and not kept. */
  public static final class Count {
    private final List<Criterion> criteria;
    private final Map<Key, Cell> cells = new HashMap<>();

    private record Key(UUID studentId, UUID criterionId) {}

    /** Begins with none. */
    public Count(List<Criterion> criteria) {
      this.criteria = List.copyOf(criteria);
    }

    /** One more piece. */
    public void add(AssessedPiece piece) {
      for (Criterion criterion : criteria) {
        if (piece.criteria().contains(criterion.id())) {
          Standing standing = piece.standing(criterion);
          Cell one = new Cell(standing, 1, standing.isCovered() ? 1 : 0);
          cells.merge(new Key(piece.studentId(), criterion.id()), one, Cell::and);
        }
      }
    }

    /** What they cover. */
    public Coverage of(List<Student> students) {
      List<Row> rows = new ArrayList<>();
      for (Student student : students) {
        rows.add(
            new Row(
                student,
                criteria.stream()
                    .map(each -> cells.getOrDefault(new Key(student.id(), each.id()), Cell.NONE))
                    .toList()));
      }
      return new Coverage(criteria, rows);
    }
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
