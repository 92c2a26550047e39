package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import javafx.beans.value.ObservableValue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;
import walebook.desk.PlannedClass;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.record.SeamEnd;

/** Every part reads and reckons as work that is handed over, never on the thread that asks. */
class AwayFromWindowTest {
  @TempDir Path folder;

  private final Queue<Runnable> away = new ArrayDeque<>();

  private Session session(Classroom room) {
    Session session =
        Sessions.bare(room.book, new Worker(away::add, Runnable::run), PlannedClass.OneFile.NONE);
    session.schoolClassProperty().set(room.schoolClass);
    return session;
  }

  private void workAll() {
    while (!away.isEmpty()) {
      away.remove().run();
    }
  }

  @Test
  void noPartFindsAnythingBeforeTheWorkIsDoneElsewhere() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      room.book.pieces().add(room.piece(SeamEnd.GAVE, 140));
      FiltersViewModel filters = new FiltersViewModel(session(room));
      assertThat(filters.cloths()).hasSize(1);
      FairViewModel fair = new FairViewModel(filters);
      ControlViewModel control = new ControlViewModel(filters);
      AlikeViewModel alike = new AlikeViewModel(filters);
      OddViewModel odd = new OddViewModel(filters);
      TermsViewModel terms = new TermsViewModel(filters, new SqliteFiles());
      GrowthViewModel growth = new GrowthViewModel(filters);
      ComparisonViewModel overview = new ComparisonViewModel(filters);
      List.of(
              fair.asking(),
              control.asking(),
              alike.asking(),
              odd.asking(),
              terms.asking(),
              growth.asking(),
              overview.asking())
          .forEach(each -> each.shown(true));
      List<ObservableValue<?>> found =
          List.of(
              fair.foundProperty(),
              control.foundProperty(),
              alike.foundProperty(),
              odd.foundProperty(),
              terms.foundProperty(),
              growth.foundProperty(),
              overview.foundProperty());
      assertThat(found).allMatch(each -> each.getValue() == null);
      workAll();
      assertThat(found).noneMatch(each -> each.getValue() == null);
      assertThat(filters.cloths()).hasSize(2);
    }
  }

  @Test
  void aPartSaysThatItIsBeingWorkedOutAndCanBeStoppedAndAskedAgain() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      FiltersViewModel filters = new FiltersViewModel(session(room));
      workAll();
      FairViewModel fair = new FairViewModel(filters);
      Asking<FairFound> asking = fair.asking();
      assertThat(asking.stateProperty().get()).isEqualTo(Asking.State.AT_REST);
      asking.shown(true);
      assertThat(asking.stateProperty().get()).isEqualTo(Asking.State.WORKING);
      asking.stop();
      assertThat(asking.stateProperty().get()).isEqualTo(Asking.State.STOPPED);
      workAll();
      assertThat(fair.foundProperty().get()).isNull();
      asking.again();
      assertThat(asking.stateProperty().get()).isEqualTo(Asking.State.WORKING);
      workAll();
      assertThat(asking.stateProperty().get()).isEqualTo(Asking.State.AT_REST);
      assertThat(fair.foundProperty().get()).isNotNull();
    }
  }

  @Test
  void whatIsAskedAnewMeanwhileKeepsThePartWorking() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      FiltersViewModel filters = new FiltersViewModel(session(room));
      workAll();
      FairViewModel fair = new FairViewModel(filters);
      fair.asking().shown(true);
      filters.pValuesProperty().set(true);
      assertThat(fair.asking().stateProperty().get()).isEqualTo(Asking.State.WORKING);
      workAll();
      assertThat(java.util.Objects.requireNonNull(fair.foundProperty().get()).pValues()).isTrue();
      assertThat(fair.asking().stateProperty().get()).isEqualTo(Asking.State.AT_REST);
    }
  }

  @Test
  void whatNobodyLooksAtAnyMoreIsDroppedAndAskedAnewWhenSomebodyDoes() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      FiltersViewModel filters = new FiltersViewModel(session(room));
      workAll();
      FairViewModel fair = new FairViewModel(filters);
      fair.asking().shown(true);
      fair.asking().shown(false);
      assertThat(fair.asking().stateProperty().get()).isEqualTo(Asking.State.AT_REST);
      workAll();
      assertThat(fair.foundProperty().get()).isNull();
      fair.asking().shown(true);
      workAll();
      assertThat(fair.foundProperty().get()).isNotNull();
      fair.asking().shown(false);
      fair.asking().shown(true);
      assertThat(fair.asking().stateProperty().get()).isEqualTo(Asking.State.AT_REST);
    }
  }
}
