package walebook.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import walebook.statistics.Interval;
import walebook.statistics.Summary;
import walebook.working.Message;

/** What differences from one's own control say: dots, n, range and a sentence, no p-values. */
public final class ControlFindings {
  private ControlFindings() {}

  /**
   * The sentences.
   *
   * @param label a setting's levels as people read them
   * @param confidence of what is said, all settings together
   */
  public static List<Message> of(
      FromControl found, Function<List<String>, String> label, double confidence) {
    Wording wording = new Wording(found.outcome(), label);
    List<Message> says = new ArrayList<>();
    if (found.own().isEmpty()) {
      says.add(Message.of("compare.control.none"));
    } else {
      says.add(Message.of("compare.control.counted", Wording.count(found.own().size())));
    }
    if (found.setAside() > 0) {
      says.add(Message.of("compare.found.aside", Wording.count(found.setAside())));
    }
    if (!found.without().isEmpty()) {
      says.add(Message.of("compare.control.without", Wording.names(found.without())));
    }
    double each = 1 - (1 - confidence) / Math.max(1, found.rows().size());
    for (FromControl.Row row : found.rows()) {
      says.add(row(row, wording, each));
    }
    boolean machines = found.machines().pairs().stream().anyMatch(FairPair::isSure);
    if (found.machines().rows().size() > 1) {
      says.add(
          machines
              ? Message.of("compare.control.machines-differ")
              : Message.of("compare.control.machines-not-told"));
    }
    return List.copyOf(says);
  }

  private static Message row(FromControl.Row row, Wording wording, double confidence) {
    String name = wording.setting(row.levels());
    Summary summary = row.perStudent();
    String pieces = Wording.count(row.apart().size());
    String students = Wording.count(row.students());
    String least = wording.apart(row.apart().get(0).difference());
    String most = wording.apart(row.apart().get(row.apart().size() - 1).difference());
    if (summary == null) {
      return Message.of("compare.control.only-held", name, pieces, most, wording.unit());
    }
    Interval interval = row.interval(confidence);
    if (interval == null) {
      return Message.of(
          "compare.control.too-few", name, pieces, students, least, most, wording.unit());
    }
    String low = wording.apart(interval.low());
    String high = wording.apart(interval.high());
    if (interval.low() > 0) {
      return Message.of(
          "compare.control.above", name, pieces, students, least, most, wording.unit(), low, high);
    }
    if (interval.high() < 0) {
      return Message.of(
          "compare.control.below", name, pieces, students, least, most, wording.unit(), low, high);
    }
    return Message.of(
        "compare.control.either", name, pieces, students, least, most, wording.unit(), low, high);
  }
}
