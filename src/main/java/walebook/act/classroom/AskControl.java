package walebook.act.classroom;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import walebook.book.Book;
import walebook.book.ResultFilter;
import walebook.compare.ClothStretch;
import walebook.compare.FairQuestion;
import walebook.compare.FromControl;
import walebook.compare.Names;
import walebook.record.Grain;
import walebook.record.ResultLine;

/** Reads a class's pieces as differences from each student's own control. */
public final class AskControl {
  private final Book book;

  public AskControl(Book book) {
    this.book = book;
  }

  /**
   * The differences.
   *
   * @param question its outcome must not be a rate
   */
  public FromControl ask(CompareFair.Which which, FairQuestion question) {
    ResultFilter filter = which.filter();
    List<ResultLine> lines = book.results().list(filter);
    Map<UUID, Map<Grain, ClothStretch>> stretches = Stretches.of(book, lines);
    return FromControl.of(
        lines,
        book.results().controls(filter),
        question,
        stretches,
        Names.of(book, which.namesHidden(), lines),
        SetAside.of(book, question.outcome()));
  }
}
