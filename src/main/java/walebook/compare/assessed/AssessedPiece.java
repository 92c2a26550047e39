package walebook.compare.assessed;

import java.time.LocalDate;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.record.Criterion;
import walebook.record.PieceCheck;

/**
 * A piece that speaks for a criterion or was looked over.
 *
 * @param lessonId null for a piece without a lesson
 * @param criteria those it speaks for, by its own tags and by its lesson's
 * @param self the student's check, null while there is none
 * @param tutor the tutor's check, null while there is none
 * @param comments how often something was said of it
 */
public record AssessedPiece(
    UUID pieceId,
    String code,
    UUID studentId,
    @Nullable UUID lessonId,
    LocalDate sewnOn,
    Set<UUID> criteria,
    @Nullable PieceCheck self,
    @Nullable PieceCheck tutor,
    int comments) {
  public AssessedPiece {
    criteria = Set.copyOf(criteria);
  }

  /** Whether anybody said anything of it yet. */
  public boolean isLookedOver() {
    return self != null || tutor != null || comments > 0;
  }

  /** How it stands for a criterion by the tutor's check, by the marks that count for it. */
  public Standing standing(Criterion criterion) {
    return Standing.of(tutor, criterion.looksAt());
  }

  /** How it stands by all marks of the tutor's check. */
  public Standing standing() {
    return Standing.of(tutor);
  }
}
