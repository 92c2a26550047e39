package walebook.paper;

import java.util.List;

/**
 * A field of a record card, in the order of the form.
 *
 * @param label as the form calls it
 * @param filled what the plan asks for; empty to be written by hand
 * @param boxes what can be ticked where nothing is filled in; empty for a blank
 * @param unit of what is written; empty for none
 * @param share of the card's width, in twelfths
 * @param first whether a new group of the form begins with it
 */
public record CardField(
    String label, String filled, List<String> boxes, String unit, int share, boolean first) {
  /** How many shares make the card's width. */
  public static final int WHOLE = 12;

  public CardField {
    boxes = List.copyOf(boxes);
    if (share < 1 || share > WHOLE) {
      throw new IllegalArgumentException("share must be 1 to 12: " + share);
    }
  }
}
