package walebook.paper;

import java.util.List;

/**
 * A mark sheet: pieces with the student's marks beside the tutor's, and what is covered.
 *
 * @param lines the class, the term, the tutor
 * @param markings what is marked, in order
 * @param students in the order of the class's list
 * @param criteria what the course asks for, in its order
 * @param tally how many records there are and the last change of one
 */
public record MarkPaper(
    String title,
    List<String> lines,
    List<String> markings,
    List<Part> students,
    List<Asked> criteria,
    List<Covered> coverage,
    String tally) {

  /**
   * One student's pieces.
   *
   * @param pieces those that anybody looked over
   * @param others codes of those that speak for a criterion and that nobody looked over yet
   */
  public record Part(String who, List<Row> pieces, List<String> others) {
    public Part {
      pieces = List.copyOf(pieces);
      others = List.copyOf(others);
    }
  }

  /**
   * A piece.
   *
   * @param marks the student's and the tutor's, in the order of the markings
   * @param help as the student said and as the tutor said
   */
  public record Row(
      String code,
      String sewnOn,
      String lesson,
      String criteria,
      List<String> marks,
      String help,
      String result) {
    public Row {
      marks = List.copyOf(marks);
    }
  }

  /** A criterion. */
  public record Asked(String code, String says) {}

  /**
   * A student's coverage.
   *
   * @param cells in the order of the criteria
   */
  public record Covered(String who, List<String> cells) {
    public Covered {
      cells = List.copyOf(cells);
    }
  }

  public MarkPaper {
    lines = List.copyOf(lines);
    markings = List.copyOf(markings);
    students = List.copyOf(students);
    criteria = List.copyOf(criteria);
    coverage = List.copyOf(coverage);
  }
}
