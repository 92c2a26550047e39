package walebook.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static walebook.compare.AsKept.close;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import walebook.record.ResultLine;

/** A question over pieces that were let go is answered as over the same pieces that were kept. */
class FairTallyTest {
  private static final List<List<Factor>> ASKED =
      List.of(
          List.of(),
          List.of(Factor.WIDTH, Factor.HEM_METHOD),
          List.of(Factor.CLOTH, Factor.WIDTH),
          List.of(Factor.STUDENT));

  private static FairComparison tallied(MadeClass made, FairQuestion question, boolean keeps) {
    FairTally tally = new FairTally(question, keeps);
    for (ResultLine piece : made.lines()) {
      tally.add(
          piece,
          CompareBySetting.stretch(MadeClass.stretches(), piece),
          made.setAside().contains(piece.pieceId()));
    }
    return tally.compare(made.names());
  }

  private static FairQuestion question(Random random) {
    Outcome[] outcomes = Outcome.values();
    Outcome outcome = outcomes[random.nextInt(outcomes.length)];
    Double matters = random.nextBoolean() ? null : Double.valueOf(2);
    return FairQuestion.of(outcome, ASKED.get(random.nextInt(ASKED.size()))).mattering(matters);
  }

  @Test
  void figuresAndSentencesAreThoseOfThePieces() {
    Random random = new Random(53);
    for (int round = 0; round < 600; round++) {
      MadeClass made = MadeClass.ofAnySort(random);
      if (random.nextBoolean()) {
        made.onCloth("Rib").gave("S1", 2, 40, 44).held("S2", 3, 51).edge("S3", 2, 4);
      }
      FairQuestion question = question(random);
      FairComparison kept = made.ask(question, null);
      FairComparison found = tallied(made, question, false);
      same(found, kept);
      assertThat(FairFindings.of(found, String::valueOf))
          .isEqualTo(FairFindings.of(kept, String::valueOf));
    }
  }

  private static void same(FairComparison found, FairComparison kept) {
    assertThat(found.factors()).isEqualTo(kept.factors());
    assertThat(found.same()).isEqualTo(kept.same());
    assertThat(found.within()).isEqualTo(kept.within());
    assertThat(found.groups()).containsExactlyInAnyOrderElementsOf(kept.groups());
    assertThat(found.logged()).isEqualTo(kept.logged());
    assertThat(found.pieces()).isEqualTo(kept.pieces());
    assertThat(found.setAside()).isEqualTo(kept.setAside());
    assertThat(found.noStretch()).isEqualTo(kept.noStretch());
    assertThat(found.students()).isEqualTo(kept.students());
    assertThat(found.cloths()).isEqualTo(kept.cloths());
    close(found.residualSd(), kept.residualSd());
    assertThat(found.rows()).hasSameSizeAs(kept.rows());
    for (int i = 0; i < kept.rows().size(); i++) {
      same(found.rows().get(i), kept.rows().get(i));
    }
    assertThat(found.pairs()).hasSameSizeAs(kept.pairs());
    for (int i = 0; i < kept.pairs().size(); i++) {
      same(found.pairs().get(i), kept.pairs().get(i));
    }
  }

  private static void same(FairRow found, FairRow kept) {
    assertThat(found.levels()).isEqualTo(kept.levels());
    assertThat(found.pieces()).isEqualTo(kept.pieces());
    assertThat(found.students()).isEqualTo(kept.students());
    assertThat(found.bounds()).isEqualTo(kept.bounds());
    assertThat(found.atLeast()).isEqualTo(kept.atLeast());
    assertThat(found.lasting()).isEqualTo(kept.lasting());
    assertThat(found.held()).isEqualTo(kept.held());
    assertThat(found.dots()).isEmpty();
    close(found.middle(), kept.middle());
    close(found.raw(), kept.raw());
    close(found.adjusted(), kept.adjusted());
  }

  private static void same(FairPair found, FairPair kept) {
    assertThat(found.first()).isEqualTo(kept.first());
    assertThat(found.second()).isEqualTo(kept.second());
    assertThat(found.basis()).isEqualTo(kept.basis());
    assertThat(found.size()).isEqualTo(kept.size());
    assertThat(found.morePieces()).isEqualTo(kept.morePieces());
    close(found.estimate(), kept.estimate());
    close(found.low(), kept.low());
    close(found.high(), kept.high());
    close(found.p(), kept.p());
  }

  @Test
  void whoListsThePiecesHasEachOfThemInItsPlace() {
    Random random = new Random(59);
    for (int round = 0; round < 100; round++) {
      MadeClass made = MadeClass.ofAnySort(random);
      FairQuestion question = question(random);
      assertThat(tallied(made, question, true).rows())
          .extracting(FairRow::dots)
          .isEqualTo(made.ask(question, null).rows().stream().map(FairRow::dots).toList());
    }
  }

  @Test
  void machinesAreNotTallied() {
    FairQuestion within = FairQuestion.of(Outcome.GRADE, List.of()).withinMachines(true);
    assertThatThrownBy(() -> new FairTally(within, false))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
