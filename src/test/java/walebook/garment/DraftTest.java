package walebook.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.problem.Problem;
import walebook.working.Verdict;

class DraftTest {
  private static final GrainStretch STRETCH = new GrainStretch(50, 0.5);

  @Test
  void lengthLostIsAddedByDividing() {
    // Common practice, a worked example: 6 % lost, a leg of 80 cm is cut 85.1 cm.
    assertThat(LengthLost.of(100, 94, 800, 1).value().value()).isCloseTo(851, within(0.1));
    assertThat(LengthLost.of(100, 103, 800, 1).problems())
        .extracting(Problem::code)
        .containsExactly("length.grew-sideways");
    // 20 typed for 94 would be cut five times as long.
    assertThat(LengthLost.of(100, 20, 600, 1).problems())
        .extracting(Problem::code)
        .containsExactly("length.lost-most");
    assertThat(LengthLost.of(100, 50, 600, 1).problems()).isEmpty();
  }

  @Test
  void washingIsAddedByDividing() {
    // Arithmetic: 1000 mm after −5 % is cut 1052.63, not 1050.
    assertThat(WashFirst.of(1000, -5, 600, -8).value().value()).isCloseTo(1052.63, within(5e-3));
    assertThat(WashFirst.of(1000, -100, 600, 0).isGood()).isFalse();
  }

  @Test
  void travellingStitchesLockFromEndToEnd() {
    // By hand: 60 + 60 + 60 with gaps of 20 lock 220 of 400 joined, 180 sewn one by one.
    List<Double> motifs = List.of(60.0, 60.0, 60.0);
    List<Double> gaps = List.of(20.0, 20.0);
    assertThat(LockedSpan.of(400, motifs, gaps, true, STRETCH, null).value().value())
        .isCloseTo(22.5, within(1e-9));
    assertThat(LockedSpan.of(400, motifs, gaps, false, STRETCH, null).value().value())
        .isCloseTo(27.5, within(1e-9));
    assertThat(LockedSpan.of(400, motifs, gaps, true, STRETCH, 25.0).value().verdict())
        .isEqualTo(Verdict.NOT_MET);
    assertThat(LockedSpan.of(400, motifs, gaps, false, STRETCH, 25.0).value().verdict())
        .isEqualTo(Verdict.MET);
  }

  @Test
  void motifsThatDoNotFitAreTold() {
    assertThat(
            LockedSpan.of(100, List.of(60.0, 60.0), List.of(5.0), true, STRETCH, null).problems())
        .extracting(Problem::code)
        .containsExactly("locked.longer");
    assertThat(LockedSpan.of(400, List.of(60.0, 60.0), List.of(), true, STRETCH, null).problems())
        .extracting(Problem::code)
        .containsExactly("locked.gaps");
  }
}
