package walebook.act.bring;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.act.bring.match.BringWhat;
import walebook.act.bring.match.ColumnMatch;
import walebook.act.bring.match.DayOrder;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/**
 * What is to be brought in, and how.
 *
 * @param columns what each column of the sheet is
 * @param studentId whose all pieces are where no column says so; null otherwise
 * @param order how days such as 3/4/2026 are written; unknown to go by what the days tell
 * @param goodRows true to bring in the good rows and leave the others, false for all or nothing
 * @param sure true when what is only unlikely was looked at and is right
 */
public record BringPlan(
    BringWhat what,
    Spreadsheet sheet,
    List<ColumnMatch> columns,
    UUID classId,
    @Nullable UUID studentId,
    DayOrder order,
    boolean goodRows,
    boolean sure) {
  public BringPlan {
    columns = List.copyOf(columns);
  }

  /** The column of each field, from 0; or which field stands over two columns. */
  Answer<Map<String, Integer>> places() {
    Map<String, Integer> places = new HashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      String field = columns.get(i).field();
      if (!field.isEmpty() && places.put(field, i) != null) {
        return Answer.bad(
            Problem.refuse("bring.twice", Place.field(field), Spreadsheet.letters(i), ""));
      }
    }
    return Answer.good(places);
  }
}
