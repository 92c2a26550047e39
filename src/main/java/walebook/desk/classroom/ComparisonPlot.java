package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import walebook.compare.Comparison;
import walebook.compare.PieceResult;
import walebook.compare.SettingRow;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;
import walebook.statistics.FiveNumbers;
import walebook.words.Words;

/**
 * A comparison as dots. A median stands only where every pulled piece gave: among held ones it
 * would come out too low.
 *
 * @param plot null when no piece was pulled
 * @param leftOut pulled pieces that cannot stand on the axis, their cloth's stretch not being known
 */
record ComparisonPlot(@Nullable DotPlot plot, int leftOut) {
  private static final int SERIES = 5;

  static ComparisonPlot of(
      Comparison comparison, Function<SettingRow, String> setting, Words words) {
    List<PieceResult> pulled =
        comparison.rows().stream()
            .flatMap(row -> row.results().stream())
            .filter(each -> each.end() != null)
            .toList();
    if (pulled.isEmpty()) {
      return new ComparisonPlot(null, 0);
    }
    boolean shares = pulled.stream().anyMatch(each -> each.seamShare() != null);
    Function<PieceResult, @Nullable Double> value =
        shares ? PieceResult::seamShare : PieceResult::seamStretch;
    Set<String> series = new LinkedHashSet<>();
    comparison.rows().forEach(row -> series.add(first(row)));
    List<DotRow> rows = new ArrayList<>();
    int shown = 0;
    for (SettingRow row : comparison.rows()) {
      List<DotRow.Dot> dots = dots(row, value);
      shown += dots.size();
      FiveNumbers middle = shares ? row.shareOfGave() : row.stretchOfGave();
      Double median = row.held() > 0 || middle == null ? null : Double.valueOf(middle.median());
      int nth = series.size() > SERIES ? 0 : List.copyOf(series).indexOf(first(row));
      rows.add(new DotRow(setting.apply(row), dots, median, null, null, nth));
    }
    String axis = words.say(shares ? "desk.class.plot.share" : "desk.class.plot.stretch");
    return new ComparisonPlot(new DotPlot(axis, rows, null), pulled.size() - shown);
  }

  private static List<DotRow.Dot> dots(
      SettingRow row, Function<PieceResult, @Nullable Double> value) {
    List<DotRow.Dot> dots = new ArrayList<>();
    for (PieceResult each : row.results()) {
      Double at = value.apply(each);
      if (each.end() != null && at != null) {
        dots.add(new DotRow.Dot(at, each.held()));
      }
    }
    return dots;
  }

  private static String first(SettingRow row) {
    return row.levels().isEmpty() ? "" : row.levels().get(0);
  }
}
