package walebook.seam;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.quantity.Show;
import walebook.working.Message;

/**
 * What a piece's settings must be for a cause to fit, and what rules it out. Written {@code
 * tension=higher/lower}: fits when higher, ruled out when lower; {@code length<=1.5/3}: fits at 1.5
 * mm and below, ruled out at 3 mm and above. A star stands for any other word.
 */
public sealed interface Clue {
  /** The trait that it looks at. */
  Trait trait();

  /** How a piece stands by this clue, with the reason. */
  Weighed weigh(@Nullable Known known);

  /**
   * What a clue makes of a piece.
   *
   * @param reason as a sentence
   */
  record Weighed(Standing standing, Message reason) {}

  /**
   * A clue by words.
   *
   * @param fits words that speak for the cause; a star for any that does not rule it out
   * @param rulesOut words that rule it out; a star for any that does not speak for it
   */
  record Words(Trait trait, List<String> fits, List<String> rulesOut) implements Clue {
    private static final String ANY = "*";

    public Words {
      Objects.requireNonNull(trait, "trait");
      fits = List.copyOf(fits);
      rulesOut = List.copyOf(rulesOut);
      if (fits.isEmpty()) {
        throw new IllegalArgumentException("a clue must be able to fit: " + trait.key());
      }
    }

    @Override
    public Weighed weigh(@Nullable Known known) {
      if (known == null) {
        return unknown(trait);
      }
      if (fits.contains(known.word()) || holdsAnyBut(fits, rulesOut, known)) {
        return new Weighed(
            Standing.FITS, Message.of("seam.clue.fits", Message.name(trait.says()), known.shown()));
      }
      if (rulesOut.contains(known.word()) || rulesOut.contains(ANY)) {
        return new Weighed(
            Standing.RULED_OUT,
            Message.of("seam.clue.rules-out", Message.name(trait.says()), known.shown()));
      }
      return open(trait, known);
    }

    private static boolean holdsAnyBut(List<String> words, List<String> others, Known known) {
      return words.contains(ANY) && !others.contains(known.word());
    }
  }

  /**
   * A clue by size, in the trait's unit.
   *
   * @param high whether large sizes fit; else small ones do
   * @param fits the cause fits from here on
   * @param rulesOut the cause is ruled out from here on, on the other side; null when nothing does
   */
  record Size(Trait trait, boolean high, double fits, @Nullable Double rulesOut) implements Clue {
    public Size {
      Objects.requireNonNull(trait, "trait");
      if (rulesOut != null && (high ? rulesOut >= fits : rulesOut <= fits)) {
        throw new IllegalArgumentException(
            "a size can't fit and be ruled out at once: " + trait.key());
      }
    }

    @Override
    public Weighed weigh(@Nullable Known known) {
      Double size = known == null ? null : known.number();
      if (known == null || size == null) {
        return unknown(trait);
      }
      if (high ? size >= fits : size <= fits) {
        return new Weighed(
            Standing.FITS,
            high
                ? Message.of("seam.clue.from", name(), known.shown(), Show.upTo(fits, 2))
                : Message.of("seam.clue.until", name(), known.shown(), Show.upTo(fits, 2)));
      }
      if (rulesOut != null && (high ? size <= rulesOut : size >= rulesOut)) {
        return new Weighed(
            Standing.RULED_OUT, Message.of("seam.clue.rules-out", name(), known.shown()));
      }
      return open(trait, known);
    }

    private String name() {
      return Message.name(trait.says());
    }
  }

  private static Weighed unknown(Trait trait) {
    return new Weighed(
        Standing.OPEN, Message.of("seam.clue.not-noted", Message.name(trait.says())));
  }

  private static Weighed open(Trait trait, Known known) {
    return new Weighed(
        Standing.OPEN, Message.of("seam.clue.open", Message.name(trait.says()), known.shown()));
  }
}
