package walebook.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.working.Message;

/** How numbers of an outcome read, and how settings are called. */
final class Wording {
  private static final int NAMES = 8;

  private final Outcome outcome;
  private final Function<List<String>, String> label;

  /**
   * Sets it up.
   *
   * @param label a setting's levels as people read them
   */
  Wording(Outcome outcome, Function<List<String>, String> label) {
    this.outcome = outcome;
    this.label = label;
  }

  String setting(List<String> levels) {
    return label.apply(levels);
  }

  String value(double value) {
    return switch (outcome) {
      case GRADE -> Show.fixed(value, 1);
      case TIME -> Show.fixed(value, 1) + " min";
      case SEAM_SHARE, SEAM_STRETCH, EDGE_CHANGE, HELD -> Show.percent(value);
    };
  }

  /** A difference: points of percent, grades, or minutes. */
  String apart(double value) {
    return Show.fixed(value, 1);
  }

  /** What a difference is counted in, as a name of the bundle. */
  String unit() {
    return Message.name(outcome.unit());
  }

  static String count(int number) {
    return String.valueOf(number);
  }

  static String percent(double share) {
    return Show.fixed(100 * share, 0);
  }

  static String names(List<String> all) {
    return all.size() <= NAMES
        ? String.join(", ", all)
        : String.join(", ", all.subList(0, NAMES)) + " …";
  }

  /**
   * Why pieces that were asked about do not count; nothing for reasons that hold for none.
   *
   * @param without pieces without a value
   * @param noStretch those of them that lack it since their cloth's stretch isn't known
   */
  List<Message> leftOut(int setAside, int without, int noStretch) {
    List<Message> says = new ArrayList<>();
    if (setAside > 0) {
      says.add(Message.of("compare.found.aside", count(setAside)));
    }
    if (without > noStretch) {
      String lacking = count(without - noStretch);
      says.add(
          switch (outcome) {
            case SEAM_SHARE, SEAM_STRETCH, HELD -> Message.of("compare.found.no-seam", lacking);
            case EDGE_CHANGE -> Message.of("compare.found.no-edge", lacking);
            case GRADE -> Message.of("compare.found.no-grade", lacking);
            case TIME -> Message.of("compare.found.no-minutes", lacking);
          });
    }
    if (noStretch > 0) {
      says.add(Message.of("compare.found.no-stretch", count(noStretch)));
    }
    return says;
  }

  /**
   * Which settings are not compared with each other.
   *
   * @param within what both of a pair share
   */
  static Message within(List<Factor> within) {
    if (!within.contains(Factor.CLOTH)) {
      return Message.of("compare.found.same-grain");
    }
    return within.contains(Factor.GRAIN)
        ? Message.of("compare.found.same-cloth-grain")
        : Message.of("compare.found.same-cloth");
  }

  String orDash(@Nullable Double value) {
    return value == null ? "–" : apart(value);
  }
}
