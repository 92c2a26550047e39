package walebook.compare.odd;

import static walebook.compare.odd.OddReading.Reason.FAR_FROM_EXPECTED;
import static walebook.compare.odd.OddReading.Reason.FAR_FROM_MIDDLE;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.record.MarkedValue;
import walebook.statistics.Robust;
import walebook.working.Message;

/** Why a value is odd, in plain words. */
public final class OddFindings {
  private OddFindings() {}

  /** One sentence for each reason. */
  public static List<Message> of(OddReading odd) {
    List<Message> says = new ArrayList<>();
    for (OddReading.Reason reason : odd.reasons()) {
      says.add(
          switch (reason) {
            case FAR_FROM_MIDDLE -> far(odd);
            case FAR_FROM_EXPECTED -> expected(odd);
            case AS_OTHER_GRAIN ->
                Message.of("compare.odd.other-grain", shown(odd.value(), odd.number()));
            case BEYOND_LIMIT -> Message.of("compare.odd.limit", shown(odd.value(), odd.number()));
            case READER_OFF -> Message.of("compare.odd.reader-off", odd.who());
            case READER_SCATTERS -> Message.of("compare.odd.reader-scatters", odd.who());
          });
    }
    return List.copyOf(says);
  }

  /** The rule by which a value is far from its like, in figures; null when none was applied. */
  public static @Nullable Message rule(OddReading odd) {
    Double z = odd.z();
    Double median = odd.median();
    if (z == null || median == null) {
      return null;
    }
    if (odd.reasons().contains(FAR_FROM_EXPECTED)) {
      return Message.of(
          "compare.odd.rule-expected",
          Show.fixed(Math.abs(z), 1),
          shown(odd.value(), median),
          String.valueOf(odd.among()),
          Show.fixed(Robust.ODD, 1));
    }
    if (!odd.reasons().contains(FAR_FROM_MIDDLE)) {
      return null;
    }
    return Message.of(
        "compare.odd.rule",
        Show.fixed(Math.abs(z), 1),
        shown(odd.value(), median),
        String.valueOf(odd.among()),
        Show.fixed(Robust.ODD, 1));
  }

  private static Message expected(OddReading odd) {
    OddReading.Mostly mostly = odd.mostly();
    String number = shown(odd.value(), odd.number());
    return mostly == null
        ? Message.of("compare.odd.limit", number)
        : Message.of(
            "compare.odd.far-expected",
            number,
            figure(odd.value(), mostly.least()),
            shown(odd.value(), mostly.greatest()));
  }

  private static Message far(OddReading odd) {
    OddReading.Mostly mostly = odd.mostly();
    String number = shown(odd.value(), odd.number());
    if (mostly == null) {
      return Message.of("compare.odd.limit", number);
    }
    String greatest = shown(odd.value(), mostly.greatest());
    return mostly.least() == mostly.greatest()
        ? Message.of("compare.odd.far-from-one", number, greatest)
        : Message.of("compare.odd.far", number, figure(odd.value(), mostly.least()), greatest);
  }

  private static String shown(MarkedValue value, double number) {
    return value == MarkedValue.GRADE ? figure(value, number) : figure(value, number) + " %";
  }

  private static String figure(MarkedValue value, double number) {
    return value == MarkedValue.GRADE ? Show.upTo(number, 1) : Show.fixed(number, 1);
  }
}
