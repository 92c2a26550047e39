package walebook.lesson;

import org.jspecify.annotations.Nullable;
import walebook.record.Grain;

/**
 * Something one student needs.
 *
 * @param count how many; null where the words say it
 * @param cloth slot of the plan's cloth it is cut from; null when it is no cloth
 * @param alongMm cut size along the seam or the pull, mm
 * @param acrossMm cut size across it, mm
 * @param grain which way the long side lies
 * @param threadM length of sewing thread, m; null when it is none
 */
public record Material(
    String what,
    @Nullable Double count,
    @Nullable String cloth,
    @Nullable Double alongMm,
    @Nullable Double acrossMm,
    @Nullable Grain grain,
    @Nullable Double threadM) {}
