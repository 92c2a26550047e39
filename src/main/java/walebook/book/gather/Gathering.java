package walebook.book.gather;

import java.util.List;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import walebook.problem.Answer;
import walebook.record.By;

/** Takes other books' records into this book. */
public interface Gathering {
  /**
   * Gathers all the books in one go. A record that is not here is added; one that was changed only
   * there is taken; one changed only here is kept; one changed in both waits for a person. Who
   * changed it since is told by versions kept at the last gathering, never by clocks.
   *
   * @param really false to say what would come of it and change nothing
   * @return what came of each book, in the order given; a book that breaks a rule is refused whole
   *     and the others go on
   * @throws CancellationException from the progress; this book is then as it was
   */
  List<FromBook> gather(List<SourceBook> books, boolean really, By by, GatherProgress progress);

  /** What waits for a person, oldest first. */
  List<Conflict> conflicts();

  /**
   * Decides a conflict.
   *
   * @return the decided one; refused when there is no such conflict any more, or when what stands
   *     in theirs refers to something that is not here
   */
  Answer<Conflict> decide(UUID conflictId, Choice choice, By by);
}
