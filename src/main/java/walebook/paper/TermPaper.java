package walebook.paper;

import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.drawing.Drawing;
import walebook.working.Verdict;

/**
 * A student's record of a term.
 *
 * @param lines what is known of student, class and term, a line each
 * @param lessons what was logged of each lesson's plan, a sentence each
 * @param pieces in the order they were sewn
 */
public record TermPaper(String who, List<String> lines, List<String> lessons, List<Piece> pieces) {
  public TermPaper {
    lines = List.copyOf(lines);
    lessons = List.copyOf(lessons);
    pieces = List.copyOf(pieces);
  }

  /**
   * A piece in the record.
   *
   * @param ended how the pull ended, with its length
   * @param stretch the seam's, as shown; empty when it was not pulled
   * @param grade 1 to 5, empty when not given
   * @param says the verdict's sentence
   * @param seen faults and remark, empty when there are none
   * @param drawing the gauge to scale; null when nothing was measured
   * @param photos as files' bytes, JPEG or PNG
   */
  public record Piece(
      String code,
      String sewnOn,
      String cloth,
      String settings,
      String ended,
      String stretch,
      String grade,
      Verdict verdict,
      String says,
      String seen,
      @Nullable Drawing drawing,
      List<Photo> photos) {
    public Piece {
      photos = List.copyOf(photos);
    }
  }

  /** Reads a photo when its page is drawn, so that a term's photos are never all in memory. */
  @FunctionalInterface
  public interface Photo {
    byte[] bytes();
  }
}
