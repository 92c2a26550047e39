package walebook.sheet;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTErrBars;
import org.openxmlformats.schemas.drawingml.x2006.chart.STErrBarType;
import org.openxmlformats.schemas.drawingml.x2006.chart.STErrValType;
import walebook.compare.FairFigures;
import walebook.compare.Outcome;
import walebook.compare.TalliedRow;
import walebook.words.Words;

/**
 * The native chart beside the comparison: one bar a setting for the share that held, with its
 * interval. Ground, ink, fill and line are all set, since some programs draw nothing by default.
 */
final class ComparisonChart {
  private static final XDDFColor PAPER = XDDFColor.from(PresetColor.WHITE);
  private static final XDDFColor INK = XDDFColor.from(rgb(0x1F2430));
  private static final XDDFColor BAR = XDDFColor.from(rgb(0x9DB4F2));
  private static final XDDFColor EDGE = XDDFColor.from(rgb(0x2F4B8F));
  private static final XDDFColor RULE = XDDFColor.from(rgb(0xDCD5C9));
  private static final int COLUMNS_WIDE = 12;
  private static final int LEAST_ROWS = 16;

  /** More bars than these cannot be read; the table has them all. */
  private static final int MOST_SETTINGS = 60;

  private final XSSFSheet sheet;
  private final Spot spot;

  /**
   * Where a chart's numbers stand and what it says.
   *
   * @param first the first row of the numbers, from 0
   * @param last the last of them
   * @param left the column it is drawn from
   * @param top the row it is drawn from
   */
  private record Spot(
      int first,
      int last,
      Map<Range, Integer> columns,
      String title,
      String axis,
      String series,
      boolean percentOfAll,
      int left,
      int top) {
    int high() {
      return Math.max(LEAST_ROWS, (last - first + 1) * 3 / 2 + 4);
    }
  }

  /** What a chart needs of each setting. */
  private enum Range {
    LABEL,
    MIDDLE,
    DOWN,
    UP
  }

  private ComparisonChart(XSSFSheet sheet, Spot spot) {
    this.sheet = sheet;
    this.spot = spot;
  }

  /** Draws the share held of every setting to the right of a filled table. */
  static void ofSettings(XSSFSheet sheet, List<Column<TalliedRow>> columns, int rows, Words words) {
    Map<Range, Integer> at =
        columns(
            columns,
            ComparisonColumns.LABEL,
            ComparisonColumns.SHARE,
            ComparisonColumns.DOWN,
            ComparisonColumns.UP);
    new ComparisonChart(
            sheet,
            new Spot(
                1,
                Math.min(rows, MOST_SETTINGS),
                at,
                words.say("sheet.chart.title"),
                words.say("sheet.chart.axis"),
                words.say("sheet.chart.series"),
                true,
                columns.size() + 1,
                1))
        .draw();
  }

  /** Draws one chart for each outcome, one below the other. */
  static void ofFair(
      XSSFSheet sheet, List<Column<FairLine>> columns, List<FairFigures> all, Words words) {
    Map<Range, Integer> at = columns(columns, "setting", "middle", "down", "up");
    int first = 1;
    int top = 1;
    for (FairFigures each : all) {
      Outcome outcome = each.question().outcome();
      String name = words.say("compare.outcome." + outcome.key());
      Spot spot =
          new Spot(
              first,
              first + Math.min(each.rows().size(), MOST_SETTINGS) - 1,
              at,
              words.say("sheet.chart.fair-title", name),
              name,
              name,
              outcome.isRate(),
              columns.size() + 1,
              top);
      new ComparisonChart(sheet, spot).draw();
      first += each.rows().size();
      top += spot.high() + 2;
    }
  }

  private static <T> Map<Range, Integer> columns(
      List<Column<T>> columns, String label, String middle, String down, String up) {
    Map<Range, Integer> at = new EnumMap<>(Range.class);
    at.put(Range.LABEL, place(columns, label));
    at.put(Range.MIDDLE, place(columns, middle));
    at.put(Range.DOWN, place(columns, down));
    at.put(Range.UP, place(columns, up));
    return at;
  }

  private static <T> int place(List<Column<T>> columns, String key) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).key().equals(key)) {
        return i;
      }
    }
    throw new IllegalStateException("no column is called " + key);
  }

  private void draw() {
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    int left = spot.left();
    XSSFChart chart =
        drawing.createChart(
            drawing.createAnchor(
                0, 0, 0, 0, left, spot.top(), left + COLUMNS_WIDE, spot.top() + spot.high()));
    chart.setTitleText(spot.title());
    chart.setTitleOverlay(false);
    chart.displayBlanksAs(DisplayBlanks.GAP);
    shape(chart.getOrAddShapeProperties(), PAPER, RULE);
    XDDFCategoryAxis settings = chart.createCategoryAxis(AxisPosition.LEFT);
    settings.setOrientation(AxisOrientation.MAX_MIN);
    ink(settings.getOrAddTextProperties());
    XDDFValueAxis share = chart.createValueAxis(AxisPosition.BOTTOM);
    share.setTitle(spot.axis());
    if (spot.percentOfAll()) {
      share.setMinimum(0);
      share.setMaximum(100);
      share.setMajorUnit(20);
    }
    share.setNumberFormat("0");
    share.setCrosses(AxisCrosses.MAX);
    settings.setTickLabelPosition(AxisTickLabelPosition.LOW);
    ink(share.getOrAddTextProperties());
    share.getOrAddMajorGridProperties().setLineProperties(line(RULE, 0.75));
    XDDFBarChartData bars = (XDDFBarChartData) chart.createData(ChartTypes.BAR, settings, share);
    bars.setBarDirection(BarDirection.BAR);
    bars.setGapWidth(60);
    bars.setVaryColors(false);
    XDDFBarChartData.Series series =
        (XDDFBarChartData.Series)
            bars.addSeries(
                XDDFDataSourcesFactory.fromStringCellRange(sheet, range(Range.LABEL)),
                numbers(Range.MIDDLE));
    series.setTitle(spot.series());
    XDDFShapeProperties look = new XDDFShapeProperties();
    shape(look, BAR, EDGE);
    series.setShapeProperties(look);
    intervals(series.getCTBarSer().addNewErrBars());
    chart.plot(bars);
  }

  /** By hand: the library's own error bars cannot be made anew, only read. */
  private void intervals(CTErrBars intervals) {
    intervals.addNewErrBarType().setVal(STErrBarType.BOTH);
    intervals.addNewErrValType().setVal(STErrValType.CUST);
    intervals.addNewNoEndCap().setVal(false);
    intervals.addNewPlus().addNewNumRef().setF(numbers(Range.UP).getDataRangeReference());
    intervals.addNewMinus().addNewNumRef().setF(numbers(Range.DOWN).getDataRangeReference());
    XDDFShapeProperties look = new XDDFShapeProperties(intervals.addNewSpPr());
    look.setLineProperties(line(INK, 1.25));
  }

  private XDDFNumericalDataSource<Double> numbers(Range range) {
    return XDDFDataSourcesFactory.fromNumericCellRange(sheet, range(range));
  }

  private CellRangeAddress range(Range range) {
    int column = Objects.requireNonNull(spot.columns().get(range));
    return new CellRangeAddress(spot.first(), spot.last(), column, column);
  }

  private static void shape(XDDFShapeProperties shape, XDDFColor fill, XDDFColor edge) {
    shape.setFillProperties(new XDDFSolidFillProperties(fill));
    shape.setLineProperties(line(edge, 0.75));
  }

  private static void ink(org.apache.poi.xddf.usermodel.text.XDDFRunProperties text) {
    text.setFillProperties(new XDDFSolidFillProperties(INK));
  }

  private static XDDFLineProperties line(XDDFColor color, double points) {
    XDDFLineProperties line = new XDDFLineProperties(new XDDFSolidFillProperties(color));
    line.setWidth(points);
    return line;
  }

  private static byte[] rgb(int color) {
    return new byte[] {(byte) (color >> 16), (byte) (color >> 8), (byte) color};
  }
}
