package walebook.sheet;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.Note;

/**
 * A note about a piece, a cloth or a lesson.
 *
 * @param which the piece's code, the cloth's name or the lesson's title
 * @param studentId who sewed the piece; null where it is about no piece
 * @param author as it goes out; empty when nobody said, or when codes were chosen and none stands
 *     for who wrote it
 */
record NoteLine(Note note, String which, @Nullable UUID studentId, String author) {}
