package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import walebook.drawing.DotPlot;
import walebook.drawing.DotRow;

class BoardPagesTest {
  private static final int ROWS = 8;

  private static DotPlot plot(int rows) {
    return new DotPlot(
        "%",
        IntStream.range(0, rows)
            .mapToObj(nth -> DotRow.of("row " + nth, List.of(new DotRow.Dot(10 * nth, false))))
            .toList(),
        null);
  }

  private static List<BoardPages.Page> pages(List<String> says, int rows) {
    return BoardPages.of(List.of(new Finding(says, plot(rows), "note")), ROWS);
  }

  @Test
  void theFirstSentenceStandsWithThePlotAndTheOthersFollow() {
    List<BoardPages.Page> pages = pages(List.of("first", "second", "third"), ROWS);
    assertThat(pages).hasSize(2);
    assertThat(pages.get(0).says()).containsExactly("first");
    assertThat(pages.get(0).plot()).isEqualTo(plot(ROWS));
    assertThat(pages.get(0).note()).isEqualTo("note");
    assertThat(pages.get(1).says()).containsExactly("second", "third");
    assertThat(pages.get(1).plot()).isNull();
  }

  @Test
  void everyRowOfALongPlotComesOnceInLargeLettersAndAllOnOneScale() {
    List<BoardPages.Page> pages = pages(List.of("first"), 9 * ROWS + 1);
    List<String> labels = new ArrayList<>();
    List<DotPlot.Span> spans = new ArrayList<>();
    for (BoardPages.Page page : pages) {
      DotPlot part = (DotPlot) Objects.requireNonNull(page.plot());
      assertThat(part.rows()).hasSizeBetween(2, ROWS);
      part.rows().forEach(row -> labels.add(row.label()));
      spans.add(part.span());
    }
    assertThat(labels).isEqualTo(plot(9 * ROWS + 1).rows().stream().map(DotRow::label).toList());
    assertThat(spans).doesNotContainNull().containsOnly(spans.get(0));
  }

  /** Letters of half the size can't be read from the back. */
  @Test
  void aPlotOfTwoScreensIsCutAndOneOfLittleMoreIsNot() {
    assertThat(pages(List.of("first"), 2 * ROWS))
        .extracting(page -> ((DotPlot) Objects.requireNonNull(page.plot())).rows().size())
        .containsExactly(ROWS, ROWS);
    assertThat(pages(List.of("first"), ROWS + 2)).hasSize(1);
  }

  @Test
  void withoutAPlotAllSentencesStandTogether() {
    Finding finding = new Finding(List.of("first", "second"), null, "");
    List<BoardPages.Page> pages = BoardPages.of(List.of(finding), ROWS);
    assertThat(pages).hasSize(1);
    assertThat(pages.get(0).says()).containsExactly("first", "second");
  }

  @Test
  void noSentenceIsLostHoweverManyThereAre() {
    List<String> says = new ArrayList<>(Collections.nCopies(40, "a sentence. ".repeat(10)));
    List<BoardPages.Page> pages = pages(says, 1);
    assertThat(pages.stream().flatMap(page -> page.says().stream())).hasSize(40);
    assertThat(pages).allMatch(page -> page.says().size() <= 6);
  }
}
