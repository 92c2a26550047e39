package walebook.act.book;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Set;
import walebook.book.BookCare;
import walebook.book.RescueNames;
import walebook.book.RescueReport;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.words.Words;

/** Reads what can be read of a damaged book into a new one; the damaged one stays as it is. */
public final class RescueBook {
  private static final Set<String> HELPS =
      Set.of("book.damaged", "book.damaged-copied", "book.not-a-book", "book.empty-file");

  private final BookCare care;
  private final Words words;
  private final Clock clock;

  public RescueBook(BookCare care, Words words, Clock clock) {
    this.care = care;
    this.words = words;
    this.clock = clock;
  }

  /** True when a book was refused for damage that a rescue or a backup may help with. */
  public static boolean helps(Problem problem) {
    return HELPS.contains(problem.code());
  }

  /**
   * Rescues.
   *
   * @param into must not exist
   */
  public Answer<RescueReport> into(Path damaged, Path into) {
    RescueNames names =
        new RescueNames(
            words.say("act.rescue.book"),
            words.say("act.rescue.term"),
            words.say("act.rescue.class"),
            words.say("act.rescue.student"),
            words.say("act.rescue.cloth"));
    return care.rescue(damaged, into, names, clock);
  }
}
