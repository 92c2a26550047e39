package walebook.sheet;

import org.jspecify.annotations.Nullable;

/**
 * One line of what a lesson needs, worded already.
 *
 * @param unit sign of the unit of both amounts
 */
public record KitRow(
    String lesson,
    String what,
    @Nullable Double perStudent,
    @Nullable Double forClass,
    String unit) {}
