package walebook.desk.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.quantity.Unit;
import walebook.record.By;

class SheetsViewModelTest {
  @TempDir Path folder;

  @Test
  void aSavedSheetStandsInTheListAndHidesItsOwnersNameWhenAsked() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Session session = Sessions.of(room);
      session.studentProperty().set(room.first);
      SheetsViewModel model = new SheetsViewModel(session, Unit.MM);
      assertThat(model.loadedProperty().get()).isTrue();
      assertThat(model.lines()).isEmpty();
      assertThat(model.cloths()).containsExactly(room.cloth);
      model.add();
      SheetViewModel sheet = Objects.requireNonNull(model.openProperty().get());
      sheet.fields().field("sheet-name").text().set("Grey top");
      sheet.save();
      model.close();
      assertThat(model.openProperty().get()).isNull();
      SheetsViewModel.Line line = model.lines().get(0);
      assertThat(line.kind()).isEqualTo("fitted top");
      assertThat(line.whose()).isEqualTo("Ada Pier");
      assertThat(line.cloth()).isEqualTo("none chosen yet");
      session.namesHiddenProperty().set(true);
      assertThat(model.lines().get(0).whose()).isEqualTo("S01");
      model.open(line.sheet());
      assertThat(Objects.requireNonNull(model.openProperty().get()).fields().text("sheet-name"))
          .isEqualTo("Grey top");
    }
  }

  @Test
  void whatIsTypedStaysUntilSomebodyElseSitsDown() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Session session = Sessions.of(room);
      session.studentProperty().set(room.first);
      SheetsViewModel model = new SheetsViewModel(session, Unit.MM);
      model.add();
      Objects.requireNonNull(model.openProperty().get())
          .fields()
          .field("body-chest")
          .text()
          .set("903");
      model.close();
      model.add();
      assertThat(Objects.requireNonNull(model.openProperty().get()).fields().text("body-chest"))
          .isEqualTo("903");
      session.studentProperty().set(room.second);
      assertThat(model.openProperty().get()).isNull();
      model.add();
      assertThat(Objects.requireNonNull(model.openProperty().get()).fields().text("body-chest"))
          .isEmpty();
    }
  }

  @Test
  void comparingGoesOnWhereItWasLeftAndTakingPutsItOnTheSheet() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      Session session = Sessions.of(room);
      session.studentProperty().set(room.first);
      SheetsViewModel model = new SheetsViewModel(session, Unit.MM);
      model.compare();
      assertThat(model.comparingProperty().get()).isNull();
      model.add();
      SheetViewModel sheet = Objects.requireNonNull(model.openProperty().get());
      model.compare();
      CompareViewModel comparing = Objects.requireNonNull(model.comparingProperty().get());
      comparing.other().fields().field("stitch").text().set("514");
      model.stopComparing();
      sheet.fields().field("finished-chest").text().set("880");
      model.compare();
      assertThat(model.comparingProperty().get()).isSameAs(comparing);
      assertThat(comparing.other().fields().text("finished-chest")).isEqualTo("880");
      assertThat(comparing.other().fields().text("stitch")).isEqualTo("514");
      assertThat(sheet.fields().text("stitch")).isEqualTo("304");
      model.take();
      assertThat(model.comparingProperty().get()).isNull();
      assertThat(sheet.fields().text("stitch")).isEqualTo("514");
      model.compare();
      session.studentProperty().set(room.second);
      assertThat(model.comparingProperty().get()).isNull();
    }
  }

  /** Taken back, or gathered from another book: the form shows what the book holds. */
  @Test
  void aSheetThatTheBookHoldsOtherwiseNowIsOpenedAsItIs() {
    try (Classroom room = Classroom.in(folder.resolve("u.walebook"))) {
      Session session = Sessions.of(room);
      session.studentProperty().set(room.first);
      SheetsViewModel model = new SheetsViewModel(session, Unit.MM);
      model.add();
      SheetViewModel sheet = Objects.requireNonNull(model.openProperty().get());
      sheet.fields().field("sheet-name").text().set("Grey top");
      sheet.save();
      model.close();
      model.open(model.lines().get(0).sheet());
      sheet = Objects.requireNonNull(model.openProperty().get());
      sheet.fields().field("remark").text().set("hem 3 cm longer");
      sheet.save();
      sheet.fields().field("seams").text().set("3");
      model.close();
      room.book
          .history()
          .undo(Objects.requireNonNull(room.book.history().lastDone(null)), By.NOBODY);
      session.changed();
      model.open(model.lines().get(0).sheet());
      sheet = Objects.requireNonNull(model.openProperty().get());
      assertThat(sheet.fields().text("remark")).isEmpty();
      assertThat(sheet.fields().text("seams")).as("typed and not saved").isEqualTo("3");
    }
  }
}
