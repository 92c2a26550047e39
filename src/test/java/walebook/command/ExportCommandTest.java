package walebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.MakeDemoBook;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.book.open.SqliteFiles;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;
import walebook.words.Words;

/** The workbook from the command line, read back by Apache POI and held against the book. */
class ExportCommandTest {
  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final Terminal terminal =
      new Terminal(
          new BufferedReader(new StringReader("")),
          new PrintStream(out, true, StandardCharsets.UTF_8),
          new PrintStream(err, true, StandardCharsets.UTF_8),
          Words.english(),
          Classroom.CLOCK,
          new Random(5));

  private String smallBook() {
    Path file = folder.resolve("class.walebook");
    try (Classroom room = Classroom.in(file)) {
      room.book.pieces().add(room.piece(SeamEnd.GAVE, 148));
      room.book.pieces().add(room.piece(SeamEnd.HELD, 160));
    }
    return file.toString();
  }

  private int export(String book, Path to, String... more) {
    List<String> args = new ArrayList<>(List.of("export", "--book", book, "--to", to.toString()));
    args.addAll(List.of(more));
    return RunCommand.run(terminal, args.toArray(String[]::new));
  }

  private String said() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String complained() {
    return err.toString(StandardCharsets.UTF_8);
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
    assertThat(export(book, file, "--names")).as(complained()).isZero();
    assertThat(said()).contains(file.toString()).contains("Test pieces: 2");
    holdsWhatTheBookHolds(file, Path.of(book));
    try (XSSFWorkbook read = new XSSFWorkbook(file.toString())) {
      assertThat(text(read)).contains("Ada Pier");
    }
  }

  @Test
  void codesStandForNamesUnlessNamesAreAskedFor() throws IOException {
    Path file = folder.resolve("term.xlsx");
    assertThat(export(smallBook(), file)).as(complained()).isZero();
    try (XSSFWorkbook read = new XSSFWorkbook(file.toString())) {
      assertThat(text(read)).contains("S01").doesNotContain("Ada Pier");
    }
    assertThat(export(folder.resolve("class.walebook").toString(), file, "--names", "--codes"))
        .isEqualTo(1);
    assertThat(complained()).contains("--names").contains("--codes");
  }

  @Test
  void thePreviewWritesNothing() throws IOException {
    String book = smallBook();
    String[] args = {"export-preview", "--book", book, "--json"};
    assertThat(RunCommand.run(terminal, args)).as(complained()).isZero();
    var json = new tools.jackson.databind.json.JsonMapper().readTree(said());
    assertThat(json.get("people").toString()).contains("S01").doesNotContain("Ada");
    assertThat(json.get("sheets").get(2).get("name").asString()).isEqualTo("Pieces");
    assertThat(json.get("sheets").get(2).get("rows").asInt()).isEqualTo(2);
    assertThat(RunCommand.run(terminal, "export-preview", "--book", book)).isZero();
    assertThat(said())
        .contains("Pieces")
        .contains("Students by code: S01")
        .contains("No student’s or tutor’s name was found");
  }

  @Test
  void theEndingSaysTheKindOfFile() throws IOException {
    String book = smallBook();
    Path csv = folder.resolve("pieces.csv");
    assertThat(export(book, csv, "--column", "student", "--column", "grade")).isZero();
    assertThat(Files.readString(csv)).startsWith("Piece,Student,");
    assertThat(Files.readAllLines(csv)).hasSize(3);
    Path json = folder.resolve("term.json");
    assertThat(export(book, json)).isZero();
    assertThat(Files.readString(json)).startsWith("{\"format\":\"walebook-term\"");
    assertThat(export(book, csv, "--column", "girth", "--replace")).isEqualTo(1);
    assertThat(complained()).contains("girth").contains("seam-stretch");
  }

  @Test
  void writesCodesInThePlaceOfNames() throws IOException {
    Path file = folder.resolve("term.xlsx");
    assertThat(export(smallBook(), file, "--class", "monday", "--codes", "--json")).isZero();
    assertThat(said()).contains("\"names\"").contains("false");
    try (XSSFWorkbook read = new XSSFWorkbook(file.toString())) {
      assertThat(text(read)).contains("S01").doesNotContain("Ada Pier").doesNotContain("Bo Quay");
    }
  }

  @Test
  void sparesAFileUnlessItMayReplaceIt() throws IOException {
    String book = smallBook();
    Path file = Files.writeString(folder.resolve("term.xlsx"), "as it was");
    assertThat(export(book, file)).isEqualTo(1);
    assertThat(complained()).contains("term.xlsx").contains("--replace");
    assertThat(file).hasContent("as it was");
    assertThat(export(book, file, "--replace")).isZero();
    holdsWhatTheBookHolds(file, Path.of(book));
  }

  @Test
  void neverWritesOverABook() throws IOException {
    String book = smallBook();
    byte[] before = Files.readAllBytes(Path.of(book));
    assertThat(export(book, Path.of(book), "--replace")).isEqualTo(1);
    assertThat(complained()).contains(".xlsx");
    assertThat(Path.of(book)).hasBinaryContent(before);
  }

  @Test
  void saysWhatIsInTheWay() {
    String book = smallBook();
    assertThat(export(book, folder.resolve("gone").resolve("term.xlsx"))).isEqualTo(1);
    assertThat(complained()).contains("gone");
    assertThat(export(book, folder.resolve("t.xlsx"), "--class", "x")).isEqualTo(1);
    assertThat(complained()).contains("Monday evening");
  }

  @Test
  void withoutAScreenTheDemosWorkbookLiesBesideItsBook() throws IOException {
    Path demo = folder.resolve("demo");
    assertThat(WithoutScreen.run(terminal, demo)).as(complained()).isZero();
    Path workbook = demo.resolve(WithoutScreen.WORKBOOK);
    assertThat(said()).contains(workbook.toString());
    holdsWhatTheBookHolds(workbook, demo.resolve(MakeDemoBook.FILE));
    Files.writeString(workbook, "older");
    assertThat(WithoutScreen.run(terminal, demo)).as(complained()).isZero();
    holdsWhatTheBookHolds(workbook, demo.resolve(MakeDemoBook.FILE));
  }
}
