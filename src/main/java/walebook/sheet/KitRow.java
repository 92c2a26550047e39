package walebook.sheet;

import org.jspecify.annotations.Nullable;

/**
 * One line of what a lesson needs, worded already.
 *
 * @param unit sign of the unit of both amounts
 * @param cuttingPlanMm length of the cutting plan on the washed cloth; null where nothing is laid
 * @param price for one unit, as the book remembers it
 * @param cost of what the class needs; null without a price or an amount
 */
public record KitRow(
    String lesson,
    String what,
    @Nullable Double perStudent,
    @Nullable Double forClass,
    String unit,
    @Nullable Double cuttingPlanMm,
    @Nullable Double price,
    @Nullable Double cost) {

  /** What could not be worked out, and why. */
  public static KitRow remark(String lesson, String says) {
    return new KitRow(lesson, says, null, null, "", null, null, null);
  }
}
