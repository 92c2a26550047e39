package walebook.record;

import java.util.Arrays;
import java.util.List;
import java.util.UUID;

/**
 * The piece that this one tries again with one change.
 *
 * @param changed keys of the settings that were changed, joined by a blank; a change by hand, which
 *     no setting holds, follows behind {@code other-change:} in words
 */
public record Parent(UUID pieceId, String changed) {
  private static final String BY_HAND = "other-change:";

  /** A parent with the settings that were changed and what was changed by hand, if anything. */
  public static Parent of(UUID pieceId, List<String> keys, String byHand) {
    String joined = String.join(" ", keys);
    return new Parent(
        pieceId, byHand.isBlank() ? joined : (joined + " " + BY_HAND + " " + byHand).strip());
  }

  /** Keys of the settings that were changed. */
  public List<String> keys() {
    int hand = changed.indexOf(BY_HAND);
    String settings = hand < 0 ? changed : changed.substring(0, hand);
    return Arrays.stream(settings.split(" ", -1)).filter(key -> !key.isBlank()).toList();
  }

  /** What was changed by hand, in words; empty when nothing was. */
  public String byHand() {
    int hand = changed.indexOf(BY_HAND);
    return hand < 0 ? "" : changed.substring(hand + BY_HAND.length()).strip();
  }
}
