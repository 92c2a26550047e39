package walebook.desk.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.garment.Check;
import walebook.garment.TwoChoices;
import walebook.quantity.Unit;
import walebook.working.Verdict;

/** The class's cloth stretches by some 62 % along the courses; of the wales nothing is known. */
class CompareViewModelTest {
  @TempDir Path folder;

  private static void type(SheetViewModel model, String field, String text) {
    model.fields().field(field).text().set(text);
  }

  private static TwoChoices.Pair gauge(CompareViewModel model) {
    return Objects.requireNonNull(model.bothProperty().get()).pairs().stream()
        .filter(each -> Objects.requireNonNull(each.one()).kind() == Check.Kind.GAUGE)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void bothFollowEveryChangeAndTheSheetStaysUntilTheOtherIsTaken() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("a.walebook"), 1)) {
      Session session = made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE);
      SheetViewModel sheet = new SheetViewModel(session, Unit.CM);
      sheet.begin();
      type(sheet, "cloth", made.room.cloth.id().toString());
      type(sheet, "gauge-from", "10");
      type(sheet, "gauge-to", "13");
      CompareViewModel model = new CompareViewModel(sheet);
      assertThat(gauge(model).differs()).isEqualTo(TwoChoices.Differs.SAME);
      assertThat(model.differs("grain-round")).isFalse();

      type(model.other(), "grain-round", "wale");
      assertThat(model.differs("grain-round")).isTrue();
      assertThat(Objects.requireNonNull(gauge(model).one()).verdict()).isEqualTo(Verdict.MET);
      assertThat(Objects.requireNonNull(gauge(model).other()).verdict())
          .isEqualTo(Verdict.NOT_KNOWN);
      assertThat(sheet.fields().text("grain-round")).isEqualTo("course");

      type(model.other(), "dial-width", "2x");
      assertThat(model.bothProperty().get()).isNull();
      type(model.other(), "dial-width", "2");
      assertThat(model.bothProperty().get()).isNotNull();

      model.take();
      assertThat(sheet.fields().text("grain-round")).isEqualTo("wale");
      assertThat(sheet.fields().text("dial-width")).isEqualTo("2");
      assertThat(gauge(model).differs()).isEqualTo(TwoChoices.Differs.SAME);
      assertThat(session.book().garments().all()).isEmpty();
    }
  }

  @Test
  void onlyWhatCanBeChosenStaysTheOthersOwn() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("b.walebook"), 1)) {
      Session session = made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE);
      SheetViewModel sheet = new SheetViewModel(session, Unit.MM);
      sheet.begin();
      CompareViewModel model = new CompareViewModel(sheet);
      type(model.other(), "stitch", "514");
      type(model.other(), "machine-kind", "overlocker");
      type(sheet, "finished-chest", "880");
      model.follow();
      assertThat(model.other().fields().text("finished-chest")).isEqualTo("880");
      assertThat(model.other().fields().text("stitch")).isEqualTo("514");
      TwoChoices both = Objects.requireNonNull(model.bothProperty().get());
      assertThat(both.other().cautions()).anyMatch(each -> each.key().equals("overlocker"));
      assertThat(both.one().cautions()).isEmpty();
    }
  }
}
