package walebook.desk.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.bring.RowFate;
import walebook.act.bring.match.BringWhat;
import walebook.act.bring.match.DayOrder;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.desk.Sessions;
import walebook.desk.common.Notice;
import walebook.desk.common.Session;
import walebook.sheet.in.MadeWorkbook;

class BringRowsViewModelTest {
  private static final String HEAD = "Who;Date;Fabric;Grain;Stitch;Gauge;Result;Reached\n";
  private static final String GOOD = "Ada Pier;5.10.2026;Grey jersey;course;304;100;gave;142\n";

  @TempDir Path folder;

  private BringViewModel opened(Classroom room, String text) {
    Path file = MadeWorkbook.file(folder, "samples.csv", text.getBytes(StandardCharsets.UTF_8));
    BringViewModel model = new BringViewModel(Sessions.of(room.book, room.schoolClass, file));
    model.choose();
    model.columns().get(7).field().set("end-length");
    return model;
  }

  @Test
  void rowsAreTriedThenBroughtInThenTakenBack() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      BringRowsViewModel rows = opened(room, HEAD + GOOD).rows();
      assertThat(rows.comesIn()).isZero();
      rows.tryRows();
      assertThat(rows.shown()).extracting(RowFate::fate).containsExactly(RowFate.Fate.NEW);
      assertThat(room.book.pieces().count(PieceFilter.ALL)).isZero();
      rows.bringIn();
      assertThat(room.book.pieces().count(PieceFilter.ALL)).isEqualTo(1);
      assertThat(rows.trialProperty().get()).isNull();
      Objects.requireNonNull(rows.noticeProperty().get().undo()).run();
      assertThat(room.book.pieces().count(PieceFilter.ALL)).isZero();
      assertThat(rows.noticeProperty().get().says()).contains("taken back");
    }
  }

  @Test
  void oneBadRowBarsAllUntilTheGoodOnesAreAskedForAlone() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      String bad = "Nobody;5.10.2026;Grey jersey;course;304;100;gave;142\n";
      BringRowsViewModel rows = opened(room, HEAD + GOOD + bad).rows();
      rows.tryRows();
      assertThat(rows.comesIn()).isZero();
      rows.bringIn();
      assertThat(room.book.pieces().count(PieceFilter.ALL)).isZero();
      rows.onlyProblemsProperty().set(true);
      assertThat(rows.shown()).extracting(RowFate::row).containsExactly(3);
      rows.goodRowsProperty().set(true);
      assertThat(rows.comesIn()).isEqualTo(1);
      rows.bringIn();
      assertThat(room.book.pieces().count(PieceFilter.ALL)).isEqualTo(1);
    }
  }

  @Test
  void theOrderOfDaysIsAskedForWhereItMatters() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      BringRowsViewModel rows = opened(room, HEAD + GOOD.replace("5.10.2026", "5/10/2026")).rows();
      rows.tryRows();
      assertThat(rows.needsOrderProperty().get()).isTrue();
      assertThat(rows.comesIn()).isZero();
      rows.orderProperty().set(DayOrder.DAY_FIRST);
      assertThat(rows.comesIn()).as("tried anew by itself").isEqualTo(1);
    }
  }

  @Test
  void whatIsUnlikelyComesInOnceItIsSaidToBeRight() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      BringRowsViewModel rows = opened(room, HEAD + GOOD.replace("142", "420")).rows();
      rows.tryRows();
      assertThat(rows.shown()).extracting(RowFate::fate).containsExactly(RowFate.Fate.ASKED);
      rows.sureProperty().set(true);
      assertThat(rows.comesIn()).isEqualTo(1);
    }
  }

  @Test
  void aChangedColumnHasToBeTriedAnew() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      BringViewModel model = opened(room, HEAD + GOOD);
      model.rows().tryRows();
      model.columns().get(0).field().set("");
      assertThat(model.rows().trialProperty().get()).isNull();
      model.rows().tryRows();
      assertThat(model.saysProperty().get()).contains("no column");
      model.rows().studentProperty().set(room.second);
      model.rows().tryRows();
      assertThat(model.rows().comesIn()).isEqualTo(1);
    }
  }

  @Test
  void aRosterComesInAsStudentsOfTheClass() {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      Path file =
          MadeWorkbook.file(
              folder, "class.csv", "Name\nNuur Ebb\nAda Pier\n".getBytes(StandardCharsets.UTF_8));
      BringViewModel model = new BringViewModel(Sessions.of(room.book, room.schoolClass, file));
      model.whatProperty().set(BringWhat.ROSTER);
      model.choose();
      model.rows().tryRows();
      assertThat(model.rows().shown())
          .extracting(RowFate::fate)
          .containsExactly(RowFate.Fate.NEW, RowFate.Fate.THERE);
      model.rows().bringIn();
      assertThat(room.book.enrolments().studentsOf(room.schoolClass.id())).hasSize(3);
    }
  }

  @Test
  void whatCameInIsSaidUntilTheNextChange() {
    try (Classroom room = Classroom.in(folder.resolve("g.walebook"))) {
      Path file =
          MadeWorkbook.file(
              folder, "class.csv", "Name\nNuur Ebb\n".getBytes(StandardCharsets.UTF_8));
      Session session = Sessions.of(room.book, room.schoolClass, file);
      BringViewModel model = new BringViewModel(session);
      model.whatProperty().set(BringWhat.ROSTER);
      model.choose();
      model.rows().tryRows();
      session.changed();
      assertThat(model.rows().noticeProperty().get().says()).as("a dry run").isNotEmpty();
      model.rows().bringIn();
      assertThat(model.rows().noticeProperty().get().says()).isNotEmpty();
      session.changed();
      assertThat(model.rows().noticeProperty().get()).isEqualTo(Notice.NONE);
    }
  }
}
