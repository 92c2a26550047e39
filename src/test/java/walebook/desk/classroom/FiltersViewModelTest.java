package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.compare.Factor;
import walebook.compare.Outcome;
import walebook.desk.RoomBook;
import walebook.desk.Sessions;
import walebook.desk.common.Remember;
import walebook.desk.common.Session;
import walebook.desk.start.KeptSettings;

class FiltersViewModelTest {
  @TempDir Path folder;

  private static FiltersViewModel at(Classroom room, Remember where) {
    Session session = Sessions.of(room);
    session.remembersIn(where);
    return new FiltersViewModel(session);
  }

  @Test
  void aClassIsMetWithItsLatestLessonOfWhichAPieceIsLogged() {
    try (Classroom room = RoomBook.in(folder.resolve("a.walebook"))) {
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      var lessons = room.book.lessons().of(room.schoolClass.id());
      assertThat(filters.lessonProperty().get().name()).endsWith(lessons.get(0).title());
      // Lessons that begin alike are told apart by the day that comes first.
      assertThat(filters.lessonProperty().get().name()).matches("[0-9]{1,2} [A-Z][a-z]{2} · .*");
      assertThat(filters.isNarrowed()).isTrue();
      filters.widen();
      assertThat(filters.isNarrowed()).isFalse();
    }
  }

  @Test
  void whatWasAskedIsThereAgainAtTheNextStart() {
    Path file = folder.resolve("settings.properties");
    try (Classroom room = RoomBook.in(folder.resolve("b.walebook"))) {
      FiltersViewModel first = at(room, KeptSettings.at(file));
      first.widen();
      first.clothProperty().set(first.cloths().get(2));
      first.outcomeProperty().set(Outcome.GRADE);
      first.tellApart(Factor.NEEDLE, !first.tellsApart(Factor.NEEDLE));
      first.matters().textProperty().set("0.5");
      FiltersViewModel next = at(room, KeptSettings.at(file));
      assertThat(next.lessonProperty().get().id()).isNull();
      assertThat(next.clothProperty().get()).isEqualTo(first.clothProperty().get());
      assertThat(next.question()).isEqualTo(first.question());
      assertThat(next.question().matters()).isEqualTo(0.5);
    }
  }

  /** Ten points of percent are no ten grades. */
  @Test
  void whatMattersIsKeptForEachOutcomeByItself() {
    Remember where = Remember.forNow();
    try (Classroom room = Classroom.in(folder.resolve("m.walebook"))) {
      FiltersViewModel filters = at(room, where);
      filters.outcomeProperty().set(Outcome.SEAM_SHARE);
      filters.matters().textProperty().set("10");
      filters.outcomeProperty().set(Outcome.GRADE);
      assertThat(filters.matters().textProperty().get()).isEmpty();
      assertThat(filters.question().matters()).isNull();
      filters.matters().textProperty().set("1");
      filters.outcomeProperty().set(Outcome.SEAM_SHARE);
      assertThat(filters.question().matters()).isEqualTo(10);
      FiltersViewModel next = at(room, where);
      assertThat(next.question().matters()).isEqualTo(10);
      next.outcomeProperty().set(Outcome.GRADE);
      assertThat(next.question().matters()).isEqualTo(1);
    }
  }

  @Test
  void nothingToTellApartStaysNothingAtTheNextStart() {
    Remember where = Remember.forNow();
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      FiltersViewModel first = at(room, where);
      List.of(Factor.values()).forEach(each -> first.tellApart(each, false));
      assertThat(at(room, where).inOrder()).isEmpty();
    }
  }

  @Test
  void aNumberThatIsNoneMattersNothingAndIsNotLost() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      FiltersViewModel filters = at(room, Remember.forNow());
      filters.matters().textProperty().set("0");
      filters.matters().settle();
      assertThat(filters.matters().readingProperty().get().problem()).isNotNull();
      assertThat(filters.question().matters()).isNull();
      assertThat(filters.matters().textProperty().get()).isEqualTo("0");
    }
  }
}
