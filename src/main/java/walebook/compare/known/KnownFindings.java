package walebook.compare.known;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import walebook.compare.FairFindings;
import walebook.quantity.Show;
import walebook.record.Grain;
import walebook.working.Message;

/** What is known so far, in plain words. */
public final class KnownFindings {
  private KnownFindings() {}

  /**
   * The cloth first, then what all classes together found.
   *
   * @param label a setting's levels as people read them
   * @param grain a grain as people read it
   */
  public static List<Message> of(
      KnownSoFar known, Function<List<String>, String> label, Function<Grain, String> grain) {
    List<Message> says = new ArrayList<>();
    for (Grain each : Grain.values()) {
      var stretch = known.stretches().get(each);
      if (stretch != null) {
        says.add(
            Message.of(
                "compare.known.stretch",
                grain.apply(each),
                Show.fixed(stretch.percent(), 1),
                String.valueOf(stretch.n()),
                Show.fixed(stretch.uncertainty(), 1)));
      }
    }
    long counting = known.classes().stream().filter(each -> each.pieces() > 0).count();
    says.add(
        Message.of(
            "compare.known.classes",
            String.valueOf(known.classes().size()),
            String.valueOf(counting)));
    says.addAll(FairFindings.of(known.together(), label));
    return List.copyOf(says);
  }
}
