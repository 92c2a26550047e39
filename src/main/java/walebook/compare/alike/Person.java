package walebook.compare.alike;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.statistics.Interval;
import walebook.statistics.Member;

/**
 * One of those who measured a cloth.
 *
 * @param who name or alias
 * @param readings each that counts
 * @param member mean, bias with interval, h and k
 * @param bias how the person reads against the room
 * @param scatter how the person's own readings agree with each other
 */
public record Person(
    UUID studentId,
    String who,
    List<ReadingDot> readings,
    Member member,
    Bias bias,
    Scatter scatter) {

  /** How a person reads against the room. */
  public enum Bias {
    /** Too far off to be chance: h beyond its critical value. */
    ODD,
    /** The interval of the bias lies wholly to one side of none. */
    OFF,
    /** No bias to be told. */
    NONE
  }

  /** How a person's own readings agree. */
  public enum Scatter {
    /** Too far apart to be chance: k beyond its critical value. */
    ODD,
    /** As the others'. */
    USUAL,
    /** Read once only. */
    UNKNOWN
  }

  public Person {
    readings = List.copyOf(readings);
  }

  static Person of(
      UUID studentId,
      String who,
      List<ReadingDot> readings,
      Member member,
      @Nullable Double criticalH) {
    return new Person(studentId, who, readings, member, bias(member, criticalH), scatter(member));
  }

  private static Bias bias(Member member, @Nullable Double criticalH) {
    Double h = member.h();
    if (h != null && criticalH != null && Math.abs(h) > criticalH) {
      return Bias.ODD;
    }
    Interval interval = member.biasInterval();
    return interval != null && !interval.contains(0) ? Bias.OFF : Bias.NONE;
  }

  private static Scatter scatter(Member member) {
    Double k = member.k();
    Double critical = member.criticalK();
    if (k == null || critical == null) {
      return Scatter.UNKNOWN;
    }
    return k > critical ? Scatter.ODD : Scatter.USUAL;
  }
}
