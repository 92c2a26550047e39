package walebook.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BlockDesignTest {
  /** Fano's plane as lines {i, i + 1, i + 3} modulo 7 (Fisher and Yates, Statistical Tables). */
  private static final BlockDesign FANO =
      new BlockDesign(
          7, IntStream.range(0, 7).mapToObj(i -> List.of(i, (i + 1) % 7, (i + 3) % 7)).toList());

  @Test
  void fanosPlaneIsBalancedWithItsPublishedEfficiency() {
    assertThat(FANO.replications()).containsOnly(3);
    for (int i = 0; i < 7; i++) {
      for (int j = 0; j < 7; j++) {
        assertThat(FANO.together()[i][j]).isEqualTo(i == j ? 0 : 1);
      }
    }
    // v (k − 1) ÷ (k (v − 1)); 0.78 in Cochran and Cox, table 11.3 (from memory).
    assertThat(FANO.efficiency().average()).isCloseTo(7 * 2 / (3 * 6.0), within(1e-12));
    assertThat(FANO.efficiency().share()).isCloseTo(1, within(1e-12));
    assertThat(FANO.efficiency().connected()).isTrue();
  }

  /**
   * Square lattices of m sets of parallels have (k + 1)(m − 1) ÷ ((k + 1)(m − 1) + m), for the
   * simple lattice (k + 1) ÷ (k + 3) (Cochran and Cox, Experimental Designs, chapter 10; from
   * memory).
   */
  @Test
  void latticesHaveTheirPublishedEfficiency() {
    for (int k = 3; k <= 6; k++) {
      List<List<Integer>> blocks = new ArrayList<>();
      for (int line = 0; line < k; line++) {
        int at = line;
        int side = k;
        blocks.add(IntStream.range(0, k).map(i -> at * side + i).boxed().toList());
        blocks.add(IntStream.range(0, k).map(i -> i * side + at).boxed().toList());
      }
      double wanted = (k + 1.0) / (k + 3);
      assertThat(new BlockDesign(k * k, blocks).efficiency().average())
          .isCloseTo(wanted, within(1e-12));
    }
  }

  @Test
  void completeBlocksTellEverything() {
    BlockDesign all = new BlockDesign(3, List.of(List.of(0, 1, 2), List.of(2, 1, 0)));
    assertThat(all.efficiency().average()).isCloseTo(1, within(1e-12));
    assertThat(all.efficiency().bound()).isCloseTo(1, within(1e-12));
  }

  /** A chain of pairs: by hand, variances of differences are as many steps as lie between. */
  @Test
  void aChainOfThreePairsByHand() {
    BlockDesign chain = new BlockDesign(3, List.of(List.of(0, 1), List.of(1, 2)));
    // R^−½ C R^−½ = [1/2, −1/√8, 0; −1/√8, 1/2, −1/√8; 0, −1/√8, 1/2] has 0, 1/2 and 1.
    assertThat(chain.efficiency().average()).isCloseTo(2 / (1 / 0.5 + 1), within(1e-12));
  }

  @Test
  void whatNothingJoinsIsSaid() {
    BlockEfficiency apart = new BlockDesign(5, List.of(List.of(0, 1), List.of(2, 3))).efficiency();
    assertThat(apart.parts()).isEqualTo(2);
    assertThat(apart.treated()).isEqualTo(4);
    assertThat(apart.connected()).isFalse();
    assertThat(apart.average()).isCloseTo(1, within(1e-12));
    BlockEfficiency alone = new BlockDesign(3, List.of(List.of(0), List.of(1))).efficiency();
    assertThat(alone.average()).isNull();
    assertThat(alone.share()).isNull();
    assertThat(alone.parts()).isEqualTo(2);
    assertThat(new BlockDesign(2, List.of()).efficiency().average()).isNull();
  }

  @Test
  void aTreatmentTwiceInABlockOrUnknownIsRefused() {
    assertThatThrownBy(() -> new BlockDesign(3, List.of(List.of(1, 1))))
        .hasMessageContaining("blocks");
    assertThatThrownBy(() -> new BlockDesign(3, List.of(List.of(3))))
        .hasMessageContaining("blocks");
    assertThatThrownBy(() -> new BlockDesign(0, List.of())).hasMessageContaining("treatments");
  }
}
