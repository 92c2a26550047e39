package walebook.seam;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What is known of one trait of a piece.
 *
 * @param word as the table of faults writes it
 * @param number its size where it has one, in the trait's unit
 * @param shown as people read it, with its unit
 */
public record Known(String word, @Nullable Double number, String shown) {
  public Known {
    Objects.requireNonNull(word, "word");
    Objects.requireNonNull(shown, "shown");
  }

  /** A choice. */
  public static Known word(String word, String shown) {
    return new Known(word, null, shown);
  }

  /** A size. */
  public static Known number(double number, String shown) {
    return new Known(shown, number, shown);
  }
}
