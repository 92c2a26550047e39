package walebook.garment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.words.Words;
import walebook.working.AllCalculations;
import walebook.working.Calculation;
import walebook.working.Input;
import walebook.working.Verdict;
import walebook.working.Working;

/** What people get wrong at the board: each is named at its field, and nothing is guessed. */
class BadInputTest {
  private static final Words WORDS = Words.english();

  private static Answer<Working> run(String call) {
    String[] parts = call.split(" ", -1);
    Map<String, String> typed = new HashMap<>();
    for (int i = 1; i < parts.length; i++) {
      String[] pair = parts[i].split("=", -1);
      typed.put(pair[0], pair[1]);
    }
    return named(parts[0]).runTyped(typed, Unit.MM);
  }

  private static Calculation named(String name) {
    return GarmentCalculations.all(Rows.ROWS).stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** The list of bad inputs that the garment checks were asked to stand. */
  @ParameterizedTest
  @CsvSource({
    "ease body=900 finished=0, finished, girth.not-positive",
    "ease body=900 finished=-800, finished, girth.not-positive",
    "ease body=0 finished=800, body, girth.not-positive",
    "stretch-used body=900 finished=0 stretch=50, finished, girth.not-positive",
    "which-way body=900 finished=-1 course=60 wale=20, finished, girth.not-positive",
    "ease body=90ft finished=800, body, length.unit",
    "ease body=9o finished=800, body, number.letter-for-digit",
    "segment-marks opening=560 band-length=448 segments=90;190;250, segments, marks.sum",
    "segment-marks opening=560 band-length=448 segments=9cm;19cm;28ft, segments, length.unit",
    "band opening=560 ratio=85 band-width=20, ratio, ratio.percent",
    "pattern-gauge gauge-to=90, gauge-to, gauge.shorter"
  })
  void isRefusedAtItsField(String call, String field, String code) {
    Answer<Working> answer = run(call);
    assertThat(answer.isGood()).isFalse();
    assertThat(answer.problems())
        .filteredOn(each -> each.place().equals(Place.field(field)))
        .extracting(Problem::code)
        .contains(code);
    answer.problems().forEach(each -> assertThat(WORDS.say(each)).doesNotContain("{", "[problem"));
  }

  /** Unlikely is asked about, with what may have been meant. */
  @ParameterizedTest
  @CsvSource({
    "ease body=90 finished=80, girth.small, 90 cm",
    "ease body=9000 finished=8000, girth.large, 900 mm",
    "pattern-gauge gauge-to=400 stretch=50, gauge.far, ''"
  })
  void isAskedAboutAndStillAnswered(String call, String code, String meant) {
    Answer<Working> answer = run(call);
    assertThat(answer.isGood()).isTrue();
    Problem asked =
        answer.problems().stream()
            .filter(each -> each.code().equals(code))
            .findFirst()
            .orElseThrow();
    assertThat(asked.refuses()).isFalse();
    assertThat(asked.wanted()).contains(meant);
  }

  @Test
  void anOpeningLargerThanTheBodyHasNothingToStretch() {
    Working working = run("opening opening=620 over=601 cloth=50").value();
    assertThat(working.verdict()).isEqualTo(Verdict.MET);
    assertThat(WORDS.say(working.says())).contains("nothing has to stretch");
  }

  @Test
  void noReadingForTheGrainThatGoesRoundIsNotKnown() {
    assertThat(run("which-way body=900 finished=800 course=15").value().verdict())
        .isEqualTo(Verdict.NOT_KNOWN);
  }

  @Test
  void aRequirementAboveWhatAnyClothDoesIsNotMet() {
    assertThat(run("pattern-gauge gauge-to=400 stretch=120").value().verdict())
        .isEqualTo(Verdict.NOT_MET);
  }

  /** Whatever stands in a field, a calculation answers or refuses; it never falls over. */
  @Test
  void nothingCrashesWhateverIsTyped() {
    String[] rubbish = {
      "", " ", "0", "-1", "1e9", "NaN", "∞", "ten", "1/0", ";", "9 9", "99999999"
    };
    for (Calculation calculation : AllCalculations.all()) {
      for (Input bad : calculation.inputs()) {
        for (String text : rubbish) {
          Map<String, String> typed = new HashMap<>();
          calculation.inputs().stream()
              .filter(Input::required)
              .forEach(in -> typed.put(in.name(), "100"));
          typed.put(bad.name(), text);
          Answer<Working> answer = calculation.runTyped(typed, Unit.MM);
          assertThat(answer.isGood() || !answer.problems().isEmpty())
              .as(calculation.name() + " " + bad.name() + "=" + text)
              .isTrue();
          if (answer.isGood() && answer.value().result() != null) {
            assertThat(answer.value().value()).isFinite();
          }
        }
      }
    }
  }
}
