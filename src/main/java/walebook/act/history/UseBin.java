package walebook.act.history;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import walebook.book.Book;
import walebook.book.BookTrouble;
import walebook.book.StaleRow;
import walebook.book.StillUsed;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.By;

/** The bin: what was put there, taking it out, emptying it. */
public final class UseBin {
  private final Book book;
  private final SayChange say;

  public UseBin(Book book, SayChange say) {
    this.book = book;
    this.say = say;
  }

  /**
   * What lies in the bin.
   *
   * @param what it is, in words
   * @param who put it there; empty when nobody said
   */
  public record Item(UUID id, String what, String who, Instant putAt) {}

  /** Everything in it, the newest first. */
  public List<Item> all() {
    return book.bin().all().stream()
        .map(
            each ->
                new Item(
                    each.id(),
                    say.thing(each.entity(), each.entityId(), each.rows()),
                    each.who(),
                    each.putAt()))
        .toList();
  }

  /**
   * Puts a thing in the bin, with all that hangs on it; the answer is the step, to take it back.
   */
  public Answer<UUID> put(String entity, UUID id, By by) {
    try {
      return Answer.good(book.bin().put(entity, id, by));
    } catch (StillUsed e) {
      String json = book.history().now(e.table(), e.id());
      String what = say.thing(e.table(), e.id(), json == null ? "" : json);
      return Answer.bad(Problem.refuse("bin.still-used", Place.field("bin"), what, ""));
    } catch (StaleRow e) {
      return Answer.bad(Problem.refuse("bin.gone", Place.field("bin"), id.toString(), ""));
    }
  }

  /** Takes an item out of the bin, back to where it was. */
  public Answer<UUID> restore(UUID itemId, By by) {
    try {
      return Answer.good(book.bin().restore(itemId, by));
    } catch (StaleRow e) {
      return Answer.bad(Problem.refuse("bin.gone", Place.field("bin"), itemId.toString(), ""));
    } catch (BookTrouble e) {
      if (!e.code().equals("constraint")) {
        throw e;
      }
      return Answer.bad(Problem.refuse("bin.lacks", Place.field("bin"), itemId.toString(), ""));
    }
  }

  /** Forgets what is in it for good, and gives back how much that was. */
  public int empty(By by) {
    return book.bin().empty(by);
  }
}
