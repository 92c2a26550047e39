package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Full names in free text, and words that only look like one. */
class NameCoverTest {
  private static final UnaryOperator<String> COVER =
      NameCover.of(
          Map.of(
              "Ann Lee",
              "S01",
              "Ann Lee-Strand",
              "S02",
              "林海波",
              "S03",
              "$1 \\E",
              "S04",
              "Åke Ö",
              "S05"));

  @ParameterizedTest
  @CsvSource({
    "Ann Lee helped, S01 helped",
    "ANN  LEE helped, S01 helped",
    "with Ann Lee-Strand, with S02",
    "Joann Leeds helped, Joann Leeds helped",
    "Ann helped, Ann helped",
    "和林海波一起, 和S03一起",
    "åke ö's, S05's",
    "A\u030ake O\u0308, S05",
    "costs $1 \\E or so, costs S04 or so",
    "cafe\u0301 stays, cafe\u0301 stays"
  })
  void onlyFullNamesAreCovered(String text, String covered) {
    assertThat(COVER.apply(text)).isEqualTo(covered);
  }
}
