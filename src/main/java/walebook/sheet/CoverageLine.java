package walebook.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import walebook.compare.RosterOrder;
import walebook.compare.assessed.Coverage;
import walebook.record.Criterion;
import walebook.record.Student;

/** A student and a criterion on the sheet of coverage. */
record CoverageLine(Student student, Criterion criterion, Coverage.Cell cell) {

  static List<CoverageLine> all(Coverage coverage, boolean names) {
    List<CoverageLine> lines = new ArrayList<>();
    coverage.rows().stream()
        .sorted(Comparator.comparing(Coverage.Row::student, RosterOrder.of(names)))
        .forEach(
            row -> {
              for (int i = 0; i < coverage.criteria().size(); i++) {
                lines.add(
                    new CoverageLine(
                        row.student(), coverage.criteria().get(i), row.cells().get(i)));
              }
            });
    return lines;
  }
}
