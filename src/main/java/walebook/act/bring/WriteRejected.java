package walebook.act.bring;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.sheet.PlainTable;
import walebook.sheet.Value;
import walebook.sheet.WholeFile;
import walebook.sheet.WorkbookFile;
import walebook.sheet.in.InCell;
import walebook.sheet.in.InRow;
import walebook.words.Words;

/** Gives the rows that stayed outside back as a workbook, each with the reason in a last column. */
public final class WriteRejected {
  private final Words words;

  public WriteRejected(Words words) {
    this.words = words;
  }

  /**
   * Writes the workbook.
   *
   * @param replace true when a file that is there may give way
   * @return the file, or what is in the way
   */
  public Answer<Path> write(Path file, Spreadsheet sheet, Trial trial, boolean replace) {
    Problem problem = WorkbookFile.inTheWay(file);
    if (problem == null && Files.exists(file) && !replace) {
      problem = refuse("sheet.exists", file, "--replace");
    }
    if (problem != null) {
      return Answer.bad(problem);
    }
    List<String> titles = new ArrayList<>();
    for (int i = 0; i < sheet.headers().size(); i++) {
      String title = sheet.headers().get(i);
      titles.add(title.isEmpty() ? Spreadsheet.letters(i) : title);
    }
    titles.add(words.say("act.bring.reason"));
    try {
      WholeFile.write(
          file,
          out ->
              PlainTable.write(out, words.say("act.bring.rejected"), titles, rows(sheet, trial)));
      return Answer.good(file);
    } catch (IOException e) {
      return Answer.bad(refuse("sheet.not-written", file, ""));
    }
  }

  private static Problem refuse(String code, Path file, String wanted) {
    return Problem.refuse(code, new Place.Path(file.toString()), file.toString(), wanted);
  }

  private List<List<Value>> rows(Spreadsheet sheet, Trial trial) {
    Map<Integer, RowFate> fates = new HashMap<>();
    trial.fates().stream().filter(RowFate::isProblem).forEach(each -> fates.put(each.row(), each));
    List<List<Value>> rows = new ArrayList<>();
    for (InRow each : sheet.rows()) {
      RowFate fate = fates.get(each.number());
      if (fate != null) {
        List<Value> row = new ArrayList<>();
        for (int i = 0; i < sheet.headers().size(); i++) {
          row.add(value(each.at(i)));
        }
        row.add(Value.of(reasons(fate)));
        rows.add(row);
      }
    }
    return rows;
  }

  private String reasons(RowFate fate) {
    return fate.problems().stream().map(words::say).collect(Collectors.joining("; "));
  }

  private static Value value(InCell cell) {
    return switch (cell.kind()) {
      case NUMBER -> Value.of(Double.valueOf(cell.text()));
      case DAY -> Value.of(LocalDate.parse(cell.text()));
      default -> Value.of(cell.text());
    };
  }
}
