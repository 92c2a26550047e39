package walebook.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static walebook.compare.AsKept.close;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import walebook.record.MarkedValue;

/** Pieces that were tallied and let go say what the same pieces say that were kept. */
class LineTallyTest {
  private static final List<Outcome> OUTCOMES = List.of(Outcome.values());
  private static final List<Factor> FACTORS = List.of(Factor.WIDTH, Factor.HEM_METHOD);

  private static Map<MarkedValue, Set<UUID>> aside(MadeClass made) {
    Map<MarkedValue, Set<UUID>> aside = new EnumMap<>(MarkedValue.class);
    for (MarkedValue value : MarkedValue.values()) {
      aside.put(value, made.setAside());
    }
    return aside;
  }

  private static LineTally tally(MadeClass made) {
    LineTally tally = new LineTally(aside(made));
    made.lines().forEach(tally::add);
    return tally;
  }

  @Test
  void theComparisonIsThatOfThePieces() {
    Random random = new Random(43);
    for (int round = 0; round < 200; round++) {
      MadeClass made = MadeClass.ofAnySort(random);
      Comparison kept =
          CompareBySetting.ofLines(
              LeaveOut.of(made.lines(), aside(made)), FACTORS, MadeClass.stretches(), made.names());
      TalliedComparison tallied =
          TalliedComparison.of(tally(made), FACTORS, MadeClass.stretches(), made.names());
      assertThat(tallied.factors()).isEqualTo(kept.factors());
      assertThat(tallied.pieces()).isEqualTo(kept.pieces());
      assertThat(tallied.students()).isEqualTo(kept.students());
      assertThat(tallied.setAside()).isEqualTo(kept.setAside());
      assertThat(tallied.rows()).hasSameSizeAs(kept.rows());
      for (int i = 0; i < kept.rows().size(); i++) {
        same(tallied.rows().get(i), kept.rows().get(i));
      }
    }
  }

  private static void same(SettingFound found, SettingFound kept) {
    assertThat(found.levels()).isEqualTo(kept.levels());
    assertThat(found.pieces()).isEqualTo(kept.pieces());
    assertThat(found.students()).isEqualTo(kept.students());
    assertThat(found.gave()).isEqualTo(kept.gave());
    assertThat(found.held()).isEqualTo(kept.held());
    assertThat(found.withFault()).isEqualTo(kept.withFault());
    assertThat(found.heldInterval()).isEqualTo(kept.heldInterval());
    assertThat(found.stretchOfGave()).isEqualTo(kept.stretchOfGave());
    assertThat(found.shareOfGave()).isEqualTo(kept.shareOfGave());
    assertThat(found.edgeChange()).isEqualTo(kept.edgeChange());
    assertThat(found.grade()).isEqualTo(kept.grade());
  }

  @Test
  void theFairFiguresAreThoseOfThePieces() {
    Random random = new Random(47);
    for (int round = 0; round < 300; round++) {
      MadeClass made = MadeClass.ofAnySort(random);
      Outcome outcome = OUTCOMES.get(random.nextInt(OUTCOMES.size()));
      FairQuestion question = FairQuestion.of(outcome, FACTORS);
      FairComparison kept = made.ask(question, null);
      FairFigures tallied =
          FairFigures.of(tally(made), question, MadeClass.stretches(), made.names());
      assertThat(tallied.factors()).isEqualTo(kept.factors());
      assertThat(tallied.setAside()).isEqualTo(kept.setAside());
      assertThat(tallied.rows()).hasSameSizeAs(kept.rows());
      for (int i = 0; i < kept.rows().size(); i++) {
        same(tallied.rows().get(i), kept.rows().get(i));
      }
    }
  }

  private static void same(FairFigures.Row found, FairRow kept) {
    assertThat(found.levels()).isEqualTo(kept.levels());
    assertThat(found.pieces()).isEqualTo(kept.pieces());
    assertThat(found.students()).isEqualTo(kept.students());
    assertThat(found.bounds()).isEqualTo(kept.bounds());
    assertThat(found.held()).isEqualTo(kept.held());
    assertThat(found.lasting()).isEqualTo(kept.lasting());
    close(found.middle(), kept.middle());
    close(found.raw(), kept.raw());
    close(found.adjusted(), kept.adjusted());
  }

  @Test
  void aStudentIsNotTalliedAsASetting() {
    FairQuestion byStudent = FairQuestion.of(Outcome.GRADE, List.of(Factor.STUDENT));
    LineTally tally = new LineTally(Map.of());
    Names nobody = Names.given(Map.of());
    assertThatThrownBy(() -> FairFigures.of(tally, byStudent, Map.of(), nobody))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
