package walebook.desk.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.quantity.Unit;

class NumberEntryTest {
  @Test
  void saysWhatItUnderstoodWhenTheUnitIsAnother() {
    NumberEntry entry = NumberEntry.length(Unit.MM, "gave");
    entry.textProperty().set("1/2 in");
    // The inch is 25.4 mm exactly (international yard and pound agreement, 1959).
    assertThat(entry.value()).isEqualTo(12.7);
    assertThat(entry.readingProperty().get().understood()).isEqualTo("12.7 mm");
    entry.textProperty().set("12,7");
    assertThat(entry.value()).isEqualTo(12.7);
    assertThat(entry.readingProperty().get().understood()).isEmpty();
  }

  @Test
  void aProblemWaitsUntilTheFieldIsLeftAndGoesWhenMended() {
    NumberEntry entry = NumberEntry.plain("width");
    entry.textProperty().set("2x");
    assertThat(entry.readingProperty().get().problem()).isNull();
    assertThat(entry.value()).isNull();
    entry.settle();
    Problem problem = entry.readingProperty().get().problem();
    assertThat(problem).isNotNull();
    assertThat(entry.textProperty().get()).isEqualTo("2x");
    entry.textProperty().set("2");
    assertThat(entry.readingProperty().get().problem()).isNull();
    assertThat(entry.value()).isEqualTo(2.0);
  }

  @Test
  void anEmptyFieldIsNoMistake() {
    NumberEntry entry = NumberEntry.whole("layers");
    entry.settle();
    assertThat(entry.readingProperty().get().problem()).isNull();
    assertThat(entry.value()).isNull();
    assertThat(entry.answer().isGood()).isFalse();
  }

  @Test
  void anUnlikelyValueIsAskedAboutAndKept() {
    NumberEntry entry =
        NumberEntry.plain("width")
            .checked(
                value ->
                    value < 20
                        ? Answer.good(value)
                        : new Answer.Good<>(
                            value,
                            List.of(
                                Problem.ask("number.unlikely", Place.field("width"), "25", ""))));
    entry.textProperty().set("25");
    entry.settle();
    assertThat(entry.value()).isEqualTo(25.0);
    Problem asked = entry.readingProperty().get().problem();
    assertThat(asked).isNotNull().extracting(Problem::refuses).isEqualTo(false);
  }

  @Test
  void aValuePutInComesBackUnchanged() {
    NumberEntry entry = NumberEntry.length(Unit.CM, "gauge-length");
    entry.put(152.5);
    assertThat(entry.textProperty().get()).isEqualTo("15.25");
    assertThat(entry.value()).isEqualTo(152.5);
    entry.put(null);
    assertThat(entry.isEmpty()).isTrue();
  }
}
