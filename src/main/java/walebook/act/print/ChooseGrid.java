package walebook.act.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import walebook.paper.LabelGrid;
import walebook.paper.PaperSize;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.ReadNumber;
import walebook.quantity.Show;
import walebook.quantity.Unit;

/**
 * Finds a sheet of labels: a common one by its columns and rows, or a free one by its measures.
 * Fields: grid, columns, rows, left, top, gap-across, gap-down; lengths in mm unless typed
 * otherwise.
 */
public final class ChooseGrid {
  private static final String FREE = "free";

  private final Map<String, String> typed;
  private final List<Problem> problems = new ArrayList<>();

  private ChooseGrid(Map<String, String> typed) {
    this.typed = Map.copyOf(typed);
  }

  /**
   * The grid as typed.
   *
   * @param paper for a free grid, and which of the common ones is meant when none is named
   */
  public static Answer<LabelGrid> of(Map<String, String> typed, PaperSize paper) {
    return new ChooseGrid(typed).choose(paper);
  }

  private Answer<LabelGrid> choose(PaperSize paper) {
    String key = typed.getOrDefault("grid", typed.containsKey("columns") ? FREE : "");
    if (key.equals(FREE)) {
      return free(paper);
    }
    for (LabelGrid each : LabelGrid.COMMON) {
      boolean usual = key.isEmpty() && each.paper() == paper;
      if (usual || each.key().equals(key)) {
        return Answer.good(each);
      }
    }
    String known = LabelGrid.COMMON.stream().map(LabelGrid::key).collect(Collectors.joining(", "));
    return Answer.bad(Problem.refuse("print.grid", Place.field("grid"), key, known));
  }

  private Answer<LabelGrid> free(PaperSize paper) {
    Integer columns = whole("columns", 10);
    Integer rows = whole("rows", 30);
    double left = length("left");
    double top = length("top");
    double across = length("gap-across");
    double down = length("gap-down");
    if (!problems.isEmpty() || columns == null || rows == null) {
      return Answer.bad(problems);
    }
    double wide = (paper.widthMm() - 2 * left - (columns - 1) * across) / columns;
    double high = (paper.heightMm() - 2 * top - (rows - 1) * down) / rows;
    if (wide < LabelGrid.LEAST_WIDTH || high < LabelGrid.LEAST_HEIGHT) {
      return Answer.bad(
          Problem.refuse(
              "print.grid-too-small",
              Place.field("grid"),
              size(wide, high),
              size(LabelGrid.LEAST_WIDTH, LabelGrid.LEAST_HEIGHT)));
    }
    return Answer.good(LabelGrid.free(paper, columns, rows, left, top, across, down));
  }

  private static String size(double wide, double high) {
    return Show.upTo(wide, 1) + " × " + Show.upTo(high, 1) + " mm";
  }

  private @Nullable Integer whole(String field, int most) {
    String text = typed.getOrDefault(field, "");
    Answer<Integer> read = ReadNumber.whole(text, Place.field(field));
    if (!read.isGood()) {
      problems.addAll(read.problems());
      return null;
    }
    if (read.value() < 1 || read.value() > most) {
      problems.add(Problem.refuse("number.outside", Place.field(field), text, "1 – " + most));
      return null;
    }
    return read.value();
  }

  private double length(String field) {
    String text = typed.getOrDefault(field, "0");
    Answer<Double> read = ReadNumber.length(text, Unit.MM, Place.field(field));
    if (!read.isGood()) {
      problems.addAll(read.problems());
      return 0;
    }
    if (read.value() < 0 || read.value() > 100) {
      problems.add(Problem.refuse("number.outside", Place.field(field), text, "0 – 100 mm"));
      return 0;
    }
    return read.value();
  }
}
