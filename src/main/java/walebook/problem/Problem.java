package walebook.problem;

import java.util.Objects;

/**
 * One thing wrong with an input, as data: the words are found by its code in the bundle.
 *
 * @param code dotted key of the sentence, for instance {@code number.not-a-number}
 * @param place where the mistake is
 * @param found what was found there, as typed; empty when nothing was
 * @param wanted what is wanted there, in words or as an example; empty when the code says it all
 * @param weight whether it must be mended or only confirmed
 */
public record Problem(String code, Place place, String found, String wanted, Weight weight) {

  /** Whether an input is refused or only asked about. */
  public enum Weight {
    /** Must be mended before going on. */
    REFUSE,
    /** Unlikely, though possible: ask, and take a yes. */
    ASK
  }

  public Problem {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(wanted, "wanted");
    Objects.requireNonNull(weight, "weight");
  }

  /** A mistake that must be mended. */
  public static Problem refuse(String code, Place place, String found, String wanted) {
    return new Problem(code, place, found, wanted, Weight.REFUSE);
  }

  /** An unlikely input that a yes makes good. */
  public static Problem ask(String code, Place place, String found, String wanted) {
    return new Problem(code, place, found, wanted, Weight.ASK);
  }

  /** True when the input cannot be taken as it stands. */
  public boolean refuses() {
    return weight == Weight.REFUSE;
  }
}
