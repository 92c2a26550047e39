package walebook.desk.pieces;

import java.util.List;
import java.util.UUID;
import walebook.record.PhotoInfo;
import walebook.working.Verdict;

/**
 * One piece with all that is known of it, in words.
 *
 * @param code as spoken
 * @param who sewed it, in which lesson and when
 * @param chain attempts from the first to the last; one alone when it was not sewn again
 * @param timeline what happened to it, oldest first: when and who, then what
 */
public record WholePiece(
    UUID id,
    String code,
    String who,
    List<Line> settings,
    List<Line> measures,
    List<Line> seen,
    Meaning meaning,
    List<CauseCard> causes,
    List<Attempt> chain,
    List<PhotoInfo> photos,
    List<Line> timeline) {

  /** A label and what stands beside it. */
  public record Line(String label, String value) {}

  /**
   * One attempt of a chain.
   *
   * @param change what was changed against the attempt before; empty for the first
   * @param shown whether it is the piece that is shown
   */
  public record Attempt(
      UUID id,
      String code,
      String change,
      String stitch,
      String end,
      Verdict verdict,
      boolean shown) {}

  public WholePiece {
    settings = List.copyOf(settings);
    measures = List.copyOf(measures);
    seen = List.copyOf(seen);
    causes = List.copyOf(causes);
    chain = List.copyOf(chain);
    photos = List.copyOf(photos);
    timeline = List.copyOf(timeline);
  }
}
