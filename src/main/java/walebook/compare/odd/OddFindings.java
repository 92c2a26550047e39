package walebook.compare.odd;

import java.util.ArrayList;
import java.util.List;
import walebook.quantity.Show;
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
            case FAR_FROM_MIDDLE ->
                Message.of(
                    "compare.odd.far",
                    number(odd.number()),
                    odd.median() == null ? "–" : number(odd.median()),
                    String.valueOf(odd.among()),
                    odd.z() == null ? "–" : Show.fixed(Math.abs(odd.z()), 1));
            case BEYOND_LIMIT -> Message.of("compare.odd.limit", number(odd.number()));
            case READER_OFF -> Message.of("compare.odd.reader-off", odd.who());
            case READER_SCATTERS -> Message.of("compare.odd.reader-scatters", odd.who());
          });
    }
    return List.copyOf(says);
  }

  private static String number(double value) {
    return Show.fixed(value, 1);
  }
}
