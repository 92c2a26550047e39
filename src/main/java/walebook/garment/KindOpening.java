package walebook.garment;

import java.util.Objects;

/**
 * An opening that a kind of garment has.
 *
 * @param edge which edge
 * @param over what it must pass over
 */
public record KindOpening(OpeningEdge edge, Girth over) {
  public KindOpening {
    Objects.requireNonNull(edge, "edge");
    Objects.requireNonNull(over, "over");
  }
}
