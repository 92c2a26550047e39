package walebook.sheet;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
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
import walebook.compare.SettingRow;
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

  private final XSSFSheet sheet;
  private final List<Column<SettingRow>> columns;
  private final int rows;

  private ComparisonChart(XSSFSheet sheet, List<Column<SettingRow>> columns, int rows) {
    this.sheet = sheet;
    this.columns = columns;
    this.rows = rows;
  }

  /** Draws it to the right of a filled table with at least one row. */
  static void draw(XSSFSheet sheet, List<Column<SettingRow>> columns, int rows, Words words) {
    new ComparisonChart(sheet, columns, rows).draw(words);
  }

  private void draw(Words words) {
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    int left = columns.size() + 1;
    int high = Math.max(LEAST_ROWS, rows * 3 / 2 + 4);
    XSSFChart chart =
        drawing.createChart(
            drawing.createAnchor(0, 0, 0, 0, left, 1, left + COLUMNS_WIDE, 1 + high));
    chart.setTitleText(words.say("sheet.chart.title"));
    chart.setTitleOverlay(false);
    chart.displayBlanksAs(DisplayBlanks.GAP);
    shape(chart.getOrAddShapeProperties(), PAPER, RULE);
    XDDFCategoryAxis settings = chart.createCategoryAxis(AxisPosition.LEFT);
    settings.setOrientation(AxisOrientation.MAX_MIN);
    ink(settings.getOrAddTextProperties());
    XDDFValueAxis share = chart.createValueAxis(AxisPosition.BOTTOM);
    share.setTitle(words.say("sheet.chart.axis"));
    share.setMinimum(0);
    share.setMaximum(100);
    share.setMajorUnit(20);
    share.setNumberFormat("0");
    share.setCrosses(AxisCrosses.MAX);
    ink(share.getOrAddTextProperties());
    share.getOrAddMajorGridProperties().setLineProperties(line(RULE, 0.75));
    XDDFBarChartData bars = (XDDFBarChartData) chart.createData(ChartTypes.BAR, settings, share);
    bars.setBarDirection(BarDirection.BAR);
    bars.setGapWidth(60);
    bars.setVaryColors(false);
    XDDFBarChartData.Series series =
        (XDDFBarChartData.Series)
            bars.addSeries(
                XDDFDataSourcesFactory.fromStringCellRange(sheet, range(ComparisonColumns.LABEL)),
                numbers(ComparisonColumns.SHARE));
    series.setTitle(words.say("sheet.chart.series"));
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
    intervals
        .addNewPlus()
        .addNewNumRef()
        .setF(numbers(ComparisonColumns.UP).getDataRangeReference());
    intervals
        .addNewMinus()
        .addNewNumRef()
        .setF(numbers(ComparisonColumns.DOWN).getDataRangeReference());
    XDDFShapeProperties look = new XDDFShapeProperties(intervals.addNewSpPr());
    look.setLineProperties(line(INK, 1.25));
  }

  private XDDFNumericalDataSource<Double> numbers(String key) {
    return XDDFDataSourcesFactory.fromNumericCellRange(sheet, range(key));
  }

  private CellRangeAddress range(String key) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).key().equals(key)) {
        return new CellRangeAddress(1, rows, i, i);
      }
    }
    throw new IllegalStateException("no column is called " + key);
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
