package walebook.lesson;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.PieceAsked;

/**
 * One piece a student is asked to sew.
 *
 * @param place in the student's order, from 1
 * @param control the piece that everybody sews
 * @param cell the levels it stands for, such as {@code cloth=a width=2 length=1.5}
 * @param slot the plan's cloth
 * @param clothId the room's cloth for it; null while the tutor hasn't said
 */
public record PieceToSew(
    UUID studentId,
    int place,
    boolean control,
    String cell,
    PieceAsked asked,
    String slot,
    @Nullable UUID clothId) {}
