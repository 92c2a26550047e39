package walebook.desk.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.paper.ReadPdf;
import walebook.quantity.Unit;

class PrintSheetViewModelTest {
  @TempDir Path folder;

  @Test
  void printsWhatIsTypedWithoutTheBodyAndAsksForANameFirst() throws Exception {
    Path file = folder.resolve("top.pdf");
    try (PlannedClass made = PlannedClass.in(folder.resolve("a.walebook"), 1)) {
      Session session = made.session(Worker.sameThread(), new PlannedClass.OneFile(file));
      session.schoolClassProperty().set(made.room.schoolClass);
      session.studentProperty().set(made.room.first);
      SheetViewModel sheet = new SheetViewModel(session, Unit.CM);
      sheet.begin();
      type(sheet, "cloth", made.room.cloth.id().toString());
      type(sheet, "finished-chest", "80");
      type(sheet, "body-chest", "90.7");
      PrintSheetViewModel print = new PrintSheetViewModel(session, sheet);
      print.print();
      assertThat(file).doesNotExist();
      assertThat(sheet.fields().field("sheet-name").problem().get()).isNotNull();
      type(sheet, "sheet-name", "Grey top");
      print.print();
      assertThat(sheet.noticeProperty().get().says()).contains("top.pdf");
      assertThat(print.printingProperty().get()).isFalse();
      assertThat(Files.size(file)).isPositive();
      try (ReadPdf pdf = ReadPdf.of(file)) {
        assertThat(pdf.text()).contains("Grey top").doesNotContain("90.7").doesNotContain("907");
      }
    }
  }

  private static void type(SheetViewModel model, String field, String text) {
    model.fields().field(field).text().set(text);
  }
}
