package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiConsumer;
import javafx.scene.Scene;
import javafx.scene.control.TableView;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import walebook.act.cloth.LogClothReading;
import walebook.act.lesson.ReadLessons;
import walebook.act.lesson.TakenUp;
import walebook.book.Classroom;
import walebook.desk.MeasuredClass;
import walebook.record.PlannedReading;
import walebook.tables.SharedTables;
import walebook.words.Words;

class PlanPaneTest {
  @TempDir Path folder;

  @Test
  void everyColumnFitsTheRoomThereIs() throws Exception {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      var lesson = TakenUp.seam(room);
      var plan = Objects.requireNonNull(new ReadLessons(room.book).plan(lesson.id(), false));
      shown(
          plan,
          (pane, table) -> {
            assertThat(table.getColumns()).hasSize(6);
            int pieces = plan.parts().stream().mapToInt(each -> each.pieces().size()).sum();
            assertThat(table.getItems()).hasSize(pieces);
          });
    }
  }

  @Test
  void readingsStandByStudentWithHowManyAreMade() throws Exception {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      var lesson = MeasuredClass.of(room);
      var first = MeasuredClass.mine(room, lesson).get(0).planned();
      measure(room, first);
      var taken = new ReadLessons(room.book).taken(room.schoolClass.id()).get(0);
      assertThat(taken.planned()).isEqualTo(24);
      assertThat(taken.logged()).isEqualTo(1);
      assertThat(taken.measured()).isTrue();
      var plan = Objects.requireNonNull(new ReadLessons(room.book).plan(lesson.id(), false));
      assertThat(plan.isSewn()).isFalse();
      shown(
          plan,
          (pane, table) -> {
            assertThat(table.getItems()).hasSize(8);
            assertThat(((javafx.scene.control.Labeled) pane.lookup(".label")).getText())
                .isEqualTo("Readings made: 1 of 24");
            assertThat(table.getColumns().get(4).getCellData(0)).isEqualTo("1 of 3");
            assertThat(table.getColumns().get(4).getCellData(1)).isEqualTo("0 of 3");
          });
    }
  }

  /** Shows a plan in a narrow room, into which every column has to fit. */
  private static void shown(ReadLessons.ClassPlan plan, BiConsumer<PlanPane, TableView<?>> look)
      throws Exception {
    Stage stage = FxToolkit.registerPrimaryStage();
    FxToolkit.setupFixture(
        () -> {
          PlanPane pane = new PlanPane(Words.english(), plan, SharedTables.read());
          stage.setScene(new Scene(pane, 640, 600));
          stage.show();
          pane.applyCss();
          pane.layout();
          TableView<?> table = (TableView<?>) pane.lookup(".table-view");
          double wide = table.getColumns().stream().mapToDouble(each -> each.getWidth()).sum();
          assertThat(wide).isLessThanOrEqualTo(640);
          look.accept(pane, table);
          stage.hide();
        });
  }

  private static void measure(Classroom room, PlannedReading planned) {
    new LogClothReading(room.book, Classroom.CLOCK)
        .save(
            new LogClothReading.Whose(
                Objects.requireNonNull(planned.clothId()),
                room.schoolClass.id(),
                planned.lessonId(),
                planned.studentId()),
            Map.of("grain", planned.grain().key(), "gauge", "100", "stretched", "140"),
            true)
        .value();
  }
}
