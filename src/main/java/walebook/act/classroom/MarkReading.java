package walebook.act.classroom;

import java.time.Clock;
import java.util.UUID;
import walebook.book.Book;
import walebook.book.Ids;
import walebook.book.StaleRow;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.By;
import walebook.record.Mark;
import walebook.record.MarkedValue;
import walebook.record.ValueMark;

/**
 * Marks an odd value: kept, mistyped with the right value in its place, or set aside with a reason.
 * Each mark can be taken back by its step.
 */
public final class MarkReading {
  private final Book book;
  private final CorrectReading correct;

  public MarkReading(Book book, Clock clock) {
    this.book = book;
    this.correct = new CorrectReading(book, clock);
  }

  /**
   * What was marked.
   *
   * @param stepId by which it is taken back
   */
  public record Marked(ValueMark mark, UUID stepId) {}

  /** Marks a value as looked at and right. */
  public Answer<Marked> keep(MarkedValue value, UUID targetId, By by) {
    return put(value, targetId, Mark.KEPT, "", by);
  }

  /** Leaves a value out of every comparison; the reason must not be empty. */
  public Answer<Marked> setAside(MarkedValue value, UUID targetId, String reason, By by) {
    return reason.isBlank()
        ? Answer.bad(Problem.refuse("field.needed", Place.field("reason"), reason, ""))
        : put(value, targetId, Mark.SET_ASIDE, reason.strip(), by);
  }

  private Answer<Marked> put(MarkedValue value, UUID targetId, Mark mark, String reason, By by) {
    if (!correct.isThere(value, targetId)) {
      return Answer.bad(notThere(targetId));
    }
    UUID step = Ids.next();
    return Answer.good(new Marked(book.marks().put(value, targetId, mark, reason, by, step), step));
  }

  /**
   * Puts a mistyped number right and marks the value, in one step.
   *
   * @param field which number was wrong, see {@link CorrectReading}
   * @param typed the right one, as typed
   */
  public Answer<Marked> mistyped(
      MarkedValue value, UUID targetId, String field, String typed, boolean confirmed, By by) {
    UUID step = Ids.next();
    return book.inOneStep(
        () -> {
          Answer<UUID> corrected =
              correct.inStep(value, targetId, field, typed, confirmed, by, step);
          if (!corrected.isGood()) {
            return Answer.bad(corrected.problems());
          }
          return Answer.good(
              new Marked(book.marks().put(value, targetId, Mark.MISTYPED, "", by, step), step));
        });
  }

  /** Takes a mark back, with the correction that came with it. */
  public Answer<UUID> undo(UUID stepId, By by) {
    return undo(book, stepId, by);
  }

  static Answer<UUID> undo(Book book, UUID stepId, By by) {
    try {
      book.history().undo(stepId, by);
      return Answer.good(stepId);
    } catch (StaleRow e) {
      return Answer.bad(
          Problem.refuse("undo.changed-since", Place.field("step"), stepId.toString(), ""));
    } catch (IllegalArgumentException e) {
      return Answer.bad(Problem.refuse("undo.nothing", Place.field("step"), stepId.toString(), ""));
    }
  }

  static Problem notThere(UUID targetId) {
    return Problem.refuse("choice.unknown", Place.field("code"), targetId.toString(), "");
  }
}
