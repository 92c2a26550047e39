package walebook.desk.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.drawing.AllowancePicture;
import walebook.drawing.BandPicture;
import walebook.drawing.GarmentPictures.Kind;
import walebook.drawing.RingsPicture;
import walebook.quantity.Unit;

class PicturesViewModelTest {
  @TempDir Path folder;

  private static void type(SheetViewModel model, String field, String text) {
    model.fields().field(field).text().set(text);
  }

  @Test
  void picturesComeWithTheNumbersAndTheChosenOneStaysChosen() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("a.walebook"), 1)) {
      Session session = made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE);
      SheetViewModel sheet = new SheetViewModel(session, Unit.MM);
      sheet.begin();
      PicturesViewModel model =
          new PicturesViewModel(session.words(), Unit.MM, sheet.answersProperty());
      assertThat(model.kinds()).containsExactly(Kind.PIECE);

      type(sheet, "finished-chest", "880");
      type(sheet, "body-chest", "920");
      type(sheet, "opening-neckline", "520");
      type(sheet, "body-head", "575");
      model.kindProperty().set(Kind.RINGS);
      assertThat(model.abouts()).containsExactly("chest or bust", "neckline over head");
      model.aboutProperty().set("neckline over head");
      assertThat(Objects.requireNonNull(model.shownProperty().get()).drawing())
          .isEqualTo(new RingsPicture(575, 520, Unit.MM));

      type(sheet, "allowance", "15");
      type(sheet, "sewn", "6");
      model.kindProperty().set(Kind.ALLOWANCE);
      assertThat(Objects.requireNonNull(model.shownProperty().get()).drawing())
          .isEqualTo(new AllowancePicture(15, 6, 0, 0));
      type(sheet, "sleeve", "yes");
      assertThat(Objects.requireNonNull(model.shownProperty().get()).drawing())
          .isEqualTo(new AllowancePicture(15, 6, Math.toRadians(100), Math.toRadians(170)));

      type(sheet, "neckline-band", "yes");
      type(sheet, "neckline-ratio", "0.8");
      type(sheet, "neckline-finished-width", "20");
      model.kindProperty().set(Kind.BAND);
      assertThat(Objects.requireNonNull(model.shownProperty().get()).drawing())
          .isInstanceOf(BandPicture.class);
      type(sheet, "neckline-band", "");
      assertThat(model.kinds()).doesNotContain(Kind.BAND);
      assertThat(model.kindProperty().get()).isEqualTo(Kind.RINGS);

      type(sheet, "sewn", "x");
      assertThat(model.allProperty().get()).isEmpty();
      assertThat(model.shownProperty().get()).isNull();
    }
  }
}
