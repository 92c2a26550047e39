package walebook.desk.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.bring.match.BringWhat;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.sheet.in.MadeWorkbook;

class BringViewModelTest {
  @TempDir Path folder;

  private static BringViewModel over(Classroom room, Path file) {
    return new BringViewModel(Sessions.of(room.book, room.schoolClass, file));
  }

  private Path workbook() {
    return MadeWorkbook.file(
        folder,
        "samples.xlsx",
        MadeWorkbook.with(
            workbook -> {
              workbook.createSheet("About").createRow(0).createCell(0).setCellValue("Read me");
              var sheet = workbook.createSheet("Samples");
              String[] titles = {"Student", "Fabric", "Gauge (cm)", "Mood"};
              for (int i = 0; i < titles.length; i++) {
                if (i == 0) {
                  sheet.createRow(0);
                  sheet.createRow(1);
                }
                sheet.getRow(0).createCell(i).setCellValue(titles[i]);
                sheet.getRow(1).createCell(i).setCellValue("value " + i);
              }
            }));
  }

  @Test
  void theSheetsAreOfferedAndTheColumnsGuessedWithTheirUnits() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      BringViewModel model = over(room, workbook());
      model.choose();
      assertThat(model.sheets()).containsExactly("About", "Samples");
      model.sheetProperty().set("Samples");
      assertThat(model.columns())
          .extracting(each -> each.field().get())
          .containsExactly("student", "cloth", "gauge", "");
      assertThat(model.columns().get(2).unit().get()).isEqualTo("cm");
      assertThat(model.columns().get(1).samples()).containsExactly("value 1");
      assertThat(model.saysProperty().get()).isEmpty();
    }
  }

  @Test
  void aSheetWithoutRowsSaysSo() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      BringViewModel model =
          over(
              room,
              MadeWorkbook.file(
                  folder, "empty.xlsx", MadeWorkbook.of("Nothing", new Object[] {"Student"})));
      model.choose();
      assertThat(model.columns()).isEmpty();
      assertThat(model.saysProperty().get()).contains("no row");
    }
  }

  @Test
  void aFileThatIsNoneIsRefusedWithASentenceAndNothingOfTheLastStays() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      Path file = workbook();
      BringViewModel model = over(room, file);
      model.choose();
      MadeWorkbook.file(folder, "samples.xlsx", "PK\3\4broken".getBytes(StandardCharsets.UTF_8));
      model.choose();
      assertThat(model.saysProperty().get()).contains("damaged");
      assertThat(model.fileProperty().get()).isNull();
      assertThat(model.columns()).isEmpty();
      assertThat(model.sheets()).isEmpty();
    }
  }

  @Test
  void anotherKindOfTableIsGuessedAnew() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      BringViewModel model = over(room, workbook());
      model.choose();
      model.whatProperty().set(BringWhat.ROSTER);
      model.sheetProperty().set("Samples");
      assertThat(model.columns().get(0).field().get()).isEqualTo("student-name");
    }
  }

  @Test
  void aChooserThatIsLeftChangesNothing() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      BringViewModel model = new BringViewModel(Sessions.of(room));
      model.choose();
      assertThat(model.fileProperty().get()).isNull();
      assertThat(model.saysProperty().get()).isEmpty();
    }
  }
}
