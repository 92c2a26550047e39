package walebook.sheet.in;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import walebook.problem.Place;
import walebook.problem.Problem;

/** What is told about a sheet as a whole: merged cells, formulas and the first of each. */
final class SheetRemarks {
  private final String sheet;
  private int merged;
  private String firstMerged = "";
  private int formulas;
  private @Nullable Place firstFormula;

  SheetRemarks(String sheet) {
    this.sheet = sheet;
  }

  void merged(@Nullable String area) {
    if (merged++ == 0) {
      firstMerged = String.valueOf(area);
    }
  }

  void met(InCell cell, int row, int column) {
    if (cell.formula() && formulas++ == 0) {
      firstFormula = new Place.Cell(sheet, row, InGrid.letters(column));
    }
  }

  List<Problem> all() {
    List<Problem> all = new ArrayList<>();
    if (merged > 0) {
      all.add(Problem.ask("in.merged", new Place.Path(sheet), firstMerged, String.valueOf(merged)));
    }
    if (firstFormula != null) {
      all.add(Problem.ask("in.formulas", firstFormula, String.valueOf(formulas), ""));
    }
    return all;
  }
}
