package walebook.sheet;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import walebook.words.Words;
import walebook.working.Message;

/** The first sheet: what this is, how much of it there is, and what was found. */
final class TermSheet {
  private static final int LABELS = 24;
  private static final int VALUES = 96;

  /** Not every program makes a row as high as its words need. */
  private static final float LINE_POINTS = 15;

  private static final int READ_ACROSS = 96;

  private final XSSFSheet sheet;
  private final Pen pen;
  private final Words words;
  private int next;

  private TermSheet(XSSFSheet sheet, Pen pen, Words words) {
    this.sheet = sheet;
    this.pen = pen;
    this.words = words;
  }

  static void write(
      XSSFSheet sheet, TermFacts facts, List<SheetPart<?>> parts, Pen pen, Words words) {
    new TermSheet(sheet, pen, words).write(facts, parts);
  }

  private void write(TermFacts facts, List<SheetPart<?>> parts) {
    sheet.setColumnWidth(0, 256 * LABELS);
    sheet.setColumnWidth(1, 256 * VALUES);
    sheet.setDisplayGridlines(false);
    Row top = row();
    top.setHeightInPoints(2 * LINE_POINTS);
    pen.own(top, 0, pen.styles().title(), words.say("sheet.title"));
    for (Column<TermFacts> line : TermLines.all(words)) {
      Value value = line.value().apply(facts);
      if (!(value instanceof Value.Nothing)) {
        Row row = row();
        pen.own(row, 0, pen.styles().label(), line.title(words));
        pen.write(row, 1, line.format(), value);
        if (!(value instanceof Value.Text)) {
          row.getCell(1).setCellStyle(pen.styles().left(line.format()));
        }
      }
    }
    block("sheet.term.found-title", found(facts));
    block("sheet.term.sheets-title", sheets(facts, parts));
    PrintSetup.onePage(sheet);
  }

  private void block(String title, List<Message> lines) {
    next++;
    pen.own(row(), 0, pen.styles().label(), words.say(title));
    for (Message line : lines) {
      String says = words.say(line);
      Row row = row();
      row.setHeightInPoints(LINE_POINTS * (1 + says.length() / READ_ACROSS));
      pen.words(row, 1, Format.LONG_TEXT, says);
    }
  }

  /** What the pieces say and what is open about readings of cloths, the caution last. */
  private List<Message> found(TermFacts facts) {
    List<Message> found = new ArrayList<>(Findings.of(facts, words));
    List<Message> readings = new ArrayList<>();
    if (facts.readingsAside() > 0) {
      readings.add(Message.of("sheet.found.readings-aside", String.valueOf(facts.readingsAside())));
    }
    int odd = facts.findings().unseenReadings();
    if (odd > 0) {
      readings.add(Message.of("sheet.found.odd-readings", String.valueOf(odd)));
    }
    found.addAll(found.size() - 1, readings);
    return found;
  }

  private static List<Message> sheets(TermFacts facts, List<SheetPart<?>> parts) {
    List<Message> lines = new ArrayList<>();
    if (ChartSheet.isWanted(facts)) {
      lines.add(Message.of("sheet.term.about-charts"));
    }
    parts.forEach(each -> lines.add(Message.of(each.about())));
    lines.add(Message.of("sheet.term.about-columns"));
    if (facts.choice().studentSheets()) {
      lines.add(Message.of("sheet.term.about-students"));
    }
    return lines;
  }

  private Row row() {
    return sheet.createRow(next++);
  }
}
