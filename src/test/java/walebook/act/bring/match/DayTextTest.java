package walebook.act.bring.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;

class DayTextTest {
  private static Answer<LocalDate> read(String text, DayOrder order) {
    return DayText.read(text, order, new Place.Whole());
  }

  @ParameterizedTest
  @CsvSource({
    "2026-10-05, UNKNOWN",
    "2026-10-05T18:30:00, UNKNOWN",
    "2026/10/05, UNKNOWN",
    "5.10.2026, MONTH_FIRST",
    "05.10.26, UNKNOWN",
    "5. 10. 2026, UNKNOWN",
    "5/10/2026, DAY_FIRST",
    "10/5/2026, MONTH_FIRST",
    "05-10-2026 18:30, DAY_FIRST"
  })
  void everyKindIsTheSameDay(String text, DayOrder order) {
    assertThat(read(text, order).value()).isEqualTo(LocalDate.of(2026, 10, 5));
  }

  @Test
  void aDayBeyondTwelveTellsItsOrderByItself() {
    assertThat(read("25/10/2026", DayOrder.UNKNOWN).value())
        .isEqualTo(read("10/25/2026", DayOrder.UNKNOWN).value())
        .isEqualTo(LocalDate.of(2026, 10, 25));
    assertThat(DayText.order(List.of("3/4/2026", "25/4/2026"))).isEqualTo(DayOrder.DAY_FIRST);
    assertThat(DayText.order(List.of("3/4/2026", "4/25/2026"))).isEqualTo(DayOrder.MONTH_FIRST);
    assertThat(DayText.order(List.of("3/4/2026"))).isEqualTo(DayOrder.UNKNOWN);
    assertThat(DayText.order(List.of("25/4/2026", "4/25/2026")))
        .as("a table of two minds tells nothing")
        .isEqualTo(DayOrder.UNKNOWN);
  }

  @Test
  void whatReadsTwoWaysIsAsked() {
    assertThat(read("3/4/2026", DayOrder.UNKNOWN).problems())
        .extracting(Problem::code)
        .containsExactly("bring.day-order");
    assertThat(read("4/4/2026", DayOrder.UNKNOWN).isGood()).as("the same either way").isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"31.2.2026", "tomorrow", "5.10.", "2026", "25/10/2026x", "1/25/25/2026"})
  void whatIsNoDayIsRefused(String text) {
    assertThat(read(text, DayOrder.DAY_FIRST).problems())
        .extracting(Problem::code)
        .containsExactly("date.not-a-date");
  }

  @Test
  void daysBefore1900AreRefused() {
    assertThat(read("5.10.1899", DayOrder.UNKNOWN).problems())
        .extracting(Problem::code)
        .containsExactly("in.no-day");
  }
}
