package walebook.kit;

import org.jspecify.annotations.Nullable;
import walebook.quantity.Unit;
import walebook.working.Message;

/**
 * One line of a kit's list.
 *
 * @param what it is, worded already or by a key
 * @param perStudent how much each needs; null where the words say it
 * @param forClass how much the class needs, spares in; null where the words say it
 * @param unit of both, and what the price is for one of
 * @param price for one unit; null when not given
 */
public record KitLine(
    Kind kind,
    Message what,
    @Nullable Double perStudent,
    @Nullable Double forClass,
    Unit unit,
    @Nullable Double price) {

  /** What sort of thing it is. */
  public enum Kind {
    /** Cloth or interfacing bought by the length, laid out in a cutting plan. */
    CLOTH,
    /** Pieces to cut of something whose width is not known. */
    PIECES,
    THREAD,
    /** Tape, elastic and other narrow goods by the length. */
    LENGTH,
    /** Counted things. */
    COUNTED
  }

  /** What it costs for the class; null without a price or an amount. */
  public @Nullable Double cost() {
    return price == null || forClass == null ? null : price * forClass;
  }
}
