package walebook.sheet.in;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Random;
import org.apache.poi.ss.usermodel.DateUtil;
import org.junit.jupiter.api.Test;

/** Days by number against ECMA-376 Part 1, 18.17.4.1, and against the library's own reading. */
class SerialDayTest {
  @Test
  void theStandardsOwnExamples() {
    // ECMA-376 Part 1, 18.17.4.1: 1900 date system, 1 is 1900-01-01; last day 9999-12-31.
    assertThat(SerialDay.of(1, false)).isEqualTo(LocalDate.of(1900, 1, 1));
    assertThat(SerialDay.of(2_958_465, false)).isEqualTo(LocalDate.of(9999, 12, 31));
    // The same: 1904 date system, 0 is 1904-01-01.
    assertThat(SerialDay.of(0, true)).isEqualTo(LocalDate.of(1904, 1, 1));
  }

  @Test
  void beforeTheFirstDayAndOnTheOneThatNeverWasThereIsNone() {
    assertThat(SerialDay.of(0, false)).isNull();
    assertThat(SerialDay.of(0.75, false)).as("a time without a day").isNull();
    assertThat(SerialDay.of(-5, false)).isNull();
    assertThat(SerialDay.of(-1, true)).isNull();
    assertThat(SerialDay.of(60, false)).as("29 February 1900").isNull();
    assertThat(SerialDay.of(2_958_466, false)).isNull();
    assertThat(SerialDay.of(Double.NaN, false)).isNull();
  }

  @Test
  void everyOtherDayIsTheLibrarysDay() {
    Random random = new Random(6);
    for (int i = 0; i < 2000; i++) {
      int serial = 61 + random.nextInt(100_000);
      double timed = serial + random.nextDouble() * 0.99;
      assertThat(SerialDay.of(timed, false))
          .isEqualTo(DateUtil.getLocalDateTime(timed, false).toLocalDate());
      assertThat(SerialDay.of(timed, true))
          .isEqualTo(DateUtil.getLocalDateTime(timed, true).toLocalDate());
    }
    for (int serial = 1; serial < 60; serial++) {
      assertThat(SerialDay.of(serial, false))
          .isEqualTo(DateUtil.getLocalDateTime(serial, false).toLocalDate());
    }
  }
}
