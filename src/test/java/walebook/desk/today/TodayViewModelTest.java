package walebook.desk.today;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.desk.common.Worker;
import walebook.quantity.Unit;
import walebook.record.SeamEnd;
import walebook.record.Student;
import walebook.tables.SharedTables;
import walebook.words.Words;

class TodayViewModelTest {
  @TempDir Path folder;

  @Test
  void theOnlyClassIsChosenAndNamesAreFoundByTyping() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("a.walebook"), 1)) {
      Session session = made.session(Worker.sameThread(), PlannedClass.OneFile.NONE);
      TodayViewModel today = new TodayViewModel(session);
      assertThat(today.schoolClassProperty().get()).isEqualTo(made.room.schoolClass);
      assertThat(today.found()).extracting(Student::name).containsExactly("Ada Pier", "Bo Quay");
      today.searchProperty().set("qu");
      assertThat(today.found()).extracting(Student::name).containsExactly("Bo Quay");
      today.chooseFirst();
      assertThat(today.studentProperty().get()).isEqualTo(made.room.second);
      assertThat(Objects.requireNonNull(today.dayProperty().get()).next()).isNull();
      today.leave();
      assertThat(today.dayProperty().get()).isNull();
    }
  }

  @Test
  void myPlanShowsWhatIsDoneAndMyNextPiece() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("b.walebook"), 3)) {
      made.room.book.pieces().add(made.room.piece(SeamEnd.GAVE, 140));
      Session session = made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE);
      TodayViewModel today = new TodayViewModel(session);
      MyDay day = Objects.requireNonNull(today.dayProperty().get());
      assertThat(day.plan()).hasSize(4);
      assertThat(day.done()).isZero();
      NextPiece next = Objects.requireNonNull(day.next());
      assertThat(next.settings())
          .contains("Grey jersey, 2 layers", "zigzag, width 2.5, length 2.5", "pull it 3 times");
      assertThat(Objects.requireNonNull(next.stitch()).widthMm()).isEqualTo(2.5);
      assertThat(day.recent())
          .extracting(RecentPiece::says)
          .containsExactly("Grey jersey: gave at 140 mm");
      assertThat(today.lessonProperty().get()).contains("A seam that stretches");
      today.logNext();
      assertThat(session.wishProperty().get())
          .isEqualTo(new Wish("pieces", Wish.What.LOG_PLANNED, made.planned(0)));
    }
  }

  @Test
  void aBookWithoutClassesLeadsToTheTermRecord() {
    try (Book book =
        new SqliteFiles()
            .make(folder.resolve("c.walebook"), "Empty", false, Unit.MM, Classroom.CLOCK)
            .value()) {
      Session session =
          new Session(
              book,
              SharedTables.read(),
              Words.english(),
              Classroom.CLOCK,
              new java.util.Random(1),
              Worker.sameThread(),
              PlannedClass.OneFile.NONE,
              fault -> {
                throw new IllegalStateException(fault);
              });
      TodayViewModel today = new TodayViewModel(session);
      assertThat(today.loadedProperty().get()).isTrue();
      assertThat(today.classes()).isEmpty();
      today.toTerm();
      assertThat(session.wishProperty().get()).isEqualTo(Wish.show("term"));
    }
  }

  @Test
  void anotherClassAsksAnewWhoIsThere() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("d.walebook"), 1)) {
      Session session = made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE);
      TodayViewModel today = new TodayViewModel(session);
      today.schoolClassProperty().set(null);
      assertThat(today.studentProperty().get()).isNull();
    }
  }
}
