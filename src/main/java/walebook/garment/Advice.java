package walebook.garment;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import walebook.working.Message;

/**
 * One thing to do about a garment.
 *
 * @param action what, in the order in which it is tried
 * @param says the sentence
 * @param piece the test piece to sew; null for other actions
 */
public record Advice(Action action, Message says, @Nullable PieceWanted piece) {

  /** What can be done, the cheapest mending first. */
  public enum Action {
    TURN_PIECES,
    OTHER_CLOTH,
    WIDEN_OPENING,
    OTHER_LINK,
    CHANGE_BAND,
    CHANGE_ALLOWANCE,
    MEASURE_CLOTH,
    SEW_TEST_PIECE,
    MEASURE_AGAIN
  }

  /**
   * A test piece that would make a link known.
   *
   * @param link what it tests
   * @param edge which edge of the garment it stands for
   * @param round which direction of the cloth runs along it
   * @param needPercent how far it is pulled
   */
  public record PieceWanted(LinkKind link, OpeningEdge edge, GrainRound round, double needPercent) {
    public PieceWanted {
      Objects.requireNonNull(link, "link");
      Objects.requireNonNull(edge, "edge");
      Objects.requireNonNull(round, "round");
    }
  }

  public Advice {
    Objects.requireNonNull(action, "action");
    Objects.requireNonNull(says, "says");
  }

  static Advice of(Action action, String key, String... args) {
    return new Advice(action, Message.of(key, args), null);
  }
}
