package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.compare.Factor;
import walebook.compare.TalliedComparison;
import walebook.compare.TalliedRow;

class TermFindingsTest {
  private static final List<Factor> ALL = List.of(Factor.CLOTH, Factor.STITCH, Factor.WIDTH);

  private static TalliedRow row(String... levels) {
    return new TalliedRow(List.of(levels), 1, 1, 0, 1, 0, null, null, null, null);
  }

  private static TalliedComparison comparison(int cloths, int stitches, int widths) {
    List<TalliedRow> rows = new ArrayList<>();
    for (int cloth = 0; cloth < cloths; cloth++) {
      for (int stitch = 0; stitch < stitches; stitch++) {
        for (int width = 0; width < widths; width++) {
          rows.add(row("cloth " + cloth, "stitch " + stitch, String.valueOf(width)));
        }
      }
    }
    return new TalliedComparison(ALL, rows, row(), 0);
  }

  @Test
  void allThatTellsSettingsApartIsAskedAboutWhileTheyAreFewEnough() {
    assertThat(TermFindings.telling(comparison(5, 4, 10))).isEqualTo(ALL);
  }

  @Test
  void ofMoreSettingsThanAFitTakesTheLastAreLetGoAndTheClothNever() {
    assertThat(TermFindings.telling(comparison(5, 4, 11))).isEqualTo(ALL.subList(0, 2));
    assertThat(TermFindings.telling(comparison(101, 2, 2))).containsExactly(Factor.CLOTH);
    assertThat(TermFindings.telling(comparison(201, 1, 1))).containsExactly(Factor.CLOTH);
  }

  @Test
  void nothingIsAskedWhereAllIsAlike() {
    assertThat(TermFindings.telling(new TalliedComparison(List.of(), List.of(), row(), 0)))
        .isEmpty();
  }
}
