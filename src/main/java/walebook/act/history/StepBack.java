package walebook.act.history;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.book.Book;
import walebook.book.BookTrouble;
import walebook.book.StaleRow;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.By;
import walebook.record.Change;

/** Takes back the last thing that was done, or does it again; also after the book was shut. */
public final class StepBack {
  private final Book book;
  private final SayChange say;

  public StepBack(Book book, SayChange say) {
    this.book = book;
    this.say = say;
  }

  /**
   * What can be taken back or done again.
   *
   * @param says what it was, in words
   */
  public record Offer(UUID stepId, String says) {}

  /** What undo would take back; a student is offered their own steps only. */
  public @Nullable Offer undo(@Nullable UUID studentId) {
    return offer(book.history().lastDone(studentId));
  }

  /** What redo would do again. */
  public @Nullable Offer redo(@Nullable UUID studentId) {
    return offer(book.history().lastUndone(studentId));
  }

  private @Nullable Offer offer(@Nullable UUID stepId) {
    List<Change> changes = stepId == null ? List.of() : book.history().step(stepId);
    return stepId == null || changes.isEmpty() ? null : new Offer(stepId, say.step(changes));
  }

  /** Takes a step back, unless something of it was changed since: then says who changed what. */
  public Answer<Offer> undo(Offer offer, By by) {
    return turn(offer, () -> book.history().undo(offer.stepId(), by));
  }

  /** Does a step again that was taken back. */
  public Answer<Offer> redo(Offer offer, By by) {
    return turn(offer, () -> book.history().redo(offer.stepId(), by));
  }

  private Answer<Offer> turn(Offer offer, Runnable work) {
    try {
      work.run();
      return Answer.good(offer);
    } catch (StaleRow e) {
      return Answer.bad(since(e.table(), e.id()));
    } catch (IllegalArgumentException e) {
      return Answer.bad(
          Problem.refuse("undo.nothing", Place.field("step"), offer.stepId().toString(), ""));
    } catch (BookTrouble e) {
      if (!e.code().equals("constraint")) {
        throw e;
      }
      return Answer.bad(Problem.refuse("undo.rests", Place.field("step"), offer.says(), ""));
    }
  }

  private Problem since(String table, UUID id) {
    List<Change> changes = book.history().of(table, id);
    if (changes.isEmpty()) {
      return Problem.refuse("undo.changed-since", Place.field("step"), id.toString(), "");
    }
    Change last = changes.get(0);
    return Problem.refuse("undo.since", Place.field("step"), say.change(last), say.who(last));
  }
}
