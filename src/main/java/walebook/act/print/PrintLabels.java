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

/** Prints labels for the pieces of a class: those still to be logged, or all of them. */
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
   * @param logged whether pieces that are logged already get one too
   */
  public Answer<Printed> print(
      PrintScope scope, LabelGrid grid, int start, boolean logged, PrintFile file) {
    if (start < 1 || start > grid.perSheet()) {
      return Answer.bad(
          Problem.refuse(
              "number.outside",
              Place.field("start"),
              String.valueOf(start),
              "1 – " + grid.perSheet()));
    }
    Labels labels = book.inOneStep(() -> labels(scope, logged));
    return file.write(words, pages -> pages.labels(grid, labels.slips(), start, labels.none()));
  }

  /**
   * What is printed.
   *
   * @param none said where there is no label to print
   */
  private record Labels(List<PieceSlip> slips, String none) {}

  private Labels labels(PrintScope scope, boolean logged) {
    GatherPieces gather = new GatherPieces(book, scope, words, tables);
    List<PieceLine> all = gather.all();
    List<PieceSlip> slips =
        all.stream()
            .filter(each -> logged || each.logged() == null)
            .map(each -> gather.wording().slip(each, gather.called().of(each.studentId())))
            .toList();
    return new Labels(slips, words.say(all.isEmpty() ? "paper.no-pieces" : "paper.labels.none"));
  }
}
