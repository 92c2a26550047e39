package walebook.act.assess;

import java.util.UUID;
import walebook.book.Book;
import walebook.record.CriterionTag;

/** Says that a piece or a lesson speaks for a criterion, or that it does not any more. */
public final class TagEvidence {
  private final Book book;

  public TagEvidence(Book book) {
    this.book = book;
  }

  /** A piece; {@code speaks} false takes the tag off. */
  public void piece(UUID criterionId, UUID pieceId, boolean speaks) {
    set(CriterionTag.onPiece(criterionId, pieceId), speaks);
  }

  /** A lesson, and with it every piece that is sewn for it. */
  public void lesson(UUID criterionId, UUID lessonId, boolean speaks) {
    set(CriterionTag.onLesson(criterionId, lessonId), speaks);
  }

  private void set(CriterionTag tag, boolean speaks) {
    if (speaks) {
      book.assessments().tag(tag);
    } else {
      book.assessments().untag(tag);
    }
  }
}
