package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import walebook.act.book.MakeDemoBook;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.book.open.SqliteFiles;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/** The workbook from the command line, read back by Apache POI and held against the book. */
class ExportCommandTest {
  @TempDir Path folder;

  private String smallBook() {
    Path file = folder.resolve("class.walebook");
    try (Classroom room = Classroom.in(file)) {
      room.book.pieces().add(room.piece(SeamEnd.GAVE, 148));
      room.book.pieces().add(room.piece(SeamEnd.HELD, 160));
    }
    return file.toString();
  }

  private static Ran export(String book, Path to, String... more) {
    List<String> args = new ArrayList<>(List.of("export", "--to", to.toString()));
    args.addAll(List.of(more));
    return Ran.on(Path.of(book), args.toArray(String[]::new));
  }

  private static String done(Ran ran) {
    assertThat(ran.exit()).as(ran.err()).isZero();
    return ran.out();
  }

  private static String refused(Ran ran) {
    assertThat(ran.exit()).as(ran.out()).isEqualTo(Exit.REFUSED.code());
    return ran.err();
  }

  private static String text(XSSFWorkbook workbook) {
    StringBuilder text = new StringBuilder();
    DataFormatter shown = new DataFormatter();
    for (Sheet sheet : workbook) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          text.append(shown.formatCellValue(cell)).append('\n');
        }
      }
    }
    return text.toString();
  }

  private static Set<String> codes(XSSFWorkbook workbook) {
    Set<String> codes = new TreeSet<>();
    Sheet pieces = workbook.getSheet("Pieces");
    for (int i = 1; i <= pieces.getLastRowNum(); i++) {
      codes.add(pieces.getRow(i).getCell(0).getStringCellValue().replaceAll("[^A-Z0-9]", ""));
    }
    return codes;
  }

  @ParameterizedTest
  @CsvSource({
    "t.xlsx, Workbook written",
    "t.csv, Table of test pieces written as CSV",
    "t.zip, Zip of CSV tables written",
    "t.json, All tables written as JSON"
  })
  void whatWasWrittenIsSaid(String name, String says) {
    Path file = folder.resolve(name);
    assertThat(done(export(smallBook(), file))).startsWith(says + ": ").contains(name);
    assertThat(file).isNotEmptyFile();
  }

  private static void holdsWhatTheBookHolds(Path workbook, Path file) throws IOException {
    try (Book book = new SqliteFiles().open(file, Classroom.CLOCK).value();
        XSSFWorkbook read = new XSSFWorkbook(workbook.toString())) {
      List<TestPiece> pieces = book.pieces().list(PieceFilter.ALL);
      assertThat(pieces).isNotEmpty();
      assertThat(read.getSheet("Pieces").getLastRowNum()).isEqualTo(pieces.size());
      assertThat(codes(read))
          .isEqualTo(new TreeSet<>(pieces.stream().map(TestPiece::code).toList()));
      assertThat(read.getSheet("Progress").getLastRowNum()).isEqualTo(book.students().all().size());
    }
  }

  @Test
  void writesWhatTheBookHoldsAndSaysWhere() throws IOException {
    String book = smallBook();
    Path file = folder.resolve("term.xlsx");
    assertThat(done(export(book, file, "--names")))
        .contains(file.toString())
        .contains("Test pieces: 2");
    holdsWhatTheBookHolds(file, Path.of(book));
    try (XSSFWorkbook read = new XSSFWorkbook(file.toString())) {
      assertThat(text(read)).contains("Ada Pier");
    }
  }

  @Test
  void codesStandForNamesUnlessNamesAreAskedFor() throws IOException {
    Path file = folder.resolve("term.xlsx");
    done(export(smallBook(), file));
    try (XSSFWorkbook read = new XSSFWorkbook(file.toString())) {
      assertThat(text(read)).contains("S01").doesNotContain("Ada Pier");
    }
    String book = folder.resolve("class.walebook").toString();
    assertThat(refused(export(book, file, "--names", "--codes")))
        .contains("--names")
        .contains("--codes");
  }

  @Test
  void thePreviewWritesNothing() throws IOException {
    Path book = Path.of(smallBook());
    JsonNode json = Ran.on(book, "export-preview", "--json").json();
    assertThat(json.get("people").toString()).contains("S01").doesNotContain("Ada");
    assertThat(json.get("sheets").get(2).get("name").asString()).isEqualTo("Pieces");
    assertThat(json.get("sheets").get(2).get("rows").asInt()).isEqualTo(2);
    assertThat(json.get("sheets").get(2).get("files")).hasSize(4);
    List<String> besides = new ArrayList<>();
    json.get("besides").forEach(each -> besides.add(each.get("says").asString()));
    assertThat(besides)
        .anyMatch(each -> each.startsWith("Term,"))
        .anyMatch(each -> each.startsWith("Columns,"));
    assertThat(done(Ran.on(book, "export-preview")))
        .containsPattern("Pieces +2 +.xlsx .csv .zip .json")
        .containsPattern("Term, the summary of it all +.xlsx .zip")
        .containsPattern("Columns, what each column means +.xlsx .zip")
        .contains("Pieces")
        .contains("Students by code: S01")
        .contains("No student’s or tutor’s name was found");
  }

  @Test
  void theEndingSaysTheKindOfFile() throws IOException {
    String book = smallBook();
    Path csv = folder.resolve("pieces.csv");
    done(export(book, csv, "--column", "student", "--column", "grade"));
    assertThat(Files.readString(csv)).startsWith("Piece,Student,");
    assertThat(Files.readAllLines(csv)).hasSize(3);
    Path json = folder.resolve("term.json");
    done(export(book, json));
    assertThat(Files.readString(json)).startsWith("{\"format\":\"walebook-term\"");
    assertThat(refused(export(book, csv, "--column", "girth", "--replace")))
        .contains("girth")
        .contains("seam-stretch");
  }

  @Test
  void writesCodesInThePlaceOfNames() throws IOException {
    Path file = folder.resolve("term.xlsx");
    assertThat(done(export(smallBook(), file, "--class", "monday", "--codes", "--json")))
        .contains("\"names\"")
        .contains("false");
    try (XSSFWorkbook read = new XSSFWorkbook(file.toString())) {
      assertThat(text(read)).contains("S01").doesNotContain("Ada Pier").doesNotContain("Bo Quay");
    }
  }

  @Test
  void sparesAFileUnlessItMayReplaceIt() throws IOException {
    String book = smallBook();
    Path file = Files.writeString(folder.resolve("term.xlsx"), "as it was");
    assertThat(refused(export(book, file))).contains("term.xlsx").contains("--replace");
    assertThat(file).hasContent("as it was");
    done(export(book, file, "--replace"));
    holdsWhatTheBookHolds(file, Path.of(book));
  }

  @Test
  void neverWritesOverABook() throws IOException {
    String book = smallBook();
    byte[] before = Files.readAllBytes(Path.of(book));
    assertThat(refused(export(book, Path.of(book), "--replace"))).contains(".xlsx");
    assertThat(Path.of(book)).hasBinaryContent(before);
  }

  @Test
  void saysWhatIsInTheWay() {
    String book = smallBook();
    assertThat(refused(export(book, folder.resolve("gone").resolve("term.xlsx")))).contains("gone");
    assertThat(refused(export(book, folder.resolve("t.xlsx"), "--class", "x")))
        .contains("Monday evening");
  }

  @Test
  void withoutAScreenTheDemosWorkbookLiesBesideItsBook() throws IOException {
    Path demo = folder.resolve("demo");
    String said = done(Ran.at("", terminal -> WithoutScreen.run(terminal, demo)));
    Path workbook = demo.resolve(WithoutScreen.WORKBOOK);
    assertThat(said).contains(workbook.toString());
    holdsWhatTheBookHolds(workbook, demo.resolve(MakeDemoBook.FILE));
    Files.writeString(workbook, "older");
    done(Ran.at("", terminal -> WithoutScreen.run(terminal, demo)));
    holdsWhatTheBookHolds(workbook, demo.resolve(MakeDemoBook.FILE));
  }
}
