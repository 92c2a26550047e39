package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MedianPolishTest {
  private static MedianPolish.Cell cell(String row, String column, double... values) {
    Counted counted = new Counted();
    for (double each : values) {
      counted.add(each);
    }
    return new MedianPolish.Cell(List.of(row, column), counted);
  }

  private static List<MedianPolish.Cell> table(double[][] rows) {
    List<MedianPolish.Cell> cells = new ArrayList<>();
    for (int row = 0; row < rows.length; row++) {
      for (int column = 0; column < rows[row].length; column++) {
        cells.add(cell("r" + row, "c" + column, rows[row][column]));
      }
    }
    return cells;
  }

  /**
   * The table of the example to medpolish in R's package stats, of which the sum of the absolute
   * residuals is given as 19 (from memory). By hand: the rows' medians are 14, 7, 8, 10 and 0, the
   * middle one of them 8; what is then left of the columns has the medians 0, −1 and 0.
   */
  @Test
  void aTableIsTakenApartAsByHand() {
    double[][] table = {{14, 15, 14}, {7, 4, 7}, {8, 2, 10}, {15, 9, 10}, {0, 2, 0}};
    List<MedianPolish.Cell> cells = table(table);
    MedianPolish polish = MedianPolish.of(cells);
    double left = 0;
    for (int i = 0; i < cells.size(); i++) {
      left += Math.abs(table[i / 3][i % 3] - polish.fitted().get(i));
    }
    assertThat(left).isCloseTo(19, within(1e-9));
    assertThat(polish.fitted()).startsWith(14.0, 13.0, 14.0, 7.0);
    // 15 values, less the middle, four rows and two columns.
    assertThat(polish.spare()).isEqualTo(8);
  }

  /** One slip of 100 moves the fit of its own cell by no more than the scatter. */
  @Test
  void oneSlipDoesNotBendTheFit() {
    List<MedianPolish.Cell> cells =
        List.of(
            cell("1", "a", 30, 31, 32),
            cell("1", "b", 40, 41, 42),
            cell("2", "a", 50, 51, 52),
            cell("2", "b", 60, 161, 62));
    MedianPolish polish = MedianPolish.of(cells);
    assertThat(polish.fitted().get(3)).isCloseTo(61, within(1.01));
    assertThat(polish.spread()).isBetween(0.5, 3.0);
  }

  /** As many values as are fitted leave nothing to tell a spread from. */
  @Test
  void withNothingToSpareThereIsNoSpread() {
    MedianPolish polish = MedianPolish.of(List.of(cell("1", "a", 30), cell("2", "a", 50)));
    assertThat(polish.spread()).isZero();
    assertThat(polish.spare()).isZero();
    assertThat(polish.fitted()).containsExactly(30.0, 50.0);
  }
}
