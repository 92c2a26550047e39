package walebook.sheet;

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

/** The charts of both comparisons, one a page: cloth by cloth, then outcome by outcome. */
final class ChartSheet {
  /** More bars than these cannot be read on one page. */
  private static final int MOST_BARS = 20;

  /** More pages than these nobody turns; the tables have every setting. */
  private static final int MOST_CHARTS = 20;

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
    List<TalliedRow> rows = comparison.rows();
    boolean byCloth = comparison.factors().indexOf(Factor.CLOTH) == 0;
    for (int first = 0; first < rows.size(); ) {
      String cloth = byCloth ? rows.get(first).levels().get(0) : "";
      int next = first + 1;
      while (next < rows.size()
          && next - first < MOST_BARS
          && (!byCloth || rows.get(next).levels().get(0).equals(cloth))) {
        next++;
      }
      String title =
          cloth.isEmpty()
              ? words.say("sheet.chart.title")
              : words.say("sheet.chart.cloth-title", CellText.clean(facts.cover().apply(cloth)));
      add(
          numbers,
          new ComparisonChart.Spot(
              first + 1,
              next,
              columns,
              title,
              words.say("sheet.chart.axis"),
              words.say("sheet.chart.series"),
              true));
      first = next;
    }
  }

  private void fair(XSSFSheet numbers) {
    Map<ComparisonChart.Range, Integer> columns =
        ComparisonChart.columns(FairColumns.of(words), "setting", "middle", "down", "up");
    int first = 1;
    for (FairFigures each : facts.findings().fair()) {
      Outcome outcome = each.question().outcome();
      String name = words.say("compare.outcome." + outcome.key());
      int rows = each.rows().size();
      if (rows > 0) {
        add(
            numbers,
            new ComparisonChart.Spot(
                first,
                first + Math.min(rows, MOST_BARS) - 1,
                columns,
                words.say("sheet.chart.fair-title", name),
                outcome.isRate()
                    ? words.say("sheet.chart.axis")
                    : words.say("sheet.header.with-unit", name, FairColumns.unit(words, outcome)),
                name,
                outcome.isRate()));
      }
      first += rows;
    }
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
