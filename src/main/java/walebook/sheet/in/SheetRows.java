package walebook.sheet.in;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;
import walebook.problem.Place;
import walebook.problem.Problem;

/** Takes the rows of a sheet as they stream by. */
final class SheetRows extends DefaultHandler {
  private final String sheet;
  private final SheetCells cells;
  private final List<InRow> rows = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private final StringBuilder value = new StringBuilder();
  private final StringBuilder inline = new StringBuilder();
  private final SheetRemarks remarks;

  private List<InCell> row = new ArrayList<>();
  private int rowNumber;
  private int column = -1;
  private String type = "";
  private String style = "";
  private boolean formula;
  private boolean gathers;
  private int phonetic;
  private long held;

  SheetRows(String sheet, SheetCells cells) {
    this.sheet = sheet;
    this.cells = cells;
    this.remarks = new SheetRemarks(sheet);
  }

  List<InRow> rows() {
    return rows;
  }

  List<Problem> remarks() {
    return remarks.all();
  }

  @Override
  public void startElement(String uri, String local, String qualified, Attributes attributes)
      throws Stopped {
    switch (local) {
      case "row" -> startRow(attributes);
      case "c" -> startCell(attributes);
      case "f" -> formula = true;
      case "rPh" -> phonetic++;
      case "v", "t" -> {
        text.setLength(0);
        gathers = phonetic == 0;
      }
      case "mergeCell" -> remarks.merged(attributes.getValue("ref"));
      default -> {
        // Widths, filters, charts and the like say nothing about values.
      }
    }
  }

  @Override
  public void characters(char[] signs, int start, int length) throws Stopped {
    if (gathers) {
      text.append(signs, start, length);
      if (text.length() > 4 * InLimits.SIGNS) {
        throw new Stopped("in.cell-too-long", here(), "", String.valueOf(InLimits.SIGNS));
      }
    }
  }

  @Override
  public void endElement(String uri, String local, String qualified) throws Stopped {
    switch (local) {
      case "v" -> end(value);
      case "t" -> end(inline);
      case "rPh" -> phonetic = Math.max(0, phonetic - 1);
      case "c" -> endCell();
      case "row" -> endRow();
      default -> {
        // As above.
      }
    }
  }

  private void end(StringBuilder into) {
    if (gathers) {
      into.append(text);
    }
    gathers = false;
  }

  private void startRow(Attributes attributes) throws Stopped {
    String number = attributes.getValue("r");
    int next = number == null ? rowNumber + 1 : whole(number);
    if (next > InLimits.ROWS) {
      throw new Stopped(
          "in.too-many-rows", sheetPlace(), String.valueOf(next), String.valueOf(InLimits.ROWS));
    }
    if (next <= rowNumber) {
      throw new Stopped("in.damaged", sheetPlace(), String.valueOf(number), "");
    }
    rowNumber = next;
    column = -1;
    row = new ArrayList<>();
  }

  private void startCell(Attributes attributes) throws Stopped {
    String at = attributes.getValue("r");
    column = at == null ? column + 1 : column(at);
    type = given(attributes, "t");
    style = given(attributes, "s");
    formula = false;
    gathers = false;
    value.setLength(0);
    inline.setLength(0);
  }

  private void endCell() throws Stopped {
    InCell cell = cells.of(type, style, value.toString(), inline.toString(), formula);
    if (cell.isEmpty()) {
      return;
    }
    if (column >= InLimits.COLUMNS) {
      throw new Stopped(
          "in.too-many-columns", here(), InGrid.letters(column), String.valueOf(InLimits.COLUMNS));
    }
    if (cell.text().length() > InLimits.SIGNS) {
      throw new Stopped("in.cell-too-long", here(), "", String.valueOf(InLimits.SIGNS));
    }
    remarks.met(cell, rowNumber, column);
    while (row.size() <= column) {
      row.add(InCell.EMPTY);
    }
    row.set(column, cell);
  }

  private void endRow() throws Stopped {
    held += row.size();
    if (held > InLimits.CELLS) {
      throw new Stopped(
          "in.too-many-cells",
          sheetPlace(),
          String.valueOf(rowNumber),
          String.valueOf(InLimits.CELLS));
    }
    if (!row.isEmpty()) {
      rows.add(new InRow(rowNumber, row));
    }
    row = new ArrayList<>();
  }

  private static String given(Attributes attributes, String name) {
    String value = attributes.getValue(name);
    return value == null ? "" : value;
  }

  private int column(String at) throws Stopped {
    int column = 0;
    int i = 0;
    for (; i < at.length() && at.charAt(i) >= 'A' && at.charAt(i) <= 'Z' && i < 4; i++) {
      column = column * 26 + at.charAt(i) - 'A' + 1;
    }
    if (i == 0 || i == 4) {
      throw new Stopped("in.damaged", sheetPlace(), at, "");
    }
    return column - 1;
  }

  private int whole(String number) throws Stopped {
    if (!number.matches("[0-9]{1,9}") || Integer.parseInt(number) < 1) {
      throw new Stopped("in.damaged", sheetPlace(), number, "");
    }
    return Integer.parseInt(number);
  }

  private Place here() {
    return new Place.Cell(sheet, rowNumber, InGrid.letters(Math.max(0, column)));
  }

  private Place sheetPlace() {
    return new Place.Path(sheet);
  }
}
