package walebook.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.problem.Problem;
import walebook.seam.ThreadUse;
import walebook.words.Words;

class ClothToBuyTest {
  private static final CutPiece STRIPS = new CutPiece("strips", 106, 200, 100, false);

  /**
   * By hand: 150 cm shrinks by 3 % to 145.5 cm, seven strips of 20 cm beside each other; 106 need
   * 16 rows of 10 cm; 160 cm after a wash that takes 5 % are 168.4 cm before, sold as 170.
   */
  @Test
  void shrinkageComesFirstAndTheShopsStepLast() {
    ClothToBuy buy =
        ClothToBuy.of("jersey", List.of(STRIPS), new Roll(1500, 0, -5, -3, 100), 1).value();
    assertThat(buy.plan().acrossMm()).isCloseTo(1455, within(1e-9));
    assertThat(buy.plan().alongMm()).isCloseTo(1600, within(1e-6));
    assertThat(buy.buyMm()).isCloseTo(1700, within(1e-9));
    assertThat(buy.working().value()).isCloseTo(1.7, within(1e-9));
    assertThat(buy.working().steps().get(3).numbers())
        .isEqualTo("1600 ÷ (1 + (−5) ÷ 100) = 1684.2 mm");
    Words words = Words.english();
    buy.working()
        .steps()
        .forEach(step -> assertThat(words.say(step.says())).doesNotContain("[", "{"));
    assertThat(words.say(buy.working().says())).startsWith("Buy 1.7 m.");
  }

  @Test
  void aCountOfWholeStepsIsNotRoundedUp() {
    CutPiece ten = new CutPiece("strips", 70, 200, 100, false);
    assertThat(ClothToBuy.of("c", List.of(ten), Roll.of(1450), 1).value().buyMm())
        .isCloseTo(1000, within(1e-9));
  }

  @Test
  void aMarginIsKeptBetweenPiecesAndNotAtTheEdges() {
    CutPiece two = new CutPiece("p", 4, 100, 50, false);
    CuttingPlan plan =
        ClothToBuy.of("c", List.of(two), new Roll(210, 10, 0, 0, 1), 1).value().plan();
    assertThat(plan.alongMm()).isCloseTo(110, within(1e-6));
    PackStripTest.check(plan, plan.alongMm());
  }

  @Test
  void badInputIsNamed() {
    assertThat(codes(List.of(STRIPS), Roll.of(150))).containsExactly("kit.too-narrow");
    assertThat(codes(List.of(), Roll.of(1500))).containsExactly("kit.no-pieces");
    assertThat(codes(List.of(new CutPiece("p", 2001, 1, 1, false)), Roll.of(9)))
        .containsExactly("kit.too-many-pieces");
    assertThat(codes(List.of(STRIPS), new Roll(-1, -1, -100, 0, 0)))
        .containsExactly(
            "number.not-positive", "number.negative", "wash.change", "number.not-positive");
    CutPiece turned = new CutPiece("p", 1, 200, 100, true);
    assertThat(codes(List.of(turned), Roll.of(150))).isEmpty();
    assertThatThrownBy(() -> new CutPiece("p", 0, 1, 1, false)).hasMessageContaining("count");
    assertThatThrownBy(() -> new CutPiece("p", 1, 0, 1, false)).hasMessageContaining("acrossMm");
    assertThatThrownBy(() -> new Scrap("s", 0, 1)).hasMessageContaining("acrossMm");
  }

  private static List<String> codes(List<CutPiece> pieces, Roll roll) {
    return ClothToBuy.of("cloth", pieces, roll, 1).problems().stream().map(Problem::code).toList();
  }

  /** Every seam's own thread, as many times as it is sewn. */
  @Test
  void threadIsTheSumOverSeams() {
    SeamToSew zigzag = new SeamToSew("z", "304", 1.2, 2.5, 2, 200, 4);
    SeamToSew straight = new SeamToSew("s", "301", 1.2, 2.5, 0, 200, 1);
    double wanted =
        (4 * ThreadUse.lengthMm(2 * Math.sqrt(1 + (2 / 2.5) * (2 / 2.5)) + 2 * 1.2 / 2.5, 200, 15)
                + ThreadUse.lengthMm(2 + 2 * 1.2 / 2.5, 200, 15))
            / 1000;
    assertThat(ThreadNeed.of(List.of(zigzag, straight), 15, List.of()).value().value())
        .isCloseTo(wanted, within(1e-9));
    assertThat(ThreadNeed.of(List.of(), 15, List.of()).problems())
        .extracting(Problem::code)
        .containsExactly("kit.no-seams");
    SeamToSew unknown = new SeamToSew("u", "699", 1, 2, 0, 100, 1);
    assertThat(ThreadNeed.of(List.of(unknown), 15, List.of()).problems())
        .extracting(Problem::code)
        .containsExactly("thread.unknown-stitch");
  }
}
