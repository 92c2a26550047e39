package walebook.act.bring.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Headers as people write them; the wordings are common practice. */
class GuessColumnsTest {
  private static List<String> guess(BringWhat what, String... headers) {
    return GuessColumns.of(what, List.of(headers), Map.of(), Map.of()).stream()
        .map(each -> each.unit().isEmpty() ? each.field() : each.field() + ":" + each.unit())
        .toList();
  }

  @Test
  void plainHeadersAreUnderstoodWhateverTheirCase() {
    assertThat(guess(BringWhat.PIECES, "STUDENT", "Fabric", "date", "Grain", "Needle size"))
        .containsExactly("student", "cloth", "sewn-on", "grain", "needle-nm");
    assertThat(guess(BringWhat.ROSTER, "Full name", "Code", "Level"))
        .containsExactly("student-name", "student-alias", "student-tier");
  }

  @Test
  void unitsInBracketsOrBehindAreUnderstood() {
    assertThat(
            guess(
                BringWhat.PIECES,
                "Gauge (mm)",
                "Before [cm]",
                "After in",
                "Stretched to (\")",
                "Held for (min)",
                "Load kg"))
        .containsExactly(
            "gauge:mm", "edge-before:cm", "edge-sewn:in", "end-length:in", "hold:min", "load:kg");
  }

  @Test
  void minutesAtTheMachineAreFoundButNotTheTimeOfDay() {
    for (String each : List.of("Minutes", "Minutes to sew", "Time to sew", "Sewing time", "mins")) {
      assertThat(guess(BringWhat.PIECES, each)).as(each).containsExactly("minutes");
    }
    assertThat(guess(BringWhat.PIECES, "Time (min)")).containsExactly("minutes:min");
    assertThat(guess(BringWhat.PIECES, "Time taken [s]")).containsExactly("minutes:s");
    assertThat(guess(BringWhat.PIECES, "Start time")).containsExactly("");
    assertThat(guess(BringWhat.PIECES, "Rest time (min)", "Hold time (s)"))
        .containsExactly("rest:min", "hold:s");
  }

  @Test
  void aUnitThatDoesNotFitKeepsAFieldAway() {
    assertThat(guess(BringWhat.PIECES, "Gauge (kg)")).containsExactly("");
  }

  @Test
  void aSlipOfTheHandIsForgivenAndNonsenseIsLeftOut() {
    assertThat(guess(BringWhat.PIECES, "Studnet", "Matrial", "Weather", "", "—"))
        .containsExactly("student", "cloth", "", "", "");
  }

  @Test
  void noFieldIsGivenToTwoColumnsAndTheCloserWins() {
    assertThat(guess(BringWhat.PIECES, "Name of fabric", "Fabric", "Student"))
        .containsExactly("", "cloth", "student");
  }

  @Test
  void whatWasChosenTheLastTimeComesBeforeAnyGuess() {
    Map<String, ColumnMatch> kept =
        Map.of("Fabric", new ColumnMatch("remark", ""), "Grade", ColumnMatch.LEFT_OUT);
    assertThat(
            GuessColumns.of(
                BringWhat.PIECES, List.of("Fabric", "Grade", "Material"), Map.of(), kept))
        .extracting(ColumnMatch::field)
        .containsExactly("remark", "", "cloth");
  }

  @Test
  void inchesAndMinutesBecomeTheFieldsOwnUnit() {
    // 1 in is 25.4 mm (international yard and pound agreement, 1959); 1 min is 60 s.
    assertThat(ColumnUnit.factor("sewn-width", "in")).isEqualTo(25.4);
    assertThat(ColumnUnit.factor("hold", "min")).isEqualTo(60.0);
    assertThat(ColumnUnit.factor("hold", "mm")).isNull();
    assertThat(ColumnUnit.sign("Inches")).isEqualTo("in");
  }
}
