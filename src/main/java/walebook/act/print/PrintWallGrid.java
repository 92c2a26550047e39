package walebook.act.print;

import java.util.ArrayList;
import java.util.List;
import walebook.book.Book;
import walebook.paper.PaperSize;
import walebook.paper.WallGrid;
import walebook.problem.Answer;
import walebook.record.Student;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Prints a grid of students and pieces, to be filled with a pen on the wall. */
public final class PrintWallGrid {
  private final Book book;
  private final Words words;
  private final SharedTables tables;

  public PrintWallGrid(Book book, Words words, SharedTables tables) {
    this.book = book;
    this.words = words;
    this.tables = tables;
  }

  public Answer<Printed> print(PrintScope scope, PaperSize size, PrintFile file) {
    WallGrid grid = book.inOneStep(() -> grid(scope));
    return file.write(words, pages -> pages.wallGrid(size, grid));
  }

  private WallGrid grid(PrintScope scope) {
    GatherPieces gather = new GatherPieces(book, scope, words, tables);
    boolean differ =
        gather.all().stream()
                .filter(line -> line.planned() != null)
                .map(PieceLine::clothId)
                .distinct()
                .count()
            > 1;
    List<WallGrid.Row> rows = new ArrayList<>();
    for (Student student : gather.students()) {
      List<WallGrid.Cell> cells = new ArrayList<>();
      for (PieceLine line : gather.of(student.id())) {
        if (line.planned() != null) {
          cells.add(
              new WallGrid.Cell(
                  gather.wording().spoken(line),
                  gather.wording().stitch(line),
                  differ ? gather.wording().cloth(line) : "",
                  line.control()));
        }
      }
      rows.add(new WallGrid.Row(gather.called().of(student.id()), cells));
    }
    return new WallGrid(gather.title(), rows);
  }
}
