package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;
import walebook.words.Words;

class FairTablesTest {
  /** In a spreadsheet each number must stand below its own title. */
  @Test
  void eachNumberOfAPlotStandsBelowItsTitle() {
    DotRow row = new DotRow("zigzag", List.of(new DotRow.Dot(3, false)), 3.0, 1.0, 5.0, 0);
    assertThat(FairTables.dots(Words.english(), new DotPlot("%", List.of(row), null)))
        .containsExactly(
            List.of("setting (dial numbers)", "pieces", "middle", "95 % from", "95 % to"),
            List.of("zigzag", "1", "3.0", "1.0", "5.0"));
  }
}
