package walebook.desk.classroom;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.desk.RoomBook;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.record.SchoolClass;

class GrowthViewModelTest {
  @TempDir Path folder;

  @Test
  void aStudentIsChosenAndHasOneRowForEachTerm() {
    try (Classroom room = RoomBook.in(folder.resolve("a.walebook"))) {
      GrowthViewModel model = new GrowthViewModel(new FiltersViewModel(Sessions.of(room)));
      model.asking().shown(true);
      assertThat(requireNonNull(model.foundProperty().get()).says()).isEmpty();
      assertThat(model.students()).hasSize(12);
      Choice first = model.students().get(0);
      model.studentProperty().set(first);
      GrowthViewModel.Grown grown = requireNonNull(model.foundProperty().get());
      assertThat(grown.says()).isNotEmpty();
      assertThat(grown.table()).hasSize(2);
      assertThat(requireNonNull(grown.plot()).rows()).hasSize(1);
      assertThat(model.studentProperty().get()).isEqualTo(first);
    }
  }

  @Test
  void hiddenNamesAreChosenByAliasAndTheChosenOneStays() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Session session = Sessions.of(room);
      GrowthViewModel model = new GrowthViewModel(new FiltersViewModel(session));
      model.asking().shown(true);
      model.studentProperty().set(model.students().get(1));
      session.namesHiddenProperty().set(true);
      assertThat(model.students()).extracting(Choice::name).containsExactly("S01", "S02");
      assertThat(requireNonNull(model.studentProperty().get()).name()).isEqualTo("S02");
    }
  }

  @Test
  void whoeverIsNotInTheClassInHandIsNotTalkedOf() {
    try (Classroom room = RoomBook.in(folder.resolve("c.walebook"))) {
      SchoolClass other =
          new SchoolClass(Ids.next(), room.term.id(), null, "Tuesday", "", Classroom.FRESH);
      room.book.classes().add(other);
      Session session = Sessions.of(room);
      GrowthViewModel model = new GrowthViewModel(new FiltersViewModel(session));
      model.asking().shown(true);
      model.studentProperty().set(model.students().get(0));
      assertThat(requireNonNull(model.foundProperty().get()).says()).isNotEmpty();
      session.schoolClassProperty().set(other);
      assertThat(model.studentProperty().get()).isNull();
      assertThat(requireNonNull(model.foundProperty().get()).says()).isEmpty();
    }
  }
}
