package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import walebook.desk.common.DayWords;

class ProgressViewTest {
  /** What a cell keeps free at both sides by the look's sheet, and rounding, in heights of text. */
  private static final double AROUND = 1.6;

  private static final float SIZE = 100;

  @Test
  void everyDayOfAYearIsWholeInItsColumn() throws Exception {
    Font font;
    try (InputStream file =
        ProgressView.class.getResourceAsStream(
            "/walebook/desk/fonts/AtkinsonHyperlegibleNext_400Regular.ttf")) {
      font = Font.createFont(Font.TRUETYPE_FONT, Objects.requireNonNull(file)).deriveFont(SIZE);
    }
    FontRenderContext fine = new FontRenderContext(null, true, true);
    LocalDate first = LocalDate.of(2026, 1, 1);
    for (int day = 0; day < 365; day++) {
      String says = DayWords.of(first.plusDays(day));
      double ems = font.getStringBounds(says, fine).getWidth() / SIZE + AROUND;
      assertThat(ems).as(says).isLessThan(ProgressView.LAST_EMS);
    }
  }
}
