package walebook.seam;

import java.util.Objects;

/**
 * The next piece to sew against a fault: the same again with this one change.
 *
 * @param remedy what to try
 * @param from what its factor is set to now; empty when that is not known or nothing is set
 * @param to what it is to be set to; empty when the person who sews decides
 * @param withWidth the width in mm that a stitch begins with where the one before had none; empty
 *     otherwise
 */
public record NextTry(Remedy remedy, String from, String to, String withWidth) {
  public NextTry {
    Objects.requireNonNull(remedy, "remedy");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(withWidth, "withWidth");
  }
}
