package walebook.sheet.in;

import java.nio.file.Path;
import java.util.List;
import walebook.problem.Problem;

/**
 * A file that may hold a table.
 *
 * @param sheets names of its sheets in order; one for a text file
 * @param remarks what of it is left alone: macros, links to other files
 */
public record InFile(Path path, List<String> sheets, List<Problem> remarks) {
  public InFile {
    sheets = List.copyOf(sheets);
    remarks = List.copyOf(remarks);
  }
}
