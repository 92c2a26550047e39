package walebook.act.gather;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import walebook.book.gather.FromBook;
import walebook.words.Words;

/** Only counts above none are said. */
class SayGatheredTest {
  private static final SayGathered SAY = new SayGathered(Words.english());

  private static String counts(
      int added, int pieces, int photos, int taken, int kept, int same, int conflicts) {
    return SAY.counts(
        new FromBook(
            Path.of("s1.walebook"),
            "S1",
            null,
            added,
            pieces,
            photos,
            taken,
            kept,
            same,
            conflicts,
            0));
  }

  @Test
  void leavesOutWhatThereIsNoneOf() {
    assertThat(counts(0, 0, 0, 0, 0, 390, 0)).isEqualTo("the same 390");
    assertThat(counts(5, 0, 0, 0, 0, 0, 2)).isEqualTo("new 5, to decide 2");
    assertThat(counts(5, 3, 0, 1, 0, 0, 0)).isEqualTo("new 5 (test pieces 3), changed there 1");
    assertThat(counts(5, 3, 1, 0, 4, 0, 0))
        .isEqualTo("new 5 (test pieces 3, photos 1), changed here 4");
  }

  @Test
  void saysSoWhereThereIsNothing() {
    assertThat(counts(0, 0, 0, 0, 0, 0, 0)).isEqualTo("nothing to bring");
  }
}
