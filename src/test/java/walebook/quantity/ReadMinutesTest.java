package walebook.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import walebook.problem.Answer;
import walebook.problem.Place;

class ReadMinutesTest {
  private static final Place PLACE = Place.field("minutes");

  // A minute has 60 seconds and an hour 60 minutes (SI brochure, 9th edition, table 8).
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "4 | 4",
        "4.5 | 4.5",
        "4,5 | 4.5",
        "4 1/2 | 4.5",
        "4:30 | 4.5",
        "0:04:30 | 4.5",
        "1:00:00 | 60",
        "90:00 | 90",
        "4 min | 4",
        "4min | 4",
        "4,5 Min. | 4.5",
        "4 minutes | 4",
        "1 minute 15 seconds | 1.25",
        "4 min 30 s | 4.5",
        "4m30s | 4.5",
        "270 s | 4.5",
        "20 sec | 0.333",
        "0 | 0",
        "-3 | -3",
      })
  void minutesAreReadHoweverTheyAreWritten(String typed, double minutes) {
    assertThat(ReadMinutes.read(typed, PLACE).value()).isEqualTo(minutes);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "four", "4:75", ":30", "4 5", "4 %", "min", "4 min 30", "1:2:3:4"})
  void whatIsNotMinutesIsSaidToBeSo(String typed) {
    Answer<Double> read = ReadMinutes.read(typed, PLACE);

    assertThat(read.isGood()).isFalse();
    assertThat(read.problems().get(0).code()).startsWith("minutes.");
    assertThat(read.problems().get(0).place()).isEqualTo(PLACE);
  }

  @Test
  void aUnitThatIsNotOfTimeIsNamedAsSuch() {
    assertThat(ReadMinutes.read("4 mm", PLACE).problems().get(0).code()).isEqualTo("minutes.unit");
    assertThat(ReadMinutes.read("1 h", PLACE).problems().get(0).code()).isEqualTo("minutes.unit");
  }

  @Test
  void whatIsShownAndTypedAgainIsTheSame() {
    for (int seconds = 1; seconds <= 36_000; seconds += 7) {
      double once = ReadMinutes.read(seconds + " s", PLACE).value();
      assertThat(ReadMinutes.read(Show.upTo(once, 3), PLACE).value()).isEqualTo(once);
    }
  }
}
