package walebook.desk.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.classroom.ExportChosen;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.record.Cloth;
import walebook.record.Edge;
import walebook.record.SeamEnd;

class ExportViewModelTest {
  @TempDir Path folder;

  @Test
  void writesWithCodesUnlessNamesAreChosenAndSaysWhere() throws IOException {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      room.book.pieces().add(room.piece(SeamEnd.GAVE, 148));
      Session session = Sessions.of(room.book, room.schoolClass, folder);
      ExportViewModel model = new ExportViewModel(session);
      model.kindProperty().set(ExportViewModel.Kind.CSV);
      model.export();
      Path file = folder.resolve("monday-evening.csv");
      assertThat(file).content().contains("S01").doesNotContain("Ada Pier");
      assertThat(model.saysProperty().get()).contains(file.toString());
      model.shownProperty().set(ExportViewModel.Shown.NAMES);
      model.export();
      assertThat(model.saysProperty().get()).contains("there already");
      assertThat(file).content().doesNotContain("Ada Pier");
      assertThat(model.inTheWayProperty().get()).isEqualTo(file);
      model.replace();
      assertThat(file).content().contains("Ada Pier");
      assertThat(model.inTheWayProperty().get()).isNull();
    }
  }

  @Test
  void thePreviewFollowsTheChoice() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      room.book.pieces().add(room.piece(SeamEnd.GAVE, 148));
      room.book.pieces().add(room.piece(SeamEnd.HELD, 160));
      ExportViewModel model = new ExportViewModel(Sessions.of(room));
      ExportChosen.Preview all = model.previewProperty().get();
      assertThat(all.pieces()).isEqualTo(2);
      assertThat(all.names()).isFalse();
      assertThat(all.people()).contains("S01");
      assertThat(all.rowsIn(".xlsx")).hasSizeGreaterThan(3);
      assertThat(all.rowsIn(".csv"))
          .extracting(ExportChosen.Preview.Row::sheet, ExportChosen.Preview.Row::rows)
          .containsExactly(org.assertj.core.groups.Tuple.tuple("Pieces", 2));
      model.studentSheetsProperty().set(true);
      ExportChosen.Preview withSheets = model.previewProperty().get();
      assertThat(withSheets.rowsIn(".json")).hasSameSizeAs(all.rowsIn(".json"));
      assertThat(withSheets.rowsIn(".xlsx")).hasSizeGreaterThan(all.rowsIn(".xlsx").size());
      model.studentSheetsProperty().set(false);
      model.shownProperty().set(ExportViewModel.Shown.NAMES);
      assertThat(model.previewProperty().get().people()).contains("Ada Pier");
      model.choice().students().get(0).takenProperty().set(false);
      assertThat(model.previewProperty().get().people()).hasSize(all.people().size() - 1);
      model.choice().students().forEach(each -> each.takenProperty().set(false));
      assertThat(model.previewProperty().get()).isNull();
    }
  }

  @Test
  void aNameInTextIsSaidForTheFilesThatHoldIt() {
    try (Classroom room = Classroom.in(folder.resolve("g.walebook"))) {
      room.book.pieces().add(room.piece(SeamEnd.GAVE, 148));
      room.book.cloths().add(cloth("Rib of Bo Quay"));
      ExportViewModel model = new ExportViewModel(Sessions.of(room));
      ExportChosen.Preview found = model.previewProperty().get();
      assertThat(found.namedIn(".xlsx", true))
          .extracting(ExportChosen.Preview.Named::name)
          .containsExactly(room.second.name());
      assertThat(found.namedIn(".csv", true)).isEmpty();
      assertThat(found.namedIn(".xlsx", false)).isEmpty();
    }
  }

  @Test
  void aFolderThatIsNotThereIsSaidInThePlace() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      Session session = Sessions.of(room.book, room.schoolClass, folder.resolve("no such folder"));
      ExportViewModel model = new ExportViewModel(session);
      model.export();
      assertThat(model.saysProperty().get()).contains("no such folder");
      assertThat(model.writingProperty().get()).isFalse();
    }
  }

  @Test
  void aFileThatIsOpenElsewhereIsSaid() throws IOException {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      Files.createFile(folder.resolve("monday-evening.xlsx"));
      Files.createFile(folder.resolve(".~lock.monday-evening.xlsx#"));
      ExportViewModel model = new ExportViewModel(Sessions.of(room.book, room.schoolClass, folder));
      model.export();
      assertThat(model.saysProperty().get()).contains("open in another program");
      assertThat(model.inTheWayProperty().get()).isNull();
    }
  }

  @Test
  void leavingTheChooserWritesNothing() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      ExportViewModel model = new ExportViewModel(Sessions.of(room));
      model.export();
      assertThat(model.saysProperty().get()).isEmpty();
      assertThat(model.writingProperty().get()).isFalse();
    }
  }

  @Test
  void withNoColumnTickedTheCodeGoesOutAlone() throws IOException {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      room.book.pieces().add(room.piece(SeamEnd.GAVE, 148));
      ExportViewModel model = new ExportViewModel(Sessions.of(room.book, room.schoolClass, folder));
      model.kindProperty().set(ExportViewModel.Kind.CSV);
      model.choice().take(model.choice().columns(), false);
      model.export();
      assertThat(Files.readAllLines(folder.resolve("monday-evening.csv")).get(0))
          .isEqualTo("Piece");
      model.choice().take(model.choice().columns(), true);
      model.replace();
      model.export();
      model.replace();
      assertThat(Files.readAllLines(folder.resolve("monday-evening.csv")).get(0))
          .startsWith("Piece,Student,Lesson");
    }
  }

  private static Cloth cloth(String name) {
    return new Cloth(
        Ids.next(),
        name,
        "rib-1x1",
        "",
        null,
        null,
        null,
        null,
        Edge.UNKNOWN,
        "",
        false,
        Classroom.FRESH);
  }
}
