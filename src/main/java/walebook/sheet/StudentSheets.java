package walebook.sheet;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import walebook.record.PhotoInfo;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.words.Words;

/** One sheet a student: their pieces, a few columns of each, with small photos beside. */
final class StudentSheets {
  /** What fits on a page beside the photos. */
  private static final Set<String> COLUMNS =
      Set.of(
          "code",
          "lesson",
          "sewn-on",
          "cloth",
          "stitch-name",
          "dial-width",
          "end",
          "seam-stretch",
          "edge-change",
          "grade",
          "outcome",
          "remark");

  /** Of the 31 signs of a sheet's name, those left beside a number. */
  private static final int LONGEST = 26;

  private static final int HEADER_ROW = 2;
  private static final int PHOTO_WIDTH = 16;
  private static final int PHOTOS = 3;
  private static final float PHOTO_POINTS = 72;

  private final XSSFWorkbook workbook;
  private final TermFacts facts;
  private final Pen pen;
  private final Words words;
  private final List<Column<TestPiece>> columns;
  private final Set<String> taken = new HashSet<>();

  private StudentSheets(XSSFWorkbook workbook, TermFacts facts, Pen pen, Words words) {
    this.workbook = workbook;
    this.facts = facts;
    this.pen = pen;
    this.words = words;
    this.columns =
        facts.chosen(PieceColumns.all(facts.lookup(), words)).stream()
            .filter(each -> COLUMNS.contains(each.key()))
            .toList();
    workbook.forEach(sheet -> taken.add(sheet.getSheetName().toLowerCase(Locale.ROOT)));
  }

  static void write(XSSFWorkbook workbook, TermFacts facts, Pen pen, Words words) {
    StudentSheets all = new StudentSheets(workbook, facts, pen, words);
    facts.students().forEach(all::write);
  }

  private void write(Student student) {
    XSSFSheet sheet = workbook.createSheet(name(student));
    pen.own(sheet.createRow(0), 0, pen.styles().title(), facts.shown(student));
    Row header = sheet.createRow(HEADER_ROW);
    header.setHeightInPoints(2 * 15f);
    for (int i = 0; i < columns.size(); i++) {
      Format format = columns.get(i).format();
      pen.own(header, i, pen.styles().header(format, false), columns.get(i).title(words));
      sheet.setColumnWidth(i, 256 * Math.min(30, format.width()));
    }
    pen.own(header, columns.size(), pen.styles().header(false), words.say("sheet.student.photos"));
    for (int i = 0; i < PHOTOS; i++) {
      sheet.setColumnWidth(columns.size() + i, 256 * PHOTO_WIDTH);
    }
    int at = HEADER_ROW;
    for (TestPiece piece : facts.piecesOf().apply(student.id())) {
      Row row = sheet.createRow(++at);
      for (int i = 0; i < columns.size(); i++) {
        pen.write(row, i, columns.get(i).format(), columns.get(i).value().apply(piece));
      }
      photos(sheet, row, facts.photosOf().apply(piece.id()));
    }
    if (at == HEADER_ROW) {
      pen.own(sheet.createRow(++at), 0, pen.styles().label(), words.say("sheet.student.none"));
    }
    sheet.createFreezePane(1, HEADER_ROW + 1);
    sheet.setRepeatingRows(
        new org.apache.poi.ss.util.CellRangeAddress(HEADER_ROW, HEADER_ROW, -1, -1));
    PrintSetup.page(sheet, 1);
  }

  private void photos(XSSFSheet sheet, Row row, List<PhotoInfo> photos) {
    int column = columns.size();
    for (PhotoInfo each : photos.subList(0, Math.min(PHOTOS, photos.size()))) {
      row.setHeightInPoints(PHOTO_POINTS);
      boolean png = each.thumbnail().length > 0 && each.thumbnail()[0] == (byte) 0x89;
      int picture =
          workbook.addPicture(
              each.thumbnail(), png ? Workbook.PICTURE_TYPE_PNG : Workbook.PICTURE_TYPE_JPEG);
      double high = PHOTO_POINTS - 4;
      double wide = Math.min(110, high * each.widthPx() / each.heightPx());
      XSSFClientAnchor anchor =
          new XSSFClientAnchor(
              0,
              0,
              Units.toEMU(wide),
              Units.toEMU(wide * each.heightPx() / each.widthPx()),
              column,
              row.getRowNum(),
              column,
              row.getRowNum());
      anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
      sheet.createDrawingPatriarch().createPicture(anchor, picture);
      column++;
    }
  }

  /** Where to cut so that no sign of two halves is cut in two. */
  private static int whole(String name) {
    return Character.isHighSurrogate(name.charAt(LONGEST - 1)) ? LONGEST - 1 : LONGEST;
  }

  /** A sheet is called as the student is in the whole workbook. */
  private String name(Student student) {
    String plain = WorkbookUtil.createSafeSheetName(CellText.clean(facts.shown(student)).strip());
    String cut = plain.length() > LONGEST ? plain.substring(0, whole(plain)) : plain;
    String name = cut;
    for (int nth = 2; !taken.add(name.toLowerCase(Locale.ROOT)); nth++) {
      name = cut + " " + nth;
    }
    return name;
  }
}
