package walebook.desk.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.garment.Advice;
import walebook.garment.Check;
import walebook.garment.GarmentAnswers;
import walebook.quantity.Unit;
import walebook.record.GarmentSheet;
import walebook.working.Verdict;

class SheetViewModelTest {
  @TempDir Path folder;

  private static Session session(PlannedClass made) {
    Session session =
        made.session(Worker.sameThread(), new PlannedClass.OneFile(Path.of("none.xlsx")));
    session.schoolClassProperty().set(made.room.schoolClass);
    session.studentProperty().set(made.room.first);
    return session;
  }

  private static void type(SheetViewModel model, String field, String text) {
    model.fields().field(field).text().set(text);
  }

  private static GarmentAnswers answers(SheetViewModel model) {
    return Objects.requireNonNull(model.answersProperty().get());
  }

  private static Verdict verdict(SheetViewModel model, Check.Kind kind) {
    return answers(model).checks().stream()
        .filter(each -> each.kind() == kind)
        .findFirst()
        .orElseThrow()
        .verdict();
  }

  /** A fitted top on the class's cloth, which stretches by some 62 % along the courses only. */
  private static SheetViewModel top(Session session, PlannedClass made) {
    SheetViewModel model = new SheetViewModel(session, Unit.CM);
    model.begin();
    type(model, "cloth", made.room.cloth.id().toString());
    type(model, "gauge-from", "10");
    type(model, "gauge-to", "13");
    type(model, "finished-chest", "80");
    type(model, "body-chest", "90");
    type(model, "opening-neckline", "50");
    type(model, "body-head", "57.1");
    return model;
  }

  @Test
  void everyChangeIsAnsweredAtOnce() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("a.walebook"), 1)) {
      SheetViewModel model = top(session(made), made);
      // 10 cm to 13 cm asks for 30 %.
      assertThat(verdict(model, Check.Kind.GAUGE)).isEqualTo(Verdict.MET);
      type(model, "gauge-to", "19");
      assertThat(verdict(model, Check.Kind.GAUGE)).isEqualTo(Verdict.NOT_MET);
      type(model, "grain-round", "wale");
      assertThat(verdict(model, Check.Kind.GAUGE)).isEqualTo(Verdict.NOT_KNOWN);
      type(model, "gauge-to", "9x");
      assertThat(model.answersProperty().get()).isNull();
      assertThat(model.fields().field("gauge-to").problem().get()).isNotNull();
      type(model, "gauge-to", "9");
      assertThat(Objects.requireNonNull(model.fields().field("gauge-to").problem().get()).code())
          .isEqualTo("gauge.shorter");
    }
  }

  @Test
  void aSheetNeedsANameToBeSavedAndKeepsTheBodyOnlyWhereWanted() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("b.walebook"), 1)) {
      Session session = session(made);
      SheetViewModel model = top(session, made);
      model.save();
      assertThat(model.fields().field("sheet-name").problem().get()).isNotNull();
      assertThat(session.book().garments().all()).isEmpty();
      type(model, "sheet-name", "Grey top");
      model.save();
      GarmentSheet saved = session.book().garments().all().get(0);
      assertThat(saved.studentId()).isEqualTo(made.room.first.id());
      assertThat(session.book().garments().bodyOf(saved.id())).isEmpty();
      type(model, "keep-body", "yes");
      model.save();
      assertThat(session.book().garments().bodyOf(saved.id()))
          .containsEntry("chest", 900.0)
          .containsEntry("head", 571.0);
      SheetViewModel again = new SheetViewModel(session, Unit.CM);
      again.open(session.book().garments().all().get(0));
      assertThat(again.fields().typed()).isEqualTo(model.fields().typed());
      type(again, "keep-body", "no");
      again.save();
      assertThat(session.book().garments().bodyOf(saved.id())).isEmpty();
    }
  }

  @Test
  void theMissingPieceGoesOnThePlanWithOnePress() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("c.walebook"), 1)) {
      Session session = session(made);
      SheetViewModel model = top(session, made);
      type(model, "stitch", "514");
      type(model, "machine-kind", "overlocker");
      type(model, "neckline-seam", "yes");
      Advice.PieceWanted wanted =
          answers(model).advice().stream()
              .map(Advice::piece)
              .filter(Objects::nonNull)
              .findFirst()
              .orElseThrow();
      int before = plan(session, made);
      model.plan(wanted);
      assertThat(plan(session, made)).isEqualTo(before + 1);
      assertThat(model.noticeProperty().get().says()).contains("on the plan");
      session.studentProperty().set(null);
      model.plan(wanted);
      assertThat(model.noticeProperty().get().says()).contains("who you are");
    }
  }

  private static int plan(Session session, PlannedClass made) {
    return session.book().lessons().planOf(made.room.schoolClass.id(), made.room.first.id()).size();
  }
}
