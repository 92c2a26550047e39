package walebook.paper;

import java.io.IOException;
import java.util.List;
import walebook.drawing.Drawing;
import walebook.drawing.Picture;
import walebook.drawing.Sketch;
import walebook.drawing.VerdictMark;
import walebook.words.Words;
import walebook.working.Verdict;

/** Sets things one below the other in a column, on to a new page where one is full. */
final class Flow {
  /** All four margins, mm: no printer's edge reaches that far. */
  static final double MARGIN = 14;

  private final Sheets sheets;
  private final double width;
  private final double top;
  private final double bottom;
  private double left;
  private Ink ink;
  private int page;
  private double y;
  // Where the second column of the first page begins, until the flow comes to it.
  private double nextLeft = Double.NaN;
  private double nextTop;

  Flow(Sheets sheets) throws IOException {
    this(sheets, MARGIN, sheets.widthMm() - 2 * MARGIN, MARGIN);
  }

  /** A column of a page: begins on the first page, which is made where there is none. */
  Flow(Sheets sheets, double left, double width, double top) throws IOException {
    this.sheets = sheets;
    this.left = left;
    this.width = width;
    this.top = MARGIN;
    this.bottom = sheets.heightMm() - MARGIN - 4;
    this.ink = sheets.count() == 0 ? sheets.page() : sheets.page(0);
    this.y = top;
  }

  /** Two columns of one width on the first page; what is more goes on to a new page. */
  static Flow columns(Sheets sheets, double gutterMm, double top) throws IOException {
    double width = (sheets.widthMm() - 2 * MARGIN - gutterMm) / 2;
    Flow flow = new Flow(sheets, MARGIN, width, top);
    flow.nextLeft = MARGIN + width + gutterMm;
    flow.nextTop = top;
    return flow;
  }

  Ink ink() {
    return ink;
  }

  Sheets sheets() {
    return sheets;
  }

  double y() {
    return y;
  }

  double left() {
    return left;
  }

  double width() {
    return width;
  }

  double room() {
    return bottom - y;
  }

  /** Which page it is on, from 0. */
  int page() {
    return page;
  }

  void skip(double mm) {
    y += mm;
  }

  /** Goes on to a new column or page unless so much room is left; true when it did. */
  boolean need(double mm) throws IOException {
    if (y + mm <= bottom || y <= top + 0.01) {
      return false;
    }
    if (!Double.isNaN(nextLeft)) {
      left = nextLeft;
      y = nextTop;
      nextLeft = Double.NaN;
      return true;
    }
    page++;
    ink = page < sheets.count() ? sheets.page(page) : sheets.page();
    y = top;
    return true;
  }

  void text(String text, Type type) throws IOException {
    indented(text, type, 0);
  }

  void indented(String text, Type type, double indentMm) throws IOException {
    for (String line : Wrap.lines(ink, text, type, width - indentMm)) {
      need(type.leadingMm());
      ink.text(left + indentMm, y + type.ascentMm(), line, type);
      y += type.leadingMm();
    }
  }

  /** A heading stays with what follows it. */
  void heading(String text, Type type) throws IOException {
    need(type.leadingMm() + 12);
    skip(type.points() * 0.12);
    text(text, type);
  }

  /** A point of a list: its mark, and the text beside it. */
  void item(String mark, String text, Type type) throws IOException {
    double indent = Math.max(Ink.mm(type.points() * 1.1), ink.width(mark + " ", type));
    need(type.leadingMm());
    ink.text(left, y + type.ascentMm(), mark, type);
    indented(text, type, indent);
  }

  /** A verdict's mark with its word, and the text behind it. */
  void verdict(Verdict verdict, String text, Words words, Type type) throws IOException {
    double side = Ink.mm(type.points() * 1.05);
    need(type.leadingMm());
    mark(ink, verdict, words, left, y + (type.leadingMm() - side) / 2, side);
    indented(text, type, side + 1.2);
  }

  static void mark(Ink ink, Verdict verdict, Words words, double x, double y, double side)
      throws IOException {
    Picture picture = new VerdictMark(verdict).at(22, words);
    PictureInk.draw(ink, picture, x, y, side / picture.width());
  }

  void rule(double wide) throws IOException {
    need(1.5);
    ink.line(left, y + 0.6, left + width, y + 0.6, wide);
    y += 1.5;
  }

  /** A drawing with its labels at 8 points, no wider than the column. */
  void drawing(Drawing drawing, Words words, double widthMm) throws IOException {
    Placed placed = place(drawing, words, Math.min(widthMm, width));
    need(placed.heightMm());
    PictureInk.draw(ink, placed.picture(), left, y, placed.scale());
    y += placed.heightMm();
  }

  /** A picture at the scale it is to be drawn at. */
  record Placed(Picture picture, double scale) {
    double heightMm() {
      return picture.height() * scale;
    }

    double widthMm() {
      return picture.width() * scale;
    }
  }

  /** Labels at 8 points where the width allows; never wider than it. */
  static Placed place(Drawing drawing, Words words, double widthMm) {
    double wanted = Ink.mm(Type.SMALL.points()) / Sketch.LABEL;
    Picture picture = drawing.at(widthMm / wanted, words);
    return new Placed(picture, Math.min(wanted, widthMm / picture.width()));
  }

  /** Small print at the foot of every page, with the page's number. */
  static void feet(Sheets sheets, String says, Words words) throws IOException {
    Type type = Type.SMALL;
    double y = sheets.heightMm() - MARGIN + 2;
    for (int i = 0; i < sheets.count(); i++) {
      Ink ink = sheets.page(i);
      String number = words.say("paper.page", i + 1, sheets.count());
      double wide = ink.width(number, type);
      double room = sheets.widthMm() - 2 * MARGIN - wide - 4;
      List<String> line = Wrap.lines(ink, says, type, room, 1);
      ink.text(MARGIN, y, line.get(0), type);
      ink.text(sheets.widthMm() - MARGIN - wide, y, number, type);
    }
  }
}
