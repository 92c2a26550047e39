package walebook.act.book;

import java.nio.file.Path;
import java.util.List;
import walebook.book.BookCare;
import walebook.book.BookCopy;
import walebook.problem.Answer;

/** Lists the backups of a book, newest first, with what is in them. */
public final class ListBackups {
  /** What stands for the number of pieces of a backup that can't be read. */
  public static final long UNREADABLE = -1;

  private final BookCare care;

  public ListBackups(BookCare care) {
    this.care = care;
  }

  /**
   * One backup.
   *
   * @param pieces how many test pieces it holds, or {@link #UNREADABLE}
   */
  public record Backup(BookCopy copy, long pieces) {}

  public Answer<List<Backup>> of(Path book) {
    return care.copies(book)
        .map(copies -> copies.stream().map(each -> new Backup(each, pieces(each.file()))).toList());
  }

  private long pieces(Path copy) {
    Answer<Long> counted = care.pieces(copy);
    return counted.isGood() ? counted.value() : UNREADABLE;
  }
}
