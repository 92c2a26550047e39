package walebook.paper;

import java.util.List;

/**
 * Who sews what.
 *
 * @param question what the class wants to find out; empty when the pack is not at hand
 * @param students in the order of the class's list
 */
public record PlanPaper(String title, String when, String question, List<Part> students) {

  /** One student's pieces in their order. */
  public record Part(String who, List<Piece> pieces) {
    public Part {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * A piece to sew.
   *
   * @param done whether it is logged already
   */
  public record Piece(String code, String cloth, String settings, boolean control, boolean done) {}

  public PlanPaper {
    students = List.copyOf(students);
  }
}
