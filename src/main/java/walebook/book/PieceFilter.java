package walebook.book;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Which pieces are wanted; null and empty mean all.
 *
 * @param search words, each of which must be in the code, the student's name, the cloth's name, the
 *     stitch's name, a fault or the remark
 * @param limit at most so many
 * @param offset after leaving out so many of the newest
 */
public record PieceFilter(
    @Nullable UUID classId,
    @Nullable UUID lessonId,
    @Nullable UUID studentId,
    @Nullable UUID clothId,
    String search,
    int limit,
    int offset) {

  public static final PieceFilter ALL =
      new PieceFilter(null, null, null, null, "", Integer.MAX_VALUE, 0);

  public PieceFilter {
    if (limit < 0 || offset < 0) {
      throw new IllegalArgumentException("limit and offset must not be negative");
    }
  }

  public PieceFilter ofClass(@Nullable UUID id) {
    return new PieceFilter(id, lessonId, studentId, clothId, search, limit, offset);
  }

  public PieceFilter ofLesson(@Nullable UUID id) {
    return new PieceFilter(classId, id, studentId, clothId, search, limit, offset);
  }

  public PieceFilter ofStudent(@Nullable UUID id) {
    return new PieceFilter(classId, lessonId, id, clothId, search, limit, offset);
  }

  public PieceFilter onCloth(@Nullable UUID id) {
    return new PieceFilter(classId, lessonId, studentId, id, search, limit, offset);
  }

  public PieceFilter with(String words) {
    return new PieceFilter(classId, lessonId, studentId, clothId, words, limit, offset);
  }

  public PieceFilter page(int most, int after) {
    return new PieceFilter(classId, lessonId, studentId, clothId, search, most, after);
  }
}
