package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.lesson.TakenUp;
import walebook.act.print.Naming;
import walebook.act.print.PrintPaper;
import walebook.book.Classroom;
import walebook.desk.PlannedClass;
import walebook.desk.Sessions;
import walebook.paper.ReadPdf;
import walebook.record.Lesson;
import walebook.record.PieceCode;

class PrintViewModelTest {
  private static final List<PrintPaper.Kind> KINDS = List.of(PrintPaper.Kind.values());

  @TempDir Path folder;

  @Test
  void labelsGoIntoTheFileThatWasChosen() throws IOException {
    try (PlannedClass planned = PlannedClass.in(folder.resolve("a.walebook"), 1)) {
      Session session = Sessions.of(planned.room.book, planned.room.schoolClass, folder);
      PrintViewModel model = new PrintViewModel(session, planned.lesson.id(), KINDS);
      model.namingProperty().set(Naming.CODE);
      model.print();
      Path file = folder.resolve("monday-evening-labels.pdf");
      assertThat(model.saysProperty().get()).contains(file.toString()).contains("Pages: 1");
      assertThat(model.printingProperty().get()).isFalse();
      try (ReadPdf pdf = ReadPdf.of(file)) {
        assertThat(pdf.text())
            .contains(PieceCode.spoken(planned.plan.get(0).code()))
            .contains("S01")
            .doesNotContain("Ada");
      }
    }
  }

  @Test
  void aLessonsKitNeedsNoNames() throws IOException {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      Lesson lesson = TakenUp.seam(room);
      Session session = Sessions.of(room.book, room.schoolClass, folder);
      PrintViewModel model = new PrintViewModel(session, lesson.id(), KINDS);
      model.kindProperty().set(PrintPaper.Kind.KIT);
      model.print();
      Path file = folder.resolve("monday-evening-kit.pdf");
      assertThat(model.saysProperty().get()).contains(file.toString());
      try (ReadPdf pdf = ReadPdf.of(file)) {
        assertThat(pdf.text()).contains("Kit: ", "For 2 students").doesNotContain("Ada");
      }
    }
  }

  @Test
  void aRecordIsOfTheStudentWhoWasChosen() throws IOException {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Session session = Sessions.of(room.book, room.schoolClass, folder);
      PrintViewModel model = new PrintViewModel(session, null, List.of(PrintPaper.Kind.RECORD));
      assertThat(model.students()).containsExactly(room.first, room.second);
      model.studentProperty().set(room.second);
      model.paperProperty().set("letter");
      model.print();
      try (ReadPdf pdf = ReadPdf.of(folder.resolve("monday-evening-record.pdf"))) {
        assertThat(pdf.text()).contains("Bo Quay").doesNotContain("Ada Pier");
        assertThat(pdf.sizeMm(0)[0]).isGreaterThan(215);
      }
    }
  }

  @Test
  void sheetsOfLabelsFollowThePaper() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      PrintViewModel model = new PrintViewModel(Sessions.of(room), null, KINDS);
      assertThat(model.grids()).containsExactly("3x7", "3x8", "5x13");
      model.paperProperty().set("letter");
      assertThat(model.grids()).containsExactly("3x10");
      assertThat(model.gridProperty().get()).isEqualTo("3x10");
    }
  }

  @Test
  void whatIsWrongIsSaidAndNothingIsWritten() throws IOException {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      Session session = Sessions.of(room.book, room.schoolClass, folder);
      PrintViewModel model = new PrintViewModel(session, null, KINDS);
      model.fields().field("start").text().set("x");
      model.print();
      assertThat(model.fields().field("start").problem().get()).isNotNull();
      model.fields().field("start").text().set("22");
      model.print();
      assertThat(model.saysProperty().get()).contains("1 – 21");
      model.kindProperty().set(PrintPaper.Kind.HAND_OUT);
      model.print();
      assertThat(model.saysProperty().get()).contains("no lesson yet");
      try (Stream<Path> files = Files.list(folder)) {
        assertThat(files.map(Path::toString)).noneMatch(each -> each.endsWith(".pdf"));
      }
    }
  }

  @Test
  void leavingTheChooserPrintsNothing() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      PrintViewModel model = new PrintViewModel(Sessions.of(room), null, KINDS);
      model.print();
      assertThat(model.saysProperty().get()).isEmpty();
    }
  }
}
