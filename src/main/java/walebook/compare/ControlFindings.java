package walebook.compare;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import walebook.statistics.Interval;
import walebook.working.Message;

/** What differences from one's own control say: dots, n, range and a sentence, no p-values. */
public final class ControlFindings {
  private final FromControl found;
  private final Wording wording;
  private final double confidence;

  /** What can be said of a setting against the own controls. */
  public enum Side {
    ABOVE,
    BELOW,
    /** The limits reach across nought. */
    EITHER,
    TOO_FEW,
    /** Enough students, but all of them differ by the same. */
    NO_SCATTER,
    SOME_HELD,
    ONLY_HELD
  }

  /**
   * Sets it up.
   *
   * @param label a setting's levels as people read them
   * @param confidence of what is said, all settings together
   */
  public ControlFindings(
      FromControl found, Function<List<String>, String> label, double confidence) {
    this.found = found;
    this.wording = new Wording(found.outcome(), label);
    this.confidence = 1 - (1 - confidence) / Math.max(1, found.rows().size());
  }

  /** All sentences: of all settings together, then of each. */
  public List<Message> all() {
    List<Message> says = new ArrayList<>(together());
    found.rows().forEach(row -> says.add(row(row)));
    return List.copyOf(says);
  }

  /** What counts and what does not, how many settings differ, and whether machines do. */
  public List<Message> together() {
    List<Message> says = new ArrayList<>();
    FromControl.Counted counted = found.counted();
    if (found.own().isEmpty()) {
      says.add(Message.of("compare.control.none"));
    }
    if (!found.rows().isEmpty()) {
      says.add(tally());
    }
    if (counted.logged() > 0) {
      says.add(
          Message.of(
              "compare.control.counted",
              Wording.count(counted.read()),
              Wording.count(counted.logged())));
    }
    says.addAll(wording.leftOut(counted.setAside(), counted.noValue(), counted.noStretch()));
    if (counted.controls() > 0) {
      says.add(Message.of("compare.control.controls", Wording.count(counted.controls())));
    }
    if (counted.noControl() > 0) {
      says.add(
          Message.of(
              "compare.control.without",
              Wording.count(counted.noControl()),
              Wording.names(found.without())));
    }
    if (found.ways() > 1) {
      says.add(Message.of("compare.control.mixed", Wording.count(found.ways())));
    }
    if (found.machines().rows().size() > 1) {
      boolean machines = found.machines().pairs().stream().anyMatch(FairPair::isSure);
      says.add(
          machines
              ? Message.of("compare.control.machines-differ")
              : Message.of("compare.control.machines-not-told"));
    }
    return List.copyOf(says);
  }

  private Message tally() {
    Map<Side, Integer> sides = new EnumMap<>(Side.class);
    found.rows().forEach(row -> sides.merge(side(row), 1, Integer::sum));
    int above = sides.getOrDefault(Side.ABOVE, 0);
    int below = sides.getOrDefault(Side.BELOW, 0);
    return Message.of(
        "compare.control.tally",
        Wording.count(found.rows().size()),
        Wording.count(above),
        Wording.count(below),
        Wording.count(found.rows().size() - above - below));
  }

  /** What can be said of one setting, all settings together. */
  public Side side(FromControl.Row row) {
    if (row.bounds() > 0) {
      return row.bounds() == row.apart().size() ? Side.ONLY_HELD : Side.SOME_HELD;
    }
    Interval interval = interval(row);
    if (interval == null) {
      return row.isEnough() ? Side.NO_SCATTER : Side.TOO_FEW;
    }
    if (interval.low() > 0) {
      return Side.ABOVE;
    }
    return interval.high() < 0 ? Side.BELOW : Side.EITHER;
  }

  /** Where the mean over students may lie, so that the limits of all settings hold together. */
  public @Nullable Interval interval(FromControl.Row row) {
    return row.interval(confidence);
  }

  /** One setting in a sentence. */
  public Message row(FromControl.Row row) {
    Interval interval = interval(row);
    int pieces = row.apart().size();
    String low = interval == null ? "–" : wording.apart(interval.low());
    String high = interval == null ? "–" : wording.apart(interval.high());
    String[] numbers = {
      wording.setting(row.levels()),
      Wording.count(pieces),
      Wording.count(row.students()),
      wording.apart(row.apart().get(0).difference()),
      wording.apart(row.apart().get(pieces - 1).difference()),
      wording.unit(),
      low,
      high,
      Wording.count(row.bounds())
    };
    return switch (side(row)) {
      case ABOVE -> Message.of("compare.control.above", numbers);
      case BELOW -> Message.of("compare.control.below", numbers);
      case EITHER -> Message.of("compare.control.either", numbers);
      case TOO_FEW ->
          pieces == 1
              ? Message.of("compare.control.one", numbers)
              : Message.of("compare.control.too-few", numbers);
      case NO_SCATTER -> Message.of("compare.control.no-scatter", numbers);
      case SOME_HELD -> Message.of("compare.control.some-held", numbers);
      case ONLY_HELD ->
          pieces == 1
              ? Message.of("compare.control.one-held", numbers)
              : Message.of("compare.control.only-held", numbers);
    };
  }
}
