package walebook.paper;

import java.util.List;
import walebook.drawing.Drawing;
import walebook.working.Verdict;

/**
 * A garment's answers for the sewing table.
 *
 * @param lines cloth, direction, stitch, pattern, a line each
 * @param verdict the worst of the answers
 * @param reckonedOnly whether what is met rests on reckoning alone
 * @param advice what to do, in order
 * @param drawings to scale
 * @param girths what is said of the body: its girths, or that they are kept back
 */
public record GarmentPaper(
    String name,
    List<String> lines,
    Verdict verdict,
    boolean reckonedOnly,
    List<String> advice,
    List<Line> answers,
    List<Drawing> drawings,
    List<String> cautions,
    String girths) {
  public GarmentPaper {
    lines = List.copyOf(lines);
    advice = List.copyOf(advice);
    answers = List.copyOf(answers);
    drawings = List.copyOf(drawings);
    cautions = List.copyOf(cautions);
  }

  /**
   * One answer.
   *
   * @param reckonedOnly whether what is met rests on reckoning alone
   * @param weakest the weakest link and what it rests on; empty when there is none
   * @param working how it was worked, short; empty when it would tell a girth that is private
   */
  public record Line(
      Verdict verdict,
      boolean reckonedOnly,
      String about,
      String says,
      String weakest,
      List<String> working) {
    public Line {
      working = List.copyOf(working);
    }
  }
}
