package walebook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import walebook.compare.Factor;
import walebook.compare.FairFigures;
import walebook.compare.Outcome;
import walebook.compare.TalliedComparison;
import walebook.compare.TalliedRow;
import walebook.words.Words;

/** The charts of both comparisons, one a page: cloth by cloth, then so for each outcome. */
final class ChartSheet {
  /** More bars than these cannot be read on one page. */
  private static final int MOST_BARS = 20;

  /** More pages than these nobody turns; the tables have every setting. */
  private static final int MOST_CHARTS = 60;

  private static final int PAGE_ROWS = ComparisonChart.ROWS_HIGH + 3;
  private static final int DEFAULT_WIDTH = 9;

  private final XSSFSheet sheet;
  private final TermFacts facts;
  private final Words words;
  private int drawn;

  private ChartSheet(XSSFSheet sheet, TermFacts facts, Words words) {
    this.sheet = sheet;
    this.facts = facts;
    this.words = words;
  }

  /** Whether there is anything to draw. */
  static boolean isWanted(TermFacts facts) {
    return !facts.comparison().rows().isEmpty();
  }

  /** Draws them all; the tables they draw from are filled already. */
  static void draw(XSSFSheet sheet, TermFacts facts, Pen pen, Words words) {
    new ChartSheet(sheet, facts, words).draw(pen);
  }

  private void draw(Pen pen) {
    sheet.setDisplayGridlines(false);
    sheet.setDefaultColumnWidth(DEFAULT_WIDTH);
    pen.own(sheet.createRow(0), 0, pen.styles().label(), words.say("sheet.charts.note"));
    XSSFWorkbook workbook = sheet.getWorkbook();
    settings(workbook.getSheet(words.say("sheet.comparison.name")));
    fair(workbook.getSheet(words.say("sheet.fair.name")));
    PrintSetup.asLarge(sheet, ComparisonChart.COLUMNS_WIDE, drawn * PAGE_ROWS);
  }

  private void settings(XSSFSheet numbers) {
    TalliedComparison comparison = facts.comparison();
    var columns =
        ComparisonChart.columns(
            ComparisonColumns.of(comparison, words),
            ComparisonColumns.LABEL,
            ComparisonColumns.SHARE,
            ComparisonColumns.DOWN,
            ComparisonColumns.UP);
    var levels = comparison.rows().stream().map(TalliedRow::levels).toList();
    for (Bars bars : bars(levels, comparison.factors())) {
      add(
          numbers,
          new ComparisonChart.Spot(
              bars.first() + 1,
              bars.last() + 1,
              columns,
              bars.cloth().isEmpty()
                  ? words.say("sheet.chart.title")
                  : words.say("sheet.chart.cloth-title", clean(bars.cloth())),
              words.say("sheet.chart.axis"),
              words.say("sheet.chart.series"),
              true));
    }
  }

  private void fair(XSSFSheet numbers) {
    Map<ComparisonChart.Range, Integer> columns =
        ComparisonChart.columns(FairColumns.of(words), "setting", "middle", "down", "up");
    int before = 1;
    for (FairFigures each : facts.findings().fair()) {
      Outcome outcome = each.question().outcome();
      String name = words.say("compare.outcome." + outcome.key());
      var levels = each.rows().stream().map(FairFigures.Row::levels).toList();
      for (Bars bars : bars(levels, each.factors())) {
        add(
            numbers,
            new ComparisonChart.Spot(
                before + bars.first(),
                before + bars.last(),
                columns,
                bars.cloth().isEmpty()
                    ? words.say("sheet.chart.fair-title", name)
                    : words.say("sheet.chart.fair-cloth-title", clean(bars.cloth()), name),
                outcome.isRate()
                    ? words.say("sheet.chart.axis")
                    : words.say("sheet.header.with-unit", name, FairColumns.unit(words, outcome)),
                name,
                outcome.isRate()));
      }
      before += levels.size();
    }
  }

  private String clean(String cloth) {
    return CellText.clean(facts.cover().apply(cloth));
  }

  /** The rows of one chart, from 0, both among them; the cloth is empty where none tells apart. */
  private record Bars(int first, int last, String cloth) {}

  /** No chart has bars of two cloths: settings are compared on one. */
  private static List<Bars> bars(List<List<String>> levels, List<Factor> factors) {
    int place = factors.indexOf(Factor.CLOTH);
    List<Bars> all = new ArrayList<>();
    int first = 0;
    for (int i = 0; i < levels.size(); i++) {
      String cloth = place < 0 ? "" : levels.get(i).get(place);
      boolean ends =
          i + 1 == levels.size()
              || i + 1 - first == MOST_BARS
              || (place >= 0 && !levels.get(i + 1).get(place).equals(cloth));
      if (ends) {
        all.add(new Bars(first, i, cloth));
        first = i + 1;
      }
    }
    return all;
  }

  private void add(XSSFSheet numbers, ComparisonChart.Spot spot) {
    if (drawn == MOST_CHARTS) {
      return;
    }
    ComparisonChart.draw(sheet, drawn * PAGE_ROWS + 2, numbers, spot);
    drawn++;
    sheet.setRowBreak(drawn * PAGE_ROWS - 1);
  }
}
