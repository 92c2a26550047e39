package walebook.record;

import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A machine in the room with its card.
 *
 * @param number stuck on the machine
 * @param stitches ISO 4915 numbers of what it can sew
 * @param needleToKnifeMm from the left needle to the knife; overlockers only
 * @param pressure what the presser-foot dial reads at lower, normal, higher
 * @param tension the same for the needle thread's tension
 * @param feedLeast smallest differential feed, null where there is none
 * @param feedMost largest differential feed
 * @param dials what dial settings sew, as measured
 */
public record Machine(
    UUID id,
    int number,
    String name,
    MachineKind kind,
    List<String> stitches,
    @Nullable Double needleToKnifeMm,
    StepDial pressure,
    StepDial tension,
    @Nullable Double feedLeast,
    @Nullable Double feedMost,
    List<DialReading> dials,
    String remark,
    boolean retired,
    Stamp stamp) {

  public Machine {
    Check.within("number", number, 1, 999);
    Check.positive("needleToKnifeMm", needleToKnifeMm);
    Check.positive("feedLeast", feedLeast);
    Check.positive("feedMost", feedMost);
    stitches = List.copyOf(stitches);
    dials = List.copyOf(dials);
  }

  /** Number and kind in one word for lists, such as {@code 4 overlocker}. */
  public String label() {
    return name.isBlank() ? String.valueOf(number) : number + " · " + name;
  }

  /** Whether the card was measured on both sides of a dial setting, or just there. */
  public boolean reaches(Dial what, double dial) {
    return dials.stream().anyMatch(each -> each.what() == what && each.dial() <= dial)
        && dials.stream().anyMatch(each -> each.what() == what && each.dial() >= dial);
  }

  /**
   * What a dial setting really sews, between the readings of the card on a straight line, beyond
   * them by the nearest one's ratio.
   *
   * @return mm, or null when the card has no reading of that dial
   */
  public @Nullable Double sewn(Dial what, double dial) {
    List<DialReading> card =
        dials.stream()
            .filter(each -> each.what() == what)
            .sorted(Comparator.comparingDouble(DialReading::dial))
            .toList();
    if (card.isEmpty()) {
      return null;
    }
    DialReading below = null;
    for (DialReading each : card) {
      if (each.dial() == dial) {
        return each.sewnMm();
      }
      if (each.dial() > dial) {
        return below == null ? each.scaled(dial) : below.towards(each, dial);
      }
      below = each;
    }
    return below == null ? null : below.scaled(dial);
  }
}
