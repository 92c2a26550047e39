package walebook.act.print;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Whose pieces are printed.
 *
 * @param lessonId null for all lessons of the class
 * @param studentId null for everybody in the class
 */
public record PrintScope(
    UUID classId, @Nullable UUID lessonId, @Nullable UUID studentId, Naming naming) {}
