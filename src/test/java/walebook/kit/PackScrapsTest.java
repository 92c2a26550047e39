package walebook.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import walebook.problem.Answer;
import walebook.problem.Problem;

class PackScrapsTest {
  private static ScrapAnswer answer(List<CutPiece> pieces, List<Scrap> scraps) {
    return PackScraps.of(pieces, scraps, 0, 1).value();
  }

  @Test
  void whatComesOutIsShown() {
    List<CutPiece> pieces = List.of(new CutPiece("cuff", 4, 200, 100, false));
    List<Scrap> scraps = List.of(new Scrap("a", 200, 150), new Scrap("b", 400, 210));
    ScrapAnswer yes = answer(pieces, scraps);
    assertThat(yes.outcome()).isEqualTo(ScrapAnswer.Outcome.COME_OUT);
    assertThat(yes.missing()).containsExactly(0);
    assertThat(yes.plans()).hasSize(2);
    assertThat(yes.plans().get(0).count(0) + yes.plans().get(1).count(0)).isEqualTo(4);
    assertThat(yes.says().key()).isEqualTo("kit.scraps.come-out");
  }

  @Test
  void grainDecides() {
    List<Scrap> upright = List.of(new Scrap("a", 100, 300));
    CutPiece across = new CutPiece("cuff", 1, 200, 100, false);
    assertThat(answer(List.of(across), upright).outcome()).isEqualTo(ScrapAnswer.Outcome.CANNOT);
    CutPiece free = new CutPiece("cuff", 3, 100, 100, true);
    assertThat(answer(List.of(free), upright).outcome()).isEqualTo(ScrapAnswer.Outcome.COME_OUT);
    CutPiece turned = new CutPiece("cuff", 1, 300, 100, true);
    assertThat(answer(List.of(turned), upright).outcome()).isEqualTo(ScrapAnswer.Outcome.COME_OUT);
  }

  /** Three squares of side 2 do not come out of two scraps of 3 by 3, though area would do. */
  @Test
  void notFoundIsNoProof() {
    List<CutPiece> squares = List.of(new CutPiece("square", 3, 20, 20, false));
    ScrapAnswer no = answer(squares, List.of(new Scrap("a", 30, 30), new Scrap("b", 30, 30)));
    assertThat(no.outcome()).isEqualTo(ScrapAnswer.Outcome.NOT_FOUND);
    assertThat(no.missing()).containsExactly(1);
    ScrapAnswer never = answer(squares, List.of(new Scrap("a", 30, 30)));
    assertThat(never.outcome()).isEqualTo(ScrapAnswer.Outcome.CANNOT);
  }

  @Test
  void plansAreSoundWhateverTheScraps() {
    for (int round = 0; round < 25; round++) {
      Random random = new Random(round);
      List<CutPiece> pieces = PackStripTest.pieces(random, 1 + random.nextInt(4), 200);
      List<Scrap> scraps = new ArrayList<>();
      for (int i = 0; i <= random.nextInt(5); i++) {
        scraps.add(new Scrap("s" + i, 60 + random.nextInt(300), 60 + random.nextInt(300)));
      }
      double margin = random.nextInt(2) * 5;
      ScrapAnswer answer = PackScraps.of(pieces, scraps, margin, round).value();
      int[] there = new int[pieces.size()];
      for (int i = 0; i < scraps.size(); i++) {
        CuttingPlan plan = answer.plans().get(i);
        assertThat(plan.acrossMm()).isEqualTo(scraps.get(i).acrossMm());
        PackStripTest.check(plan, scraps.get(i).alongMm());
        plan.placed().forEach(each -> there[each.piece()]++);
      }
      for (int i = 0; i < there.length; i++) {
        assertThat(there[i] + answer.missing().get(i)).isEqualTo(pieces.get(i).count());
        assertThat(answer.missing().get(i)).isNotNegative();
      }
      boolean all = answer.missing().stream().allMatch(each -> each == 0);
      assertThat(answer.outcome() == ScrapAnswer.Outcome.COME_OUT).isEqualTo(all);
      assertThat(PackScraps.of(pieces, scraps, margin, round).value().plans())
          .isEqualTo(answer.plans());
    }
  }

  /** A rectangle cut up by guillotine comes out of itself, or of its two halves. */
  @Test
  void whatWasCutFromScrapsComesOutOfThem() {
    int found = 0;
    for (int round = 0; round < 20; round++) {
      Random random = new Random(round);
      List<CutPiece> pieces = new ArrayList<>();
      List<Scrap> scraps = new ArrayList<>();
      for (int i = 0; i < 2; i++) {
        double across = 200 + random.nextInt(200);
        double along = 200 + random.nextInt(200);
        scraps.add(new Scrap("s" + i, across, along));
        cut(pieces, across, along, 3, random);
      }
      ScrapAnswer answer = PackScraps.of(pieces, scraps, 0, round).value();
      found += answer.outcome() == ScrapAnswer.Outcome.COME_OUT ? 1 : 0;
      assertThat(answer.outcome()).isNotEqualTo(ScrapAnswer.Outcome.CANNOT);
    }
    assertThat(found).isGreaterThanOrEqualTo(18);
  }

  private static void cut(
      List<CutPiece> pieces, double across, double along, int depth, Random random) {
    if (depth == 0) {
      pieces.add(new CutPiece("p" + pieces.size(), 1, across, along, false));
    } else if (random.nextBoolean()) {
      double at = Math.rint(across * (0.3 + 0.4 * random.nextDouble()));
      cut(pieces, at, along, depth - 1, random);
      cut(pieces, across - at, along, depth - 1, random);
    } else {
      double at = Math.rint(along * (0.3 + 0.4 * random.nextDouble()));
      cut(pieces, across, at, depth - 1, random);
      cut(pieces, across, along - at, depth - 1, random);
    }
  }

  @Test
  void badInputIsNamed() {
    Answer<ScrapAnswer> nothing = PackScraps.of(List.of(), List.of(), -1, 1);
    assertThat(nothing.problems())
        .extracting(Problem::code)
        .containsExactly("kit.no-pieces", "kit.no-scraps", "number.negative");
    CutPiece many = new CutPiece("p", 2001, 1, 1, false);
    assertThat(PackScraps.of(List.of(many), List.of(new Scrap("s", 9, 9)), 0, 1).problems())
        .extracting(Problem::code)
        .containsExactly("kit.too-many-pieces");
  }
}
