package walebook.act.assess;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.CriterionTag;
import walebook.record.Feedback;
import walebook.record.PieceCheck;
import walebook.record.TestPiece;

/**
 * All that an assessor would look at on one piece.
 *
 * @param criteria of the class, in the course's order
 * @param own keys of the criteria that the piece itself is tagged with
 * @param ofLesson keys of those that its lesson is tagged with
 * @param feedback oldest first
 * @param bank the tutor's own comments, the newest first
 */
public record LookOver(
    UUID pieceId,
    List<Criterion> criteria,
    Set<UUID> own,
    Set<UUID> ofLesson,
    @Nullable PieceCheck self,
    @Nullable PieceCheck tutor,
    List<Feedback> feedback,
    List<String> bank) {
  public LookOver {
    criteria = List.copyOf(criteria);
    own = Set.copyOf(own);
    ofLesson = Set.copyOf(ofLesson);
    feedback = List.copyOf(feedback);
    bank = List.copyOf(bank);
  }

  /** Reads it, or null when the book has no such piece. */
  public static @Nullable LookOver of(Book book, UUID pieceId) {
    TestPiece piece = book.pieces().find(pieceId);
    if (piece == null) {
      return null;
    }
    UUID classId = piece.whose().classId();
    UUID lessonId = piece.whose().lessonId();
    Set<UUID> own = new HashSet<>();
    Set<UUID> ofLesson = new HashSet<>();
    for (CriterionTag each : book.assessments().tagsOf(classId)) {
      if (pieceId.equals(each.pieceId())) {
        own.add(each.criterionId());
      } else if (lessonId != null && lessonId.equals(each.lessonId())) {
        ofLesson.add(each.criterionId());
      }
    }
    return new LookOver(
        pieceId,
        book.assessments().criteriaOf(classId),
        own,
        ofLesson,
        book.assessments().check(pieceId, CheckedBy.SELF),
        book.assessments().check(pieceId, CheckedBy.TUTOR),
        book.assessments().feedbackOn(pieceId),
        book.assessments().bank());
  }
}
