/**
 * Intervals, variance components, least squares and product-limit estimates; knows no cloth.
 *
 * <p>Everything is pure and immutable. A confidence is a number strictly between 0 and 1, such as
 * 0.95, and intervals are two-sided. What the data cannot tell (a spread from one value, a
 * difference of two settings that share nothing) is null and documented so; it is never NaN and
 * never an interval of no width.
 */
@NullMarked
package walebook.statistics;

import org.jspecify.annotations.NullMarked;
