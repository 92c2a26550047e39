package walebook.act.bring;

import java.nio.file.Path;
import java.util.List;
import walebook.problem.Problem;

/**
 * A workbook or text file that was looked into.
 *
 * @param sheets names of its sheets
 * @param usual the sheet that most likely holds what is wanted
 * @param remarks what of the file is left alone
 */
public record SpreadsheetFile(Path path, List<String> sheets, String usual, List<Problem> remarks) {
  public SpreadsheetFile {
    sheets = List.copyOf(sheets);
    remarks = List.copyOf(remarks);
  }
}
