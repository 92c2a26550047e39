package walebook.desk.classroom;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import walebook.compare.Dot;
import walebook.compare.FairComparison;
import walebook.compare.FairPair;
import walebook.compare.FairRow;
import walebook.drawing.DotPlot;
import walebook.drawing.Drawing;
import walebook.drawing.ScatterBand;
import walebook.drawing.SmallMultiples;

/**
 * What a fair comparison found, worded and drawn.
 *
 * @param says the sentences, most important first
 * @param same what is alike in all pieces; may be empty
 * @param rows one for each setting
 * @param pairs every two settings that are compared
 * @param plot null when no piece has a value
 * @param single each factor by itself; null when there are not two of them
 * @param against the outcome against each factor that is a number
 * @param grids every two factors against each other; null when there are not two of them
 * @param odd those that would be among the best or worst, were they not odd
 * @param photos thumbnails of the best and worst pieces, by piece
 * @param pValues whether the tutor asked for them
 */
record FairFound(
    FairComparison comparison,
    List<String> says,
    String same,
    List<Row> rows,
    List<Pair> pairs,
    @Nullable DotPlot plot,
    @Nullable SmallMultiples single,
    List<Against> against,
    @Nullable SmallMultiples grids,
    List<Standout> best,
    List<Standout> worst,
    List<Standout> odd,
    Map<UUID, byte[]> photos,
    boolean pValues) {

  /**
   * A setting.
   *
   * @param middle adjusted mean, median or share held, as it is shown
   * @param limits its interval
   * @param bar dots over the interval
   */
  record Row(
      String setting, FairRow found, String raw, String middle, String limits, Drawing bar) {}

  /** Two settings and what can be said of their difference. */
  record Pair(
      String first, String second, FairPair found, String apart, String limits, String says) {}

  /**
   * The outcome against a factor that is a number.
   *
   * @param says what the line tells, and what it does not
   */
  record Against(String factor, String says, ScatterBand plot) {}

  /** One of the best or worst pieces. */
  record Standout(Dot dot, String says) {}

  /** Settings with their numbers, for a spreadsheet: every number in a cell of its own. */
  List<List<String>> table(List<String> header) {
    List<List<String>> lines = new java.util.ArrayList<>(List.of(header));
    for (Row row : rows) {
      FairDrawn.Middle middle =
          FairDrawn.Middle.of(
              row.found(), comparison.question().outcome(), comparison.question().confidence());
      lines.add(
          List.of(
              row.setting(),
              String.valueOf(row.found().pieces()),
              String.valueOf(row.found().students()),
              row.raw(),
              row.middle(),
              FairViewModel.number(middle.low()),
              FairViewModel.number(middle.high())));
    }
    return lines;
  }
}
