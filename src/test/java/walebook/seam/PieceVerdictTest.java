package walebook.seam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import walebook.Seeded;
import walebook.problem.Problem;
import walebook.working.Verdict;

class PieceVerdictTest {

  @Test
  void wholePiece() {
    // Definitions: 100 to 165 mm is 65 %, of a cloth of 60 % that is 108.3 %; 100 to 104 to 101.
    PieceVerdict piece =
        PieceVerdict.of(
            new PieceNumbers(100.0, 100.0, 104.0, 101.0, SeamEnd.GAVE, 165.0, 60.0, 0.5, null, 1));
    assertThat(piece.verdict()).isEqualTo(Verdict.MET);
    assertThat(piece.seamStretch()).isCloseTo(65, within(1e-9));
    assertThat(piece.seamShare()).isCloseTo(108.333, within(1e-3));
    assertThat(piece.edgeChange()).isCloseTo(4, within(1e-9));
    assertThat(piece.edgeChangePressed()).isCloseTo(1, within(1e-9));
    assertThat(piece.lowerBound()).isFalse();
    assertThat(piece.problems()).isEmpty();
    assertThat(piece.working().steps()).hasSize(5);
  }

  @Test
  void heldShortOfTheNeedIsNoFailure() {
    PieceVerdict piece = stretched(SeamEnd.HELD, 140.0, 40.0, 60.0);
    assertThat(piece.verdict()).isEqualTo(Verdict.NOT_KNOWN);
    assertThat(piece.working().says().key()).isEqualTo("seam.pass.says-cloth-limit");
    assertThat(piece.lowerBound()).isTrue();
    assertThat(piece.working().result()).isNull();
  }

  @Test
  void emptyFormKnowsNothingYet() {
    PieceVerdict piece =
        PieceVerdict.of(new PieceNumbers(null, null, null, null, null, null, null, null, null, 1));
    assertThat(piece.verdict()).isEqualTo(Verdict.NOT_KNOWN);
    assertThat(piece.seamStretch()).isNull();
    assertThat(piece.edgeChange()).isNull();
    assertThat(piece.working().says().key()).isEqualTo("seam.piece.says-not-yet");
  }

  @Test
  void shorterThanTheGaugeIsAskedAbout() {
    PieceVerdict piece = stretched(SeamEnd.GAVE, 90.0, 60.0, null);
    assertThat(piece.seamStretch()).isNull();
    assertThat(piece.problems())
        .extracting(Problem::code)
        .containsExactly("reading.stretched-shorter");
  }

  @Test
  void takesAnythingThatCanBeTyped() {
    double[] odd = {0, -1, 1e-300, 1e300, Double.NaN, Double.POSITIVE_INFINITY, 100, 150};
    Seeded.cases(
        1,
        random -> {
          Double[] typed = new Double[8];
          for (int i = 0; i < typed.length; i++) {
            typed[i] = random.nextInt(5) == 0 ? null : odd[random.nextInt(odd.length)];
          }
          SeamEnd end = random.nextBoolean() ? SeamEnd.GAVE : SeamEnd.HELD;
          PieceVerdict piece =
              PieceVerdict.of(
                  new PieceNumbers(
                      typed[0], typed[1], typed[2], typed[3], end, typed[4], typed[5], typed[6],
                      typed[7], 1));
          Double stretch = piece.seamStretch();
          assertThat(stretch == null || stretch >= 0).isTrue();
          assertThat(piece.verdict()).isNotNull();
        });
  }

  @Test
  void unitsCancel() {
    Seeded.cases(
        2000,
        random -> {
          double gauge = Seeded.between(random, 50, 150);
          double end = gauge * Seeded.between(random, 1, 2);
          double cloth = Seeded.between(random, 20, 100);
          PieceVerdict mm =
              PieceVerdict.of(
                  new PieceNumbers(
                      gauge, null, null, null, SeamEnd.GAVE, end, cloth, null, null, 0));
          PieceVerdict twice =
              PieceVerdict.of(
                  new PieceNumbers(
                      2 * gauge, null, null, null, SeamEnd.GAVE, 2 * end, cloth, null, null, 0));
          assertThat(mm.seamShare()).isEqualTo(twice.seamShare());
          assertThat(mm.verdict()).isEqualTo(twice.verdict());
        });
  }

  private static PieceVerdict stretched(
      SeamEnd end, Double length, @Nullable Double cloth, @Nullable Double need) {
    return PieceVerdict.of(
        new PieceNumbers(100.0, null, null, null, end, length, cloth, 0.5, need, 1));
  }
}
