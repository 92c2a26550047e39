package walebook.desk.common;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What one place asks of another.
 *
 * @param place key of the place that is to do it
 * @param what to be done, a word that the place knows
 * @param id of the row that it is about
 */
public record Wish(String place, What what, @Nullable UUID id) {

  /** What can be asked for. */
  public enum What {
    /** Only show the place. */
    SHOW,
    /** Show one row: a piece, a cloth, a lesson. */
    OPEN,
    /** Log the planned piece, or at the cloths make the planned reading, with this key. */
    LOG_PLANNED,
    /** Log a piece without a plan. */
    LOG_OWN,
    /** Sew the piece with this key again with one change. */
    AGAIN,
    /** Look the piece with this key over, for the assessor. */
    LOOK_OVER
  }

  public static Wish show(String place) {
    return new Wish(place, What.SHOW, null);
  }
}
