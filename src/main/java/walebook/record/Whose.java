package walebook.record;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Who sewed a piece, in which class and lesson, and when. */
public record Whose(
    UUID classId,
    UUID studentId,
    @Nullable UUID lessonId,
    @Nullable UUID plannedId,
    LocalDate sewnOn) {}
