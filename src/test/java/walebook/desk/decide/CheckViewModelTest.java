package walebook.desk.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import walebook.act.decide.AllCalculations;
import walebook.drawing.Drawing;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.tables.SharedTables;
import walebook.words.Words;

class CheckViewModelTest {
  private final SharedTables tables = SharedTables.read();
  private final Words words = Words.english();

  private CheckViewModel check(String name, Unit lengths, String... typed) {
    CheckViewModel model =
        AllCalculations.list(tables).stream()
            .filter(each -> each.name().equals(name))
            .findFirst()
            .map(each -> new CheckViewModel(each, words, lengths))
            .orElseThrow();
    for (String each : typed) {
      String[] pair = each.split("=", 2);
      model.type(pair[0], pair[1]);
    }
    return model;
  }

  private static double value(CheckViewModel model) {
    return Objects.requireNonNull(model.outcomeProperty().get().working()).value();
  }

  @Test
  void theWorkingFollowsWhatIsTyped() {
    CheckViewModel model = check("stretch", Unit.MM);
    assertThat(model.outcomeProperty().get().working()).isNull();
    assertThat(model.outcomeProperty().get().hint()).contains("while stretched");
    // Common practice: a gauge of 10 cm that reaches 15 cm stretches by 50 %, to 13 cm by 30 %.
    model.type("stretched", "15 cm");
    assertThat(value(model)).isEqualTo(50);
    assertThat(model.outcomeProperty().get().drawing()).isNotNull();
    model.type("stretched", "130");
    assertThat(value(model)).isEqualTo(30);
    model.type("stretched", "13x");
    assertThat(model.outcomeProperty().get().working()).isNull();
    assertThat(Objects.requireNonNull(model.problemAt("stretched")).refuses()).isTrue();
    model.startAgain();
    assertThat(model.problemAt("stretched")).isNull();
    assertThat(model.outcomeProperty().get().hint()).contains("while stretched");
  }

  @Test
  void usualValuesStandInTheUsersUnit() {
    CheckViewModel model = check("stretch", Unit.INCH, "stretched=6 in");
    // The usual gauge of 100 mm is 3.937 in: 6 in is 152.4 mm (international inch, 25.4 mm).
    assertThat(value(model)).isCloseTo(52.4, within(0.01));
    CheckViewModel cm = check("stretch", Unit.CM, "stretched=15");
    assertThat(value(cm)).isEqualTo(50);
    // Stitches are told in mm whatever cloth is measured in: 4 mm by 3 mm is a path of 5 mm.
    CheckViewModel zigzag = check("zigzag", Unit.INCH, "width=4", "length=3");
    assertThat(value(zigzag)).isCloseTo(100 * (5.0 / 3 - 1), within(1e-9));
  }

  @Test
  void whatACheckHasAgainstANumberIsToldAtItsField() {
    CheckViewModel model = check("ease", Unit.MM, "body=90", "finished=800");
    Problem asked = Objects.requireNonNull(model.problemAt("body"));
    assertThat(asked.refuses()).as("90 mm: were cm meant?").isFalse();
    model.type("body", "-5");
    assertThat(Objects.requireNonNull(model.problemAt("body")).refuses()).isTrue();
    assertThat(model.outcomeProperty().get().working()).isNull();
    model.type("body", "900");
    assertThat(model.problemAt("body")).isNull();
    // 80 cm round a body of 90 cm: ease −10 cm.
    assertThat(value(model)).isEqualTo(-100);
  }

  @Test
  void severalNumbersAndChoicesAreFields() {
    CheckViewModel model =
        check("segment-marks", Unit.MM, "opening=560", "band-length=448", "segments=90;190;270");
    assertThat(Objects.requireNonNull(model.problemAt("segments")).code()).isEqualTo("marks.sum");
    model.type("segments", "90; 190; 280");
    assertThat(model.problemAt("segments")).isNull();
    assertThat(model.outcomeProperty().get().working()).isNotNull();
    CheckViewModel held = check("seam-stretch", Unit.MM, "reached=160", "end=held");
    assertThat(words.say(Objects.requireNonNull(held.outcomeProperty().get().working()).says()))
        .contains("at least");
  }

  @Test
  void drawingsTakeWhateverACheckTakes() {
    String[][] given = {
      {"growth", "released=104"},
      {"recovery", "stretched=150", "released=104"},
      {"pattern-gauge", "gauge-to=150"},
      {"edge-change", "sewn=104"},
      {"zigzag", "length=2.5"},
      {"zigzag", "length=5", "width=2", "dial=full", "steps=3"},
      {"zigzag-width", "target=50", "length=2.5"},
      {"stretch-used", "body=900", "finished=800", "stretch=50"},
      {"negative-ease", "body=900", "strain=12.5"},
      {"which-way", "body=900", "finished=800", "course=60"},
      {"allowance", "allowance=15", "sewn=6"},
      {"curved-edge", "allowance=15", "sewn=6"},
      {"overlocker", "allowance=15", "knife=6.5"},
      {"band", "opening=560", "ratio=0.8", "band-width=20"},
      {"locked-span", "line=400", "motifs=60;60", "gaps=20", "stretch=50"}
    };
    for (String[] each : given) {
      String[] typed = java.util.Arrays.copyOfRange(each, 1, each.length);
      Drawing drawing = check(each[0], Unit.MM, typed).outcomeProperty().get().drawing();
      assertThat(drawing).as(each[0]).isNotNull();
      assertThat(Objects.requireNonNull(drawing).at(400, words).shapes()).isNotEmpty();
    }
  }

  @Test
  void whatThePictureHasNoRoomForIsWorkedAllTheSame() {
    for (String[] each :
        new String[][] {
          {"allowance", "allowance=90", "sewn=6"},
          {"curved-edge", "allowance=15", "sewn=6", "cap-turn=300"},
          {"zigzag", "length=2.5", "width=3", "steps=2"},
          {"zigzag", "length=0.05"}
        }) {
      String[] typed = java.util.Arrays.copyOfRange(each, 1, each.length);
      CheckViewModel.Outcome outcome = check(each[0], Unit.MM, typed).outcomeProperty().get();
      assertThat(outcome.drawing()).as(String.join(" ", each)).isNull();
      assertThat(outcome.working() != null || !outcome.hint().isEmpty()).isTrue();
    }
  }
}
