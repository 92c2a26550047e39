package walebook.record;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A test piece cut down to what it does for a plan.
 *
 * @param lessonId null for a piece without a lesson
 * @param plannedId null for a piece that no plan asked for
 */
public record DoneLine(
    UUID pieceId,
    String code,
    UUID studentId,
    @Nullable UUID lessonId,
    @Nullable UUID plannedId,
    LocalDate sewnOn) {}
