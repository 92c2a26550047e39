package walebook.desk.term;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.record.Dial;
import walebook.record.Machine;
import walebook.seam.StitchType;

class MachinesViewModelTest {
  @TempDir Path folder;

  private static StitchType stitch(MachinesViewModel model, String key) {
    return model.offered().stream()
        .filter(each -> each.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aNewMachineTakesTheNextNumberAndOnlyStitchesOfItsKind() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      MachinesViewModel model = new MachinesViewModel(Sessions.of(room));
      model.open(null);
      assertThat(model.fields().text("machine-number")).isEqualTo("5");
      model.sews(stitch(model, "304"), true);
      model.fields().field("machine-kind").text().set("overlocker");
      model.sews(stitch(model, "504"), true);
      model.fields().field("needle-to-knife").text().set("6.5");
      model.fields().field("dial-lengths").text().set("2,5=2,3, 4=3,7");
      model.save();
      assertThat(model.editingProperty().get()).isFalse();
      Machine made = model.machines().get(1);
      assertThat(made.stitches()).containsExactly("504");
      assertThat(made.needleToKnifeMm()).isEqualTo(6.5);
      assertThat(made.sewn(Dial.LENGTH, 4)).isEqualTo(3.7);
    }
  }

  @Test
  void aBrokenPairOrATakenNumberIsSaidAtTheField() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      MachinesViewModel model = new MachinesViewModel(Sessions.of(room));
      model.open(null);
      model.fields().field("machine-number").text().set("4");
      model.fields().field("dial-widths").text().set("2,5=2,2, 3=, 4=3,7");
      model.save();
      assertThat(model.editingProperty().get()).isTrue();
      assertThat(Objects.requireNonNull(model.fields().field("dial-widths").problem().get()).code())
          .isEqualTo("dial.pair");
      assertThat(
              Objects.requireNonNull(model.fields().field("dial-widths").problem().get()).found())
          .isEqualTo("3=");
      assertThat(
              Objects.requireNonNull(model.fields().field("machine-number").problem().get()).code())
          .isEqualTo("number.taken");
      assertThat(room.book.machines().all()).hasSize(1);
    }
  }

  @Test
  void whatIsUnlikelyIsAskedAboutUntilItIsTypedAnew() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      MachinesViewModel model = new MachinesViewModel(Sessions.of(room));
      model.open(null);
      model.fields().field("machine-kind").text().set("overlocker");
      model.fields().field("needle-to-knife").text().set("600");
      model.save();
      assertThat(model.editingProperty().get()).isTrue();
      assertThat(model.fields().asksProperty().get()).isTrue();
      model.fields().field("needle-to-knife").text().set("6");
      assertThat(model.fields().asksProperty().get()).isFalse();
      model.save();
      assertThat(model.editingProperty().get()).isFalse();
    }
  }

  @Test
  void anOpenedCardShowsWhatWasSaved() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      MachinesViewModel model = new MachinesViewModel(Sessions.of(room));
      model.open(room.machine);
      assertThat(model.fields().text("dial-lengths")).isEqualTo("2.5=2.2");
      assertThat(model.sews(stitch(model, "301"))).isTrue();
      model.save();
      assertThat(model.machines().get(0).stitches()).containsExactly("301", "304");
      assertThat(model.machines().get(0).pressure()).isEqualTo(room.machine.pressure());
    }
  }
}
