package walebook.desk.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.book.gather.Choice;
import walebook.book.gather.Conflict;
import walebook.book.open.SqliteFiles;
import walebook.desk.Sessions;
import walebook.desk.common.PickFile;
import walebook.record.SeamEnd;

class GatherViewModelTest {
  @TempDir Path folder;

  @Test
  void looksFirstThenGathersAndAsksWhatItCannotTell() throws Exception {
    Path tutor = folder.resolve("tutor.walebook");
    Path books = Files.createDirectory(folder.resolve("books"));
    try (Classroom other = Classroom.in(books.resolve("s1.walebook"))) {
      other.book.pieces().add(other.piece(SeamEnd.GAVE, 120));
    }
    try (Classroom room = Classroom.in(tutor)) {
      GatherViewModel model =
          new GatherViewModel(Sessions.of(room.book, room.schoolClass, books), new SqliteFiles());
      model.look();
      assertThat(model.books()).as("nothing picked").isEmpty();
      assertThat(model.readyProperty().get()).isFalse();
      model.pick(PickFile.Kind.FOLDER);
      assertThat(model.readyProperty().get()).isTrue();
      model.look();
      assertThat(model.books()).hasSize(1);
      assertThat(model.sentence(model.books().get(0))).contains("s1.walebook", "test pieces 1");
      assertThat(room.book.pieces().count(PieceFilter.ALL)).isZero();
      model.gather();
      assertThat(room.book.pieces().count(PieceFilter.ALL)).isEqualTo(1);
      assertThat(model.saysProperty().get()).contains("before-gathering");
      assertThat(model.workingProperty().get()).isFalse();
      model.clear();
      assertThat(model.readyProperty().get()).isFalse();
      Conflict cloth =
          model.conflicts().stream()
              .filter(each -> each.entity().equals("cloth"))
              .findFirst()
              .orElseThrow();
      assertThat(model.why(cloth)).contains("Grey jersey", "s1.walebook");
      assertThat(model.why(cloth)).startsWith("Cloth ");
      Conflict.Field pulled =
          new Conflict.Field(
              "end_mm",
              List.of(List.of(new Conflict.Value("test_piece", "end_mm", "152.5"))),
              List.of());
      assertThat(model.field(cloth, pulled)).isEqualTo("pulled to");
      assertThat(model.mine(cloth, pulled)).isEqualTo("152.5 mm");
      assertThat(model.theirs(cloth, pulled)).isEqualTo("nothing");
      model.decide(cloth, Choice.MINE);
      assertThat(model.conflicts()).doesNotContain(cloth);
      assertThat(model.saysProperty().get())
          .contains("Cloth Grey jersey", model.chosen(cloth, Choice.MINE))
          .endsWith("Still to decide: " + model.conflicts().size() + ".");
      assertThat(room.book.cloths().all()).hasSize(1);
    }
  }

  @Test
  void givesOutOneBookAStudentAndNeverWritesOverOne() throws Exception {
    Path out = folder.resolve("out");
    try (Classroom room = Classroom.in(folder.resolve("tutor.walebook"))) {
      GatherViewModel model =
          new GatherViewModel(Sessions.of(room.book, room.schoolClass, out), new SqliteFiles());
      model.giveOut();
      assertThat(model.saysProperty().get()).startsWith("2 books");
      try (Book own =
          new SqliteFiles().open(out.resolve("s01.walebook"), Classroom.CLOCK).value()) {
        assertThat(own.enrolments().studentsOf(room.schoolClass.id())).containsExactly(room.first);
      }
      model.giveOut();
      assertThat(model.saysProperty().get()).contains("there is a file of this name already");
    }
  }
}
