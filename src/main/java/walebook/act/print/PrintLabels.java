package walebook.act.print;

import java.util.List;
import walebook.book.Book;
import walebook.paper.LabelGrid;
import walebook.paper.PieceSlip;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Prints labels for the pieces of a class, planned or sewn. */
public final class PrintLabels {
  private final Book book;
  private final Words words;
  private final SharedTables tables;

  public PrintLabels(Book book, Words words, SharedTables tables) {
    this.book = book;
    this.words = words;
    this.tables = tables;
  }

  /**
   * Prints a label for each piece.
   *
   * @param start the first label of the sheet to print on, from 1
   */
  public Answer<Printed> print(PrintScope scope, LabelGrid grid, int start, PrintFile file) {
    if (start < 1 || start > grid.perSheet()) {
      return Answer.bad(
          Problem.refuse(
              "number.outside",
              Place.field("start"),
              String.valueOf(start),
              "1 – " + grid.perSheet()));
    }
    List<PieceSlip> slips =
        book.inOneStep(
            () -> {
              GatherPieces gather = new GatherPieces(book, scope, words, tables);
              return gather.all().stream()
                  .map(each -> gather.wording().slip(each, gather.called().of(each.studentId())))
                  .toList();
            });
    return file.write(words, pages -> pages.labels(grid, slips, start));
  }
}
