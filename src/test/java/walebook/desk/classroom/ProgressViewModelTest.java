package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.compare.ClassProgress;
import walebook.desk.LastFirst;
import walebook.desk.PlannedClass;
import walebook.desk.RoomBook;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.drawing.DoneTable;
import walebook.record.SchoolClass;

class ProgressViewModelTest {
  @TempDir Path folder;

  @Test
  void countsWhatIsLoggedOfWhatWasPlanned() {
    try (Classroom room = RoomBook.in(folder.resolve("a.walebook"))) {
      ProgressViewModel model = new ProgressViewModel(Sessions.of(room));
      assertThat(model.rows()).hasSize(12);
      assertThat(model.lessons()).hasSize(1);
      assertThat(model.cell(model.rows().get(0), 0)).isEqualTo("4 / 5");
      assertThat(model.rows().get(0).found().own()).isEqualTo(2);
      assertThat(model.table()).hasSize(13).allMatch(line -> line.size() == 6);
      assertThat(model.table().get(1).subList(1, 4)).containsExactly("4", "5", "2");
      assertThat(model.drawing().cells().get(0)).containsExactly(new DoneTable.Cell(4, 5));
    }
  }

  @Test
  void hiddenNamesGiveWayToAliases() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Session session = Sessions.of(room);
      ProgressViewModel model = new ProgressViewModel(session);
      assertThat(model.rows()).extracting(ProgressRow::name).containsExactly("Ada Pier", "Bo Quay");
      session.namesHiddenProperty().set(true);
      assertThat(model.rows()).extracting(ProgressRow::name).containsExactly("S01", "S02");
    }
  }

  @Test
  void aCellIsFullOnlyWhenAllIsDoneAndEmptyOnlyWhenNothingIs() {
    assertThat(ProgressRow.quarters(Double.NaN)).isEqualTo(-1);
    assertThat(ProgressRow.quarters(0)).isZero();
    assertThat(ProgressRow.quarters(1 / 30.0)).isEqualTo(1);
    assertThat(ProgressRow.quarters(6 / 12.0)).isEqualTo(2);
    assertThat(ProgressRow.quarters(29 / 30.0)).isEqualTo(3);
    assertThat(ProgressRow.quarters(13 / 12.0)).isEqualTo(4);
  }

  @Test
  void theDayOfTheNewestPieceReadsAsOtherDaysAndSortsByTheDay() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      ProgressRow early = sewn(room, LocalDate.of(2025, 12, 9));
      ProgressRow late = sewn(room, LocalDate.of(2026, 1, 12));
      assertThat(early.lastDay()).isEqualTo("9 Dec 2025");
      assertThat(early.lastOrder()).isLessThan(late.lastOrder());
      assertThat(sewn(room, null).lastDay()).isEqualTo("–");
      assertThat(sewn(room, null).lastOrder()).isNaN();
    }
  }

  private static ProgressRow sewn(Classroom room, @Nullable LocalDate last) {
    return new ProgressRow("", new ClassProgress.Row(room.first, List.of(), 0, 0, last));
  }

  @Test
  void anAnswerThatComesLateSaysNothingOfTheClassInHand() {
    try (Classroom room = Classroom.in(folder.resolve("late.walebook"))) {
      SchoolClass other =
          new SchoolClass(Ids.next(), room.term.id(), null, "Tuesday", "", Classroom.FRESH);
      room.book.classes().add(other);
      LastFirst work = new LastFirst();
      Session session = Sessions.bare(room.book, work.worker(), PlannedClass.OneFile.NONE);
      session.schoolClassProperty().set(room.schoolClass);
      ProgressViewModel model = new ProgressViewModel(session);
      session.schoolClassProperty().set(other);
      work.workAll();
      assertThat(model.rows()).isEmpty();
      session.schoolClassProperty().set(room.schoolClass);
      session.schoolClassProperty().set(null);
      work.workAll();
      assertThat(model.rows()).isEmpty();
    }
  }
}
