package walebook.desk.term;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.privacy.TakeOutStudent;
import walebook.book.Classroom;
import walebook.book.sqlite.Backups;
import walebook.desk.PlannedClass;
import walebook.desk.Sessions;
import walebook.desk.WaitingWork;
import walebook.desk.common.Session;
import walebook.record.Student;

class PrivacyViewModelTest {
  @TempDir Path folder;

  @Test
  void nothingGoesBeforeTheSecondPressAndCopiesOnlyWhenAsked() throws Exception {
    Path file = folder.resolve("a.walebook");
    try (Classroom room = Classroom.in(file)) {
      Files.createDirectories(Backups.folder(file));
      Path copy = Backups.folder(file).resolve("2026-10-01T10-00-00.walebook");
      room.book.copyTo(copy);
      Session session = Sessions.of(room);
      RosterViewModel roster = new RosterViewModel(session);
      PrivacyViewModel model = roster.privacy();
      session.studentProperty().set(room.first);
      roster.open(room.first);
      model.take();
      assertThat(model.askedProperty().get()).isTrue();
      assertThat(model.lines()).anyMatch(each -> each.contains("Places on class lists"));
      assertThat(model.who()).isEqualTo("Ada Pier");
      assertThat(model.lines().get(0)).contains("of Ada Pier,");
      assertThat(model.lines()).anyMatch(each -> each.contains("that hold the name, too: 1."));
      assertThat(requireNonNull(room.book.students().find(room.first.id())).name())
          .isEqualTo("Ada Pier");
      model.howProperty().set(TakeOutStudent.How.ERASE_ALL);
      assertThat(model.askedProperty().get()).isFalse();
      assertThat(model.lines()).isEmpty();
      model.take();
      model.take();
      assertThat(room.book.students().find(room.first.id())).isNull();
      assertThat(roster.students()).extracting(Student::name).containsExactly("Bo Quay");
      assertThat(roster.openProperty().get()).isNull();
      assertThat(session.studentProperty().get()).isNull();
      assertThat(roster.noticeProperty().get().says())
          .contains("their pieces are gone")
          .doesNotContain("place of the name");
      assertThat(model.copies()).containsExactly(copy);
      assertThat(copy).exists();
      model.deleteCopies();
      assertThat(copy).doesNotExist();
      assertThat(model.copies()).isEmpty();
    }
  }

  @Test
  void anotherCardForgetsWhatWasAsked() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      RosterViewModel roster = new RosterViewModel(Sessions.of(room));
      roster.open(room.first);
      roster.privacy().take();
      roster.open(room.second);
      assertThat(roster.privacy().askedProperty().get()).isFalse();
      roster.privacy().take();
      assertThat(requireNonNull(room.book.students().find(room.second.id())).name())
          .isEqualTo("Bo Quay");
    }
  }

  @Test
  void theSentenceNamesTheStandInWherePiecesStay() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      RosterViewModel roster = new RosterViewModel(Sessions.of(room));
      roster.open(room.first);
      roster.privacy().howProperty().set(TakeOutStudent.How.ERASE_KEEP_PIECES);
      roster.privacy().take();
      roster.privacy().take();
      assertThat(roster.noticeProperty().get().says()).contains("place of the name stands E1");
    }
  }

  @Test
  void anotherCardIsFoldedAndBeginsWithTheMildestWay() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      RosterViewModel roster = new RosterViewModel(Sessions.of(room));
      PrivacyViewModel model = roster.privacy();
      roster.open(room.first);
      model.shownProperty().set(true);
      model.howProperty().set(TakeOutStudent.How.ERASE_ALL);
      roster.open(room.second);
      assertThat(model.shownProperty().get()).isFalse();
      assertThat(model.howProperty().get()).isEqualTo(TakeOutStudent.How.ANONYMOUS);
    }
  }

  @Test
  void whoSitsDownAtTheScreenFindsNothingAskedAboutAnother() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      Session session = Sessions.of(room);
      RosterViewModel roster = new RosterViewModel(session);
      PrivacyViewModel model = roster.privacy();
      roster.open(room.first);
      model.shownProperty().set(true);
      model.take();
      session.studentProperty().set(room.second);
      assertThat(model.askedProperty().get()).isFalse();
      assertThat(model.shownProperty().get()).isFalse();
    }
  }

  @Test
  void whatWasLookedUpOfOneIsNotAskedAboutAnother() {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      WaitingWork work = new WaitingWork();
      Session session = Sessions.bare(room.book, work, PlannedClass.OneFile.NONE);
      session.schoolClassProperty().set(room.schoolClass);
      RosterViewModel roster = new RosterViewModel(session);
      PrivacyViewModel model = roster.privacy();
      roster.open(room.first);
      work.hold();
      model.take();
      roster.open(room.second);
      work.release();
      assertThat(model.askedProperty().get()).isFalse();
      assertThat(model.lines()).isEmpty();
    }
  }

  @Test
  void aCardOpenedMeanwhileStays() {
    try (Classroom room = Classroom.in(folder.resolve("g.walebook"))) {
      WaitingWork work = new WaitingWork();
      Session session = Sessions.bare(room.book, work, PlannedClass.OneFile.NONE);
      session.schoolClassProperty().set(room.schoolClass);
      RosterViewModel roster = new RosterViewModel(session);
      roster.open(room.first);
      roster.privacy().take();
      work.hold();
      roster.privacy().take();
      roster.open(room.second);
      session.studentProperty().set(room.second);
      work.release();
      assertThat(requireNonNull(room.book.students().find(room.first.id())).name())
          .isEqualTo(room.first.alias());
      assertThat(roster.openProperty().get()).isEqualTo(room.second);
      assertThat(session.studentProperty().get()).isEqualTo(room.second);
    }
  }
}
