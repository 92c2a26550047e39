package walebook.paper;

import java.util.List;

/**
 * Who sews or measures what.
 *
 * @param question what the class wants to find out; empty when the pack is not at hand
 * @param students in the order of the class's list
 */
public record PlanPaper(String title, String when, String question, List<Part> students) {

  /** One student's pieces and cloths in their order. */
  public record Part(String who, List<Piece> pieces) {
    public Part {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * A piece to sew, or a cloth to measure.
   *
   * @param code of its label; empty for a cloth to measure
   * @param settings what is set, or which way it is measured and how often
   * @param done how far it is, in words; empty while nothing is done
   */
  public record Piece(String code, String cloth, String settings, boolean control, String done) {}

  public PlanPaper {
    students = List.copyOf(students);
  }

  /** Whether there is any piece with a label. */
  boolean hasCodes() {
    return students.stream()
        .flatMap(each -> each.pieces().stream())
        .anyMatch(each -> !each.code().isEmpty());
  }
}
