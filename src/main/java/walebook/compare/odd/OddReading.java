package walebook.compare.odd;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.UUID;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import walebook.record.Mark;
import walebook.record.MarkedValue;
import walebook.record.ValueMark;
import walebook.statistics.Robust;

/**
 * A value that deserves a second look.
 *
 * @param targetId the piece, or the reading where the value is a cloth's
 * @param code the piece's code; empty for a reading
 * @param about what it is a value of: the piece's setting or the reading's cloth, in plain names
 * @param who who sewed or read it
 * @param number the value: percent, or a grade
 * @param median the middle of those it is compared with; null when flagged by a limit alone
 * @param among how many it is compared with
 * @param mostly where most of those lie, the odd ones not among them; null when not told
 * @param z robust standard deviations from that middle; null when not told
 * @param reasons why, at least one
 * @param mark what the tutor made of it; null when not looked at yet
 */
public record OddReading(
    MarkedValue value,
    UUID targetId,
    String code,
    List<String> about,
    String who,
    double number,
    @Nullable Double median,
    int among,
    @Nullable Mostly mostly,
    @Nullable Double z,
    List<Reason> reasons,
    @Nullable ValueMark mark) {

  /** From where to where most values lie: at least half of them, never one that is odd. */
  public record Mostly(double least, double greatest) {
    private static final double USUAL_SPREADS = 2;

    /** Of values whose robust scale is known; the median is among them or lies between two. */
    static Mostly of(Robust robust, DoubleStream values) {
      return of(robust.median(), robust.scale(), values);
    }

    static Mostly of(double middle, double scale, DoubleStream values) {
      DoubleSummaryStatistics near =
          values
              .filter(each -> Math.abs(each - middle) <= USUAL_SPREADS * scale)
              .summaryStatistics();
      return new Mostly(near.getMin(), near.getMax());
    }
  }

  /** Why a value is odd. */
  public enum Reason {
    /** Far from the middle of its like, by median and MAD. */
    FAR_FROM_MIDDLE,
    /** Far from what pieces that differ in how the machine was set lead one to expect. */
    FAR_FROM_EXPECTED,
    /** Far from its like, and no odd one among readings of its cloth along another grain. */
    AS_OTHER_GRAIN,
    /** Beyond what can be expected of any piece or cloth. */
    BEYOND_LIMIT,
    /** Its reader's mean is too far off the room's: h. */
    READER_OFF,
    /** Its reader's own readings scatter too much, this one the most: k. */
    READER_SCATTERS
  }

  /** Looked at, as it stands: the mark of a number put right was for the one it had before. */
  public boolean isLookedAt() {
    return mark != null && mark.mark() != Mark.MISTYPED;
  }

  public OddReading {
    about = List.copyOf(about);
    reasons = List.copyOf(reasons);
    if (reasons.isEmpty()) {
      throw new IllegalArgumentException("an odd value has a reason");
    }
  }
}
