package walebook.desk.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.desk.LastFirst;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.record.PullReading;
import walebook.record.SchoolClass;
import walebook.record.SeamEnd;

@SuppressWarnings("NullAway.Init")
class PieceListViewModelTest {
  @TempDir Path folder;

  private PlannedClass made;
  private Session session;

  @BeforeEach
  void begin() {
    made = PlannedClass.in(folder.resolve("class.walebook"), 1);
    session = made.session(Worker.sameThread(), PlannedClass.OneFile.NONE);
  }

  @AfterEach
  void close() {
    made.close();
  }

  private void two() {
    made.room.book.pieces().add(made.room.piece(SeamEnd.HELD, 160));
    made.room
        .book
        .pieces()
        .add(
            made.room.piece(
                made.room.second.id(),
                1.5,
                List.of(new PullReading(1, SeamEnd.GAVE, 130)),
                List.of(Classroom.fault("wavy-seam", 2)),
                null));
  }

  @Test
  void anEmptyBookHasNoRowsAndNoFilterIsSet() {
    PieceListViewModel list = new PieceListViewModel(session);
    assertThat(list.rows()).isEmpty();
    assertThat(list.isUnfiltered()).isTrue();
  }

  @Test
  void rowsSayHowTheSeamEndedAndHeldIsAtLeast() {
    two();
    PieceListViewModel list = new PieceListViewModel(session);
    assertThat(list.rows())
        .extracting(PieceRow::end, PieceRow::stretch, PieceRow::verdict, PieceRow::faults)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("gave at 130 mm", "30.0", "not met", "wavy seam"),
            org.assertj.core.groups.Tuple.tuple("held to 160 mm", "≥ 60.0", "met", ""));
    assertThat(list.countProperty().get()).isEqualTo("2 pieces");
  }

  @Test
  void filtersAndSearchNarrowTheList() {
    two();
    PieceListViewModel list = new PieceListViewModel(session);
    list.classes().chosen().set(list.classes().choices().get(1));
    list.students().chosen().set(choice(list.students().choices(), "Bo Quay"));
    assertThat(list.rows()).extracting(PieceRow::student).containsExactly("Bo Quay");
    list.students().chosen().set(list.students().choices().get(0));
    list.searchProperty().set("held nothing");
    assertThat(list.rows()).isEmpty();
    assertThat(list.isUnfiltered()).isFalse();
    list.searchProperty().set("wavy");
    assertThat(list.rows()).hasSize(1);
  }

  @Test
  void whatIsSavedElsewhereComesIntoTheListThatAViewHolds() {
    PieceListViewModel list = new PieceListViewModel(session);
    List<PieceRow> held = list.rows();
    two();
    session.changed();
    assertThat(held).hasSize(2);
    session.namesHiddenProperty().set(true);
    assertThat(held).extracting(PieceRow::student).containsExactly("S02", "S01");
  }

  private static Choice choice(List<Choice> choices, String name) {
    return choices.stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void choicesThatComeLateAreNoneOfTheClassInHand() {
    SchoolClass other =
        new SchoolClass(Ids.next(), made.room.term.id(), null, "Tuesday", "", Classroom.FRESH);
    made.room.book.classes().add(other);
    LastFirst work = new LastFirst();
    PieceListViewModel list =
        new PieceListViewModel(made.sitting(work.worker(), PlannedClass.OneFile.NONE));
    work.workAll();
    assertThat(list.lessons().choices()).hasSize(2);
    list.classes().chosen().set(choice(list.classes().choices(), "Monday evening"));
    list.searchProperty().set("jersey");
    list.classes().chosen().set(choice(list.classes().choices(), "Tuesday"));
    work.workAll();
    assertThat(list.lessons().choices()).hasSize(1);
    list.classes().chosen().set(choice(list.classes().choices(), "Monday evening"));
    list.classes().chosen().set(choice(list.classes().choices(), "Tuesday"));
    work.workAll();
    assertThat(list.lessons().choices()).hasSize(1);
  }
}
