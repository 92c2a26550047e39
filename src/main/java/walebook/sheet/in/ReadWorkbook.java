package walebook.sheet.in;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

/**
 * Reads workbooks (ECMA-376), streamed. Macros are not run, links to other files not followed,
 * formulas not worked out: a formula's cell has the value that was saved with it.
 */
final class ReadWorkbook {
  private final Path file;

  ReadWorkbook(Path file) {
    this.file = file;
  }

  /** What is done with an open workbook. */
  private interface Reading<T> {
    T run(OPCPackage parts, XSSFReader reader, WorkbookSheets sheets)
        throws IOException, SAXException, OpenXML4JException, ParserConfigurationException;
  }

  Answer<InFile> open() {
    return reading(
        (parts, reader, sheets) ->
            new InFile(file, new ArrayList<>(sheets.relations().keySet()), remarks(parts)));
  }

  Answer<InGrid> read(String sheet) {
    return reading(
        (parts, reader, sheets) -> {
          String relation = sheets.relations().get(sheet);
          if (relation == null) {
            String known = String.join(", ", sheets.relations().keySet());
            throw new Stopped("in.no-sheet", place(), sheet, known);
          }
          SheetCells cells =
              new SheetCells(
                  new ReadOnlySharedStringsTable(parts, false),
                  reader.getStylesTable(),
                  sheets.from1904());
          SheetRows rows = new SheetRows(sheet, cells);
          try (InputStream in = reader.getSheet(relation)) {
            parse(in, rows);
          }
          List<Problem> remarks = new ArrayList<>(remarks(parts));
          remarks.addAll(rows.remarks());
          return new InGrid(sheet, rows.rows(), remarks);
        });
  }

  /** Whatever a damaged file makes a library throw, the file is damaged. */
  private <T> Answer<T> reading(Reading<T> work) {
    try {
      GuardZip.check(file);
      OPCPackage parts = OPCPackage.open(file.toFile(), PackageAccess.READ);
      try {
        XSSFReader reader = new XSSFReader(parts);
        WorkbookSheets sheets = new WorkbookSheets();
        try (InputStream in = reader.getWorkbookData()) {
          parse(in, sheets);
        }
        if (sheets.relations().isEmpty()) {
          throw new Stopped("in.no-sheets", place(), "", "");
        }
        return Answer.good(work.run(parts, reader, sheets));
      } finally {
        parts.revert();
      }
    } catch (Stopped e) {
      return Answer.bad(e.problem());
    } catch (IOException
        | SAXException
        | OpenXML4JException
        | ParserConfigurationException
        | RuntimeException e) {
      return Answer.bad(Problem.refuse("in.damaged", place(), shortened(e), ""));
    }
  }

  private static void parse(InputStream in, DefaultHandler into)
      throws SAXException, IOException, ParserConfigurationException {
    XMLReader xml = XMLHelper.newXMLReader();
    xml.setContentHandler(into);
    xml.setErrorHandler(into);
    xml.parse(new InputSource(in));
  }

  private List<Problem> remarks(OPCPackage parts) throws OpenXML4JException {
    List<Problem> remarks = new ArrayList<>();
    boolean macros = false;
    boolean links = false;
    for (PackagePart each : parts.getParts()) {
      String name = each.getPartName().getName().toLowerCase(Locale.ROOT);
      macros |= name.endsWith("vbaproject.bin") || name.contains("/macrosheets/");
      links |= name.contains("/externallinks/");
    }
    if (macros) {
      remarks.add(Problem.ask("in.macros", place(), "", ""));
    }
    if (links) {
      remarks.add(Problem.ask("in.links", place(), "", ""));
    }
    return remarks;
  }

  private Place place() {
    return new Place.Path(String.valueOf(file.getFileName()));
  }

  static String shortened(Throwable fault) {
    String says = String.valueOf(fault.getMessage()).strip();
    return says.length() > 120 ? says.substring(0, 120) + "…" : says;
  }
}
