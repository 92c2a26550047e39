package walebook.act.assess;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.Form;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.problem.Answer;
import walebook.quantity.Unit;
import walebook.record.Feedback;
import walebook.record.SchoolClass;
import walebook.record.Stamp;
import walebook.record.TestPiece;
import walebook.record.Tutor;

/** Says something of a piece, and keeps the tutor's own comments to be used again. */
public final class GiveFeedback {
  /** Field of what is said. */
  public static final String SAYS = "feedback-says";

  /** Field of the day; empty for today. */
  public static final String DAY = "feedback-on";

  private final Book book;
  private final Clock clock;

  public GiveFeedback(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /**
   * Saves what was said, under the name of the class's tutor.
   *
   * @param bank true to keep the comment in the bank as well
   */
  public Answer<Feedback> give(UUID pieceId, String says, String on, boolean bank) {
    Form form = new Form(Map.of(SAYS, says, DAY, on), Unit.MM);
    String text = form.needed(SAYS);
    LocalDate today = LocalDate.now(clock);
    LocalDate day = form.dateUpTo(today, DAY);
    if (form.isRefused()) {
      return Answer.bad(form.problems());
    }
    return Answer.good(
        book.inOneStep(
            () -> {
              Feedback feedback =
                  new Feedback(
                      Ids.next(),
                      pieceId,
                      day == null ? today : day,
                      text,
                      tutorOf(pieceId),
                      Stamp.fresh(clock.instant()));
              book.assessments().add(feedback);
              if (bank) {
                book.assessments().bank(text);
              }
              return feedback;
            }));
  }

  private String tutorOf(UUID pieceId) {
    TestPiece piece = book.pieces().find(pieceId);
    SchoolClass of = piece == null ? null : book.classes().find(piece.whose().classId());
    @Nullable UUID tutorId = of == null ? null : of.tutorId();
    Tutor tutor = tutorId == null ? null : book.tutors().find(tutorId);
    return tutor == null ? "" : tutor.name();
  }

  /** Takes a comment out of the bank; what was said with it stays. */
  public void unbank(String says) {
    book.assessments().unbank(says);
  }
}
