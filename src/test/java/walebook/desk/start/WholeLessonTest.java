package walebook.desk.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.book.PieceFilter;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/** A whole lesson: a student logs three pieces, the tutor compares, the term goes out and back. */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class WholeLessonTest {
  @TempDir static Path folder;

  private PlannedClass made;
  private OpenedWindow window;
  private Path workbook;

  @Start
  void start(Stage stage) {
    workbook = folder.resolve("term.xlsx");
    made = PlannedClass.in(folder.resolve("class.walebook"), 1);
    Session session = made.session(Worker.sameThread(), new PlannedClass.OneFile(workbook));
    session.schoolClassProperty().set(made.room.schoolClass);
    window = new OpenedWindow(stage, session);
  }

  @AfterEach
  void close() {
    window.close();
    made.close();
  }

  @Test
  void fromTheStudentsFirstPieceToTheTermsWorkbook(FxRobot robot)
      throws IOException, TimeoutException {
    robot.write("ada").type(KeyCode.ENTER);
    robot.clickOn("Log this piece");
    log(robot, SeamEnd.HELD, "160");
    robot.clickOn("Next piece");
    log(robot, SeamEnd.GAVE, "140");
    robot.clickOn("Next piece");
    log(robot, SeamEnd.GAVE, "145,5");
    List<TestPiece> logged = made.room.book.pieces().list(PieceFilter.ALL);
    assertThat(logged).hasSize(3);

    place(robot, KeyCode.DIGIT6);
    String counts =
        "Test pieces logged, of the plans and own ones: 3, by students: 1. Pulled: 3; not pulled,"
            + " or the pull set aside: 0.";
    WaitForAsyncUtils.waitFor(
        5, TimeUnit.SECONDS, () -> robot.lookup(counts).tryQuery().isPresent());
    // Rows come in their turns, a frame each.
    WaitForAsyncUtils.waitFor(
        5,
        TimeUnit.SECONDS,
        () -> robot.lookup(".table-view").queryTableView().getItems().size() == 3);

    place(robot, KeyCode.DIGIT7);
    robot.clickOn("Export");
    robot.clickOn("Export the term");
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(workbook).exists();
    readsBack(logged);
  }

  private void readsBack(List<TestPiece> logged) throws IOException {
    try (InputStream in = Files.newInputStream(workbook);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      Sheet sheet = book.getSheet("Pieces");
      Map<String, Integer> columns = new HashMap<>();
      int head = head(sheet);
      sheet
          .getRow(head)
          .forEach(cell -> columns.put(cell.getStringCellValue(), cell.getColumnIndex()));
      Map<String, Row> rows = new HashMap<>();
      for (int at = head + 1; at <= sheet.getLastRowNum(); at++) {
        rows.put(
            sheet.getRow(at).getCell(0).getStringCellValue().replace("-", ""), sheet.getRow(at));
      }
      assertThat(rows.keySet())
          .containsExactlyInAnyOrderElementsOf(logged.stream().map(TestPiece::code).toList());
      for (TestPiece piece : logged) {
        Row row = Objects.requireNonNull(rows.get(piece.code()));
        double stretch = Objects.requireNonNull(piece.measure().seamStretchPercent());
        assertThat(numbers(row)).anySatisfy(n -> assertThat(n).isCloseTo(stretch, within(1e-9)));
        double end = Objects.requireNonNull(piece.measure().counting()).endMm();
        assertThat(numbers(row)).contains(end);
        double width = Objects.requireNonNull(piece.setting().dialWidth());
        assertThat(numbers(row)).contains(width);
      }
    }
  }

  private static int head(Sheet sheet) {
    for (int at = sheet.getFirstRowNum(); at <= sheet.getLastRowNum(); at++) {
      Row row = sheet.getRow(at);
      if (row != null && row.getLastCellNum() > 20) {
        return at;
      }
    }
    throw new AssertionError("no header row");
  }

  private static List<Double> numbers(Row row) {
    List<Double> numbers = new java.util.ArrayList<>();
    for (Cell cell : row) {
      if (cell.getCellType() == CellType.NUMERIC) {
        numbers.add(cell.getNumericCellValue());
      }
    }
    return numbers;
  }

  private static void place(FxRobot robot, KeyCode digit) {
    robot.press(KeyCode.CONTROL).type(digit).release(KeyCode.CONTROL);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private static void log(FxRobot robot, SeamEnd end, String length) {
    List<Node> buttons =
        robot.lookup("#end .toggle-button").queryAll().stream().map(Node.class::cast).toList();
    robot.interact(() -> ((ToggleButton) buttons.get(end == SeamEnd.GAVE ? 0 : 1)).fire());
    TextField field = robot.lookup("#end-length .text-field").queryAs(TextField.class);
    robot.interact(
        () -> {
          field.requestFocus();
          field.selectAll();
        });
    robot.write(length).type(KeyCode.ENTER);
    robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
    WaitForAsyncUtils.waitForFxEvents();
  }
}
