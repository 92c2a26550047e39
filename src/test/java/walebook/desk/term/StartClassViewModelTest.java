package walebook.desk.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;
import walebook.desk.LastFirst;
import walebook.desk.PlannedClass;
import walebook.desk.Sessions;
import walebook.quantity.Unit;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.words.Words;

class StartClassViewModelTest {
  @TempDir Path folder;
  private final List<SchoolClass> begun = new ArrayList<>();

  private Book empty() {
    return new SqliteFiles()
        .make(folder.resolve("new.walebook"), "New", false, Unit.MM, Classroom.CLOCK)
        .value();
  }

  @Test
  void aNameAndTheStudentsAreEnough() {
    try (Book book = empty()) {
      StartClassViewModel model = new StartClassViewModel(Sessions.of(book), begun::add);
      model.fields().field("class-name").text().set("Tuesday evening");
      model.fields().field("students").text().set("Ada Pier\n\nBo Quay\nada  pier");
      model.start();
      assertThat(begun).as("nobody is left out in silence").isEmpty();
      assertThat(
              Words.english()
                  .sayAtField(
                      Objects.requireNonNull(model.fields().field("students").problem().get())))
          .startsWith("ada pier: on the list already");
      model.fields().field("students").text().set("Ada Pier\n\nBo Quay\n");
      model.start();
      assertThat(begun).hasSize(1);
      assertThat(book.enrolments().studentsOf(begun.get(0).id()))
          .extracting(Student::name)
          .containsExactly("Ada Pier", "Bo Quay");
    }
  }

  @Test
  void whatIsInTheWayStandsAtItsField() {
    try (Book book = empty()) {
      StartClassViewModel model = new StartClassViewModel(Sessions.of(book), begun::add);
      model.fields().field("term-ends").text().set("soon");
      model.start();
      assertThat(begun).isEmpty();
      assertThat(Objects.requireNonNull(model.fields().field("class-name").problem().get()).code())
          .isEqualTo("field.needed");
      assertThat(Objects.requireNonNull(model.fields().field("term-ends").problem().get()).code())
          .isEqualTo("date.not-a-date");
    }
  }

  @Test
  void pressedTwiceItBeginsOneClass() {
    try (Book book = empty()) {
      LastFirst later = new LastFirst();
      StartClassViewModel model =
          new StartClassViewModel(
              Sessions.bare(book, later.worker(), PlannedClass.OneFile.NONE), begun::add);
      model.start();
      later.workAll();
      assertThat(model.fields().field("class-name").problem().get()).isNotNull();
      model.fields().field("class-name").text().set("Tuesday evening");
      model.start();
      model.start();
      later.workAll();
      assertThat(begun).hasSize(1);
      assertThat(book.classes().all()).hasSize(1);
    }
  }
}
