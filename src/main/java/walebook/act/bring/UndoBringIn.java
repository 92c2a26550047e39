package walebook.act.bring;

import java.util.UUID;
import walebook.book.Book;
import walebook.book.StaleRow;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.By;

/** Takes back everything that was brought in from a spreadsheet in one go. */
public final class UndoBringIn {
  private final Book book;

  public UndoBringIn(Book book) {
    this.book = book;
  }

  /** Refused when something of it was changed or built upon since. */
  public Answer<UUID> undo(UUID stepId, By by) {
    Place place = Place.field("step");
    try {
      book.history().undo(stepId, by);
      return Answer.good(stepId);
    } catch (StaleRow e) {
      return Answer.bad(Problem.refuse("bring.used-since", place, stepId.toString(), ""));
    } catch (IllegalArgumentException e) {
      return Answer.bad(Problem.refuse("undo.nothing", place, stepId.toString(), ""));
    }
  }
}
