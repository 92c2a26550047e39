package walebook.act.bring;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import walebook.act.bring.match.BringField;
import walebook.act.bring.match.BringWhat;
import walebook.act.bring.match.ColumnMatch;
import walebook.act.bring.match.GuessColumns;
import walebook.book.Book;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.sheet.in.InCell;
import walebook.sheet.in.InGrid;
import walebook.sheet.in.InRow;
import walebook.sheet.in.ReadTables;
import walebook.words.Words;

/** Opens a spreadsheet of somebody's own and guesses what its columns are; writes nothing. */
public final class ReadSpreadsheet {
  private static final int HEADER_WITHIN = 20;

  private final Book book;
  private final Words words;

  public ReadSpreadsheet(Book book, Words words) {
    this.book = book;
    this.words = words;
  }

  /** The sheets of a file, or why it can't be read. */
  public Answer<SpreadsheetFile> open(Path file, BringWhat what) {
    return ReadTables.open(file)
        .map(
            found -> {
              String own = OwnColumns.sheet(what, words);
              String usual = found.sheets().contains(own) ? own : found.sheets().get(0);
              return new SpreadsheetFile(file, found.sheets(), usual, found.remarks());
            });
  }

  /** One sheet with its headers found; refused when it holds no rows. */
  public Answer<Spreadsheet> read(SpreadsheetFile file, String sheet, BringWhat what) {
    return ReadTables.read(file.path(), sheet)
        .flatMap(
            grid -> {
              Spreadsheet found = new Spreadsheet(grid, header(grid, what));
              return found.size() == 0
                  ? Answer.bad(Problem.refuse("bring.no-rows", new Place.Path(sheet), "", ""))
                  : Answer.good(found);
            });
  }

  /** What each column is, as far as its header or the last time tells. */
  public List<ColumnMatch> guess(Spreadsheet sheet, BringWhat what) {
    List<ColumnMatch> guesses =
        GuessColumns.of(what, sheet.headers(), own(what), new KeepMapping(book).find(what));
    boolean single = what == BringWhat.ROSTER && sheet.headers().equals(List.of(""));
    return single ? List.of(new ColumnMatch(BringField.NAME, "")) : guesses;
  }

  /** True for a column of our own workbook that no field is read from: others say the same. */
  public boolean saysNothingNew(Spreadsheet sheet, BringWhat what, int column) {
    Map<String, String> own = own(what);
    return GuessColumns.isOwn(sheet.headers(), own)
        && "".equals(own.get(sheet.headers().get(column)));
  }

  private Map<String, String> own(BringWhat what) {
    return OwnColumns.of(what, words);
  }

  /** The row among the first that names most columns; none when no header is understood. */
  private int header(InGrid grid, BringWhat what) {
    int best = -1;
    int most = 0;
    Map<String, ColumnMatch> kept = new KeepMapping(book).find(what);
    Map<String, String> own = own(what);
    for (int i = 0; i < Math.min(HEADER_WITHIN, grid.rows().size()); i++) {
      InRow row = grid.rows().get(i);
      List<String> titles =
          row.cells().stream()
              .map(each -> each.kind() == InCell.Kind.TEXT ? each.text().strip() : "")
              .toList();
      int named =
          (int)
              GuessColumns.of(what, titles, own, kept).stream()
                  .filter(each -> !each.isLeftOut())
                  .count();
      if (named > most) {
        most = named;
        best = i;
      }
    }
    return best;
  }
}
