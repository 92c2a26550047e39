package walebook.record;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A piece or a lesson that speaks for a criterion; one of the two is null.
 *
 * <p>What is sewn for a tagged lesson speaks for its criteria too.
 */
public record CriterionTag(UUID criterionId, @Nullable UUID pieceId, @Nullable UUID lessonId) {
  public CriterionTag {
    if ((pieceId == null) == (lessonId == null)) {
      throw new IllegalArgumentException("a tag is on a piece or on a lesson");
    }
  }

  public static CriterionTag onPiece(UUID criterionId, UUID pieceId) {
    return new CriterionTag(criterionId, pieceId, null);
  }

  public static CriterionTag onLesson(UUID criterionId, UUID lessonId) {
    return new CriterionTag(criterionId, null, lessonId);
  }
}
