package walebook.seam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.Seeded;
import walebook.problem.Problem;
import walebook.tables.SharedTables;
import walebook.working.Working;

class NeedleTest {

  // The published rule 60 + 5 (size − 8) with its worked example 12 → 80; the pairs 65/9, 70/10,
  // 75/11, 80/12 and 90/14 are printed in needle guides as well.
  @ParameterizedTest
  @CsvSource({"8, 60", "9, 65", "10, 70", "11, 75", "12, 80", "14, 90", "16, 100", "18, 110"})
  void olderNumbers(int older, int nm) {
    assertThat(NeedleNumbers.nmOf(older)).isEqualTo(nm);
    assertThat(NeedleNumbers.olderOf(nm)).isEqualTo(older);
    assertThat(NeedleNumbers.fromOlder(older).value().value()).isEqualTo(nm);
  }

  @Test
  void ruleEndsBelowNineteen() {
    // The source prints that the pattern breaks at 19.
    assertThat(NeedleNumbers.fromOlder(19).problems())
        .extracting(Problem::code)
        .containsExactly("needle.older-out-of-rule");
    assertThat(NeedleNumbers.fromOlder(7).isGood()).isFalse();
    assertThat(NeedleNumbers.olderOf(115)).isNull();
    assertThat(NeedleNumbers.olderOf(62)).isNull();
    assertThat(NeedleNumbers.olderOf(120)).isNull();
  }

  @ParameterizedTest(name = "{2}")
  @CsvSource({
    "110, 1.1, needle numbering text",
    "50, 0.5, needle numbering text",
    "75, 0.75, DIN 5325 (1953) as told by a needle maker",
  })
  void blade(int nm, double mm, String source) {
    assertThat(NeedleNumbers.fromNm(nm).value().value()).as(source).isCloseTo(mm, within(1e-12));
  }

  @Test
  void tableOfSizesFollowsTheRule() {
    for (NeedleSize row : SharedTables.read().needleSizes()) {
      assertThat(NeedleNumbers.nmOf(row.older())).isEqualTo(row.nm());
    }
  }

  // Trade notes on needles for knits; printed tables differ by one size.
  @ParameterizedTest
  @CsvSource({
    "110, any, 0, 60–70, jersey",
    "160, any, 0, 70–80, jersey",
    "160, any, 8, 75, stretch",
    "250, any, 0, 80–90, jersey",
    "350, any, 0, 90–100, jersey",
    "190, warp-knit, 20, 75, stretch",
    "300, sweater, 0, 90–100, ball",
  })
  void advice(double mass, String structure, double elastane, String sizes, String point) {
    List<NeedleAdvice> table = SharedTables.read().needleAdvice();
    Working working = NeedleChoice.of(mass, structure, elastane, table).value();
    assertThat(working.says().args().get(0)).startsWith(point);
    assertThat(working.says().args().get(1)).isEqualTo(sizes);
    assertThat(working.cautions()).isNotEmpty();
    assertThat(working.steps()).isNotEmpty();
  }

  @Test
  void everyClothHasAdvice() {
    List<NeedleAdvice> table = SharedTables.read().needleAdvice();
    Seeded.cases(
        1,
        random ->
            assertThat(
                    NeedleChoice.rows(
                        table,
                        Seeded.between(random, 1, 900),
                        "any",
                        Seeded.between(random, 0, 100)))
                .hasSize(1));
    assertThat(NeedleChoice.of(0, "any", 120, table).problems()).hasSize(2);
  }
}
