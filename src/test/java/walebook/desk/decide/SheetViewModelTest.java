package walebook.desk.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
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
import walebook.record.Student;
import walebook.words.Words;
import walebook.working.Message;
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
      assertThat(model.mendProperty().get()).contains("must reach");
      type(model, "gauge-to", "9");
      assertThat(Objects.requireNonNull(model.fields().field("gauge-to").problem().get()).code())
          .isEqualTo("gauge.shorter");
    }
  }

  /** 9 cm round a head: 90 mm was typed for 57.1 cm, or the unit is another one. */
  @Test
  void nothingIsWorkedWithAGirthThatIsAskedAbout() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("q.walebook"), 1)) {
      SheetViewModel model = top(session(made), made);
      assertThat(verdict(model, Check.Kind.USED)).isEqualTo(Verdict.MET);
      type(model, "body-chest", "90 mm");
      assertThat(
              Objects.requireNonNull(model.fields().field("body-chest").problem().get()).refuses())
          .isFalse();
      assertThat(verdict(model, Check.Kind.USED)).isEqualTo(Verdict.NOT_KNOWN);
      assertThat(Words.english().say(used(model)))
          .contains("answer the question")
          .contains("chest");
      type(model, "sheet-name", "A cuff");
      model.save();
      assertThat(verdict(model, Check.Kind.USED)).as("confirmed by saving").isEqualTo(Verdict.MET);
      type(model, "body-chest", "91 mm");
      assertThat(verdict(model, Check.Kind.USED)).isEqualTo(Verdict.NOT_KNOWN);
    }
  }

  private static Message used(SheetViewModel model) {
    return answers(model).checks().stream()
        .filter(each -> each.kind() == Check.Kind.USED)
        .findFirst()
        .orElseThrow()
        .working()
        .says();
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
      Map<String, String> typed = model.fields().typed();
      // Said outright when it is saved; seams across a girth that nobody measured are not kept.
      typed.put("wear", "day");
      typed.put("upper-arm-seams", "");
      assertThat(again.fields().typed()).isEqualTo(typed);
      type(again, "keep-body", "no");
      again.save();
      assertThat(session.book().garments().bodyOf(saved.id())).isEmpty();
    }
  }

  /** The second student opens the first one's sheet, in her own name. */
  @Test
  void anotherStudentsGirthsAreNeitherShownNorLost() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("o.walebook"), 2)) {
      Session session = session(made);
      SheetViewModel model = top(session, made);
      type(model, "sheet-name", "Grey top");
      type(model, "keep-body", "yes");
      model.save();
      GarmentSheet saved = session.book().garments().all().get(0);
      Map<String, Double> girths = session.book().garments().bodyOf(saved.id());
      Student other =
          session.book().students().all().stream()
              .filter(each -> !each.id().equals(made.room.first.id()))
              .findFirst()
              .orElseThrow();
      session.studentProperty().set(other);
      SheetViewModel seen = new SheetViewModel(session, Unit.CM);
      seen.open(saved);
      assertThat(seen.isBodyHidden()).isTrue();
      assertThat(seen.othersBodyProperty().get()).contains(made.room.first.name());
      assertThat(seen.fields().typed())
          .allSatisfy((field, text) -> assertThat(field + text).doesNotMatch("body-.*\\d"));
      assertThat(verdict(seen, Check.Kind.USED)).isEqualTo(Verdict.NOT_KNOWN);
      type(seen, "remark", "hem 3 cm longer");
      seen.save();
      assertThat(session.book().garments().bodyOf(saved.id())).isEqualTo(girths);
      session.studentProperty().set(null);
      SheetViewModel tutor = new SheetViewModel(session, Unit.CM);
      tutor.open(session.book().garments().all().get(0));
      assertThat(tutor.othersBodyProperty().get()).isEmpty();
      assertThat(tutor.fields().text("body-chest")).isEqualTo("90");
    }
  }

  /** The owner typed on, and left it; then another student changed the sheet and saved it. */
  @Test
  void anothersSaveLosesNothingThatTheOwnerTyped() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("p.walebook"), 2)) {
      Session session = session(made);
      SheetViewModel model = top(session, made);
      type(model, "sheet-name", "Grey top");
      type(model, "keep-body", "yes");
      model.save();
      type(model, "remark", "hem 2 cm lon");
      type(model, "body-chest", "92");
      model.keepDraft();
      Student other =
          session.book().students().all().stream()
              .filter(each -> !each.id().equals(made.room.first.id()))
              .findFirst()
              .orElseThrow();
      session.studentProperty().set(other);
      SheetViewModel seen = new SheetViewModel(session, Unit.CM);
      seen.open(session.book().garments().all().get(0));
      assertThat(seen.fields().text("remark")).as("the owner's own business").isEmpty();
      type(seen, "seams", "3");
      seen.keepDraft();
      seen.save();
      session.studentProperty().set(made.room.first);
      SheetViewModel back = new SheetViewModel(session, Unit.CM);
      back.open(session.book().garments().all().get(0));
      assertThat(back.fields().text("remark")).isEqualTo("hem 2 cm lon");
      assertThat(back.fields().text("body-chest")).isEqualTo("92");
      assertThat(back.fields().text("seams")).as("as saved since").isEqualTo("3");
      assertThat(back.noticeProperty().get().says()).contains("saved since");
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
      int[] there = {0};
      model.plan(wanted, () -> there[0]++);
      assertThat(plan(session, made)).isEqualTo(before + 1);
      assertThat(there[0]).isEqualTo(1);
      assertThat(model.noticeProperty().get().says())
          .containsPattern("[A-Z0-9]{3}-[A-Z0-9]{3} is on the plan of")
          .contains(made.room.first.name());
      session.studentProperty().set(null);
      model.plan(wanted, () -> {});
      assertThat(model.noticeProperty().get().says()).contains("who you are");
    }
  }

  private static int plan(Session session, PlannedClass made) {
    return session.book().lessons().planOf(made.room.schoolClass.id(), made.room.first.id()).size();
  }

  @Test
  void halfTypedItIsThereAgainAfterACrash() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("d.walebook"), 1)) {
      Session session = session(made);
      SheetViewModel model = top(session, made);
      type(model, "sheet-name", "Grey t");
      type(model, "finished-waist", "7x");
      model.keepDraft();
      SheetViewModel after = new SheetViewModel(session, Unit.CM);
      after.begin();
      assertThat(after.fields().text("sheet-name")).isEqualTo("Grey t");
      assertThat(after.fields().text("finished-waist")).isEqualTo("7x");
      assertThat(after.fields().text("body-chest")).isEmpty();
      assertThat(after.noticeProperty().get().says()).contains("here again");
      type(after, "finished-waist", "70");
      after.save();
      SheetViewModel next = new SheetViewModel(session, Unit.CM);
      next.begin();
      assertThat(next.fields().text("sheet-name")).isEmpty();
    }
  }

  @Test
  void aSavedSheetThatWasChangedComesBackToo() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("e.walebook"), 1)) {
      Session session = session(made);
      SheetViewModel model = top(session, made);
      type(model, "sheet-name", "Grey top");
      model.save();
      GarmentSheet saved = session.book().garments().all().get(0);
      type(model, "remark", "hem 2 cm lon");
      model.rest();
      SheetViewModel after = new SheetViewModel(session, Unit.CM);
      after.open(saved);
      assertThat(after.fields().text("remark")).isEqualTo("hem 2 cm lon");
      after.discard();
      assertThat(after.fields().text("remark")).isEmpty();
      assertThat(after.fields().text("sheet-name")).isEqualTo("Grey top");
      Runnable undo = Objects.requireNonNull(after.noticeProperty().get().undo());
      undo.run();
      assertThat(after.fields().text("remark")).isEqualTo("hem 2 cm lon");
    }
  }

  @Test
  void nothingTypedIsNoDraft() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("f.walebook"), 1)) {
      Session session = session(made);
      SheetViewModel model = new SheetViewModel(session, Unit.CM);
      model.begin();
      model.keepDraft();
      model.rest();
      assertThat(session.book().drafts().of("garment")).isEmpty();
    }
  }
}
