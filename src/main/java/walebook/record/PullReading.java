package walebook.record;

/**
 * One pull along a seam.
 *
 * @param nth counted from 1
 * @param endMm the gauge's length when the seam gave, or up to which it held
 */
public record PullReading(int nth, SeamEnd end, double endMm) {
  public PullReading {
    Check.within("nth", nth, 1, 9);
    Check.positive("endMm", endMm);
  }
}
