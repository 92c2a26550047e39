package walebook.compare;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import walebook.statistics.Additive;
import walebook.statistics.Response;

class CompareFairlyTest {
  private static final List<String> NARROW = List.of("1");
  private static final List<String> WIDE = List.of("3");

  /** The numbers are those of the model that stands by itself under the textbooks' checks. */
  @Test
  void adjustedMeansAreThoseOfTheModel() {
    FairComparison found =
        new MadeClass()
            .edge("Ada", 1, 2.0, 2.5)
            .edge("Ada", 3, 5.0)
            .edge("Bo", 1, 3.5)
            .edge("Bo", 3, 7.0, 6.5)
            .edge("Cy", 3, 4.0)
            .ask(Outcome.EDGE_CHANGE, null);
    Additive model =
        Additive.of(
            List.of(
                new Response("Ada", "1", 2.0),
                new Response("Ada", "1", 2.5),
                new Response("Bo", "1", 3.5),
                new Response("Ada", "3", 5.0),
                new Response("Bo", "3", 7.0),
                new Response("Bo", "3", 6.5),
                new Response("Cy", "3", 4.0)),
            0.95);
    FairRow narrow = requireNonNull(found.row(NARROW));
    assertThat(requireNonNull(narrow.adjusted()).mean())
        .isCloseTo(requireNonNull(model.mean("1")).mean(), within(1e-12));
    assertThat(requireNonNull(narrow.raw()).mean()).isCloseTo(8.0 / 3, within(1e-12));
    FairPair pair = requireNonNull(found.pair(WIDE, NARROW));
    assertThat(requireNonNull(pair.estimate()))
        .isCloseTo(requireNonNull(model.difference("3", "1")).estimate(), within(1e-12));
    assertThat(pair.p()).isEqualTo(requireNonNull(model.difference("3", "1")).holm());
  }

  /** The practised sewed wide and beginners narrow: raw means turn round what is so. */
  @Test
  void whoSewedWhatIsAllowedFor() {
    FairComparison found =
        new MadeClass()
            .edge("Beginner", 1, 9.0, 9.2, 8.9, 9.1)
            .edge("Beginner", 3, 10.0)
            .edge("Practised", 1, 1.0)
            .edge("Practised", 3, 2.1, 1.9, 2.0, 2.2)
            .ask(Outcome.EDGE_CHANGE, 0.5);
    FairRow narrow = requireNonNull(found.row(NARROW));
    FairRow wide = requireNonNull(found.row(WIDE));
    assertThat(requireNonNull(narrow.raw()).mean())
        .isGreaterThan(requireNonNull(wide.raw()).mean());
    FairPair pair = requireNonNull(found.pair(WIDE, NARROW));
    assertThat(requireNonNull(pair.estimate())).isCloseTo(1.0, within(0.1));
    assertThat(pair.size()).isEqualTo(FairPair.Size.MORE);
  }

  /** Means of 4, 5, 6 and of 2, 3, 4 in the same three hands: by hand 5 and 3, 2 apart. */
  @Test
  void minutesAreAveragedAndTheQuickestComesFirst() {
    FairComparison found =
        new MadeClass()
            .minutes("Ada", 1, 4.0)
            .minutes("Bo", 1, 5.0)
            .minutes("Cy", 1, 6.0)
            .minutes("Ada", 3, 2.0)
            .minutes("Bo", 3, 3.0)
            .minutes("Cy", 3, 4.0)
            .edge("Cy", 3, 1.0)
            .ask(Outcome.TIME, null);
    assertThat(found.pieces()).isEqualTo(6);
    assertThat(found.without()).isEqualTo(1);
    assertThat(requireNonNull(requireNonNull(found.row(NARROW)).adjusted()).mean())
        .isCloseTo(5, within(1e-12));
    assertThat(requireNonNull(requireNonNull(found.pair(NARROW, WIDE)).estimate()))
        .isCloseTo(2, within(1e-12));
    assertThat(found.bestFirst().get(0).value()).isEqualTo(2);
    assertThat(found.measuring()).isNull();
  }

  @Test
  void whatOnlyHeldIsNeverAveraged() {
    FairComparison found =
        new MadeClass()
            .gave("Ada", 1, 40, 42)
            .gave("Bo", 1, 45)
            .gave("Ada", 3, 70)
            .held("Bo", 3, 100, 101)
            .ask(Outcome.SEAM_STRETCH, null);
    FairRow wide = requireNonNull(found.row(WIDE));
    assertThat(wide.raw()).isNull();
    assertThat(wide.adjusted()).isNull();
    assertThat(wide.bounds()).isEqualTo(2);
    assertThat(requireNonNull(wide.lasting()).median()).isNull();
    assertThat(requireNonNull(wide.lasting()).mostHeld()).isEqualTo(101);
    assertThat(requireNonNull(wide.held()).count()).isEqualTo(2);
    FairRow narrow = requireNonNull(found.row(NARROW));
    assertThat(requireNonNull(narrow.adjusted()).mean()).isBetween(40.0, 46.0);
    assertThat(requireNonNull(found.pair(WIDE, NARROW)).basis()).isEqualTo(FairPair.Basis.MEDIANS);
  }

  @Test
  void limitsOfMediansNeedEnoughPieces() {
    MadeClass few = new MadeClass().gave("Ada", 1, 40, 41, 42).held("Ada", 3, 90, 91, 92);
    FairPair pair = requireNonNull(few.ask(Outcome.SEAM_STRETCH, 5.0).pair(WIDE, NARROW));
    assertThat(pair.size()).isEqualTo(FairPair.Size.CANT_TELL);
    MadeClass many =
        new MadeClass()
            .gave("Ada", 1, 40, 41, 42, 43, 44, 45, 46, 47, 48, 49)
            .held("Bo", 3, 99, 99)
            .gave("Bo", 3, 80, 81, 82, 83, 84, 85, 86, 87, 88, 89);
    FairPair told = requireNonNull(many.ask(Outcome.SEAM_STRETCH, 5.0).pair(WIDE, NARROW));
    assertThat(told.size()).isEqualTo(FairPair.Size.MORE);
    assertThat(requireNonNull(told.low())).isGreaterThan(5);
  }

  @Test
  void groupsThatShareNobodyAreNamedAndNotCompared() {
    FairComparison found =
        new MadeClass()
            .edge("Ada", 1, 1, 1.5)
            .edge("Ada", 2, 2)
            .edge("Bo", 3, 5, 5.5)
            .edge("Bo", 5, 6)
            .ask(Outcome.EDGE_CHANGE, null);
    assertThat(found.groups()).hasSize(2);
    assertThat(found.groups().get(0).students()).containsExactly("Ada");
    assertThat(found.groups().get(1).settings()).containsExactly(List.of("3"), List.of("5"));
    assertThat(requireNonNull(found.pair(NARROW, WIDE)).size())
        .isEqualTo(FairPair.Size.NOT_COMPARABLE);
    assertThat(requireNonNull(found.pair(NARROW, List.of("2"))).basis())
        .isEqualTo(FairPair.Basis.ADJUSTED_MEANS);
  }

  @Test
  void withinAMachineOnlyItsOwnPiecesAreCompared() {
    MadeClass made = new MadeClass().edge("Ada", 1, 1, 1.2).on("7").edge("Ada", 3, 4, 4.1).on("4");
    FairQuestion question = FairQuestion.of(Outcome.EDGE_CHANGE, List.of(Factor.WIDTH));
    assertThat(requireNonNull(made.ask(question, null).pair(NARROW, WIDE)).basis())
        .isEqualTo(FairPair.Basis.ADJUSTED_MEANS);
    FairComparison within = made.ask(question.withinMachines(true), null);
    assertThat(requireNonNull(within.pair(NARROW, WIDE)).size())
        .isEqualTo(FairPair.Size.NOT_COMPARABLE);
  }

  @Test
  void whatIsSetAsideIsCountedAndLeftOut() {
    FairComparison found =
        new MadeClass()
            .edge("Ada", 1, 1, 1.2)
            .edge("Ada", 1, 30)
            .aside()
            .edge("Ada", 3, 4)
            .ask(Outcome.EDGE_CHANGE, null);
    assertThat(found.setAside()).isEqualTo(1);
    assertThat(found.pieces()).isEqualTo(3);
    assertThat(requireNonNull(requireNonNull(found.row(NARROW)).raw()).greatest()).isEqualTo(1.2);
  }

  /** 9 of 9 against 0 of 2 has Fisher's p = 1/55; among 15 pairs that is no finding. */
  @Test
  void ratesAreSureOnlyWhenFishersTestAgrees() {
    MadeClass made = new MadeClass();
    for (int i = 0; i < 9; i++) {
      made.held("Ada", 1, 90);
    }
    made.gave("Ada", 2, 50, 51);
    for (double width : new double[] {3, 4, 5, 6}) {
      made.held("Bo", width, 90, 91).gave("Bo", width, 50, 51);
    }
    FairPair pair = requireNonNull(made.ask(Outcome.HELD, null).pair(List.of("1"), List.of("2")));
    assertThat(requireNonNull(pair.p())).isCloseTo(15.0 / 55, within(1e-9));
    assertThat(pair.size()).isEqualTo(FairPair.Size.CANT_TELL);
  }

  @Test
  void differencesWithinMeasuringErrorAreSaidToBeSo() {
    MadeClass made =
        new MadeClass().edge("Ada", 1, 1.0, 1.1).edge("Ada", 3, 1.2, 1.3).edge("Bo", 1, 2);
    FairQuestion question = FairQuestion.of(Outcome.EDGE_CHANGE, List.of(Factor.WIDTH));
    MeasuringError rule = requireNonNull(MeasuringError.of(Outcome.EDGE_CHANGE, null, null));
    // Two readings to the millimetre of 200 mm: 100/200 · √2 · 1/√12 (GUM 4.3.7) = 0.2041 points.
    assertThat(rule.sd()).isCloseTo(0.2041, within(0.0001));
    FairPair pair = requireNonNull(made.ask(question, rule).pair(WIDE, NARROW));
    assertThat(pair.onlyMeasuring()).isTrue();
    assertThat(rule.limit(1, 1)).isCloseTo(2.8 * rule.sd(), within(1e-12));
  }

  @Test
  void sizesAreWhatTheLimitsAllow() {
    assertThat(FairPair.size(2.1, 5.0, 2.0)).isEqualTo(FairPair.Size.MORE);
    assertThat(FairPair.size(-5.0, -2.1, 2.0)).isEqualTo(FairPair.Size.MORE);
    assertThat(FairPair.size(-1.9, 1.9, 2.0)).isEqualTo(FairPair.Size.LESS);
    assertThat(FairPair.size(1.0, 5.0, 2.0)).isEqualTo(FairPair.Size.DIFFERS_MAYBE_LITTLE);
    assertThat(FairPair.size(-1.0, 5.0, 2.0)).isEqualTo(FairPair.Size.CANT_TELL);
    assertThat(FairPair.size(0.1, 5.0, null)).isEqualTo(FairPair.Size.DIFFERS);
    assertThat(FairPair.size(null, null, 2.0)).isEqualTo(FairPair.Size.CANT_TELL);
    assertThat(FairPair.size(null, -3.0, 2.0)).isEqualTo(FairPair.Size.MORE);
  }

  @Test
  void standoutsAreTheBestAndTheWorstNoneTwice() {
    FairComparison found =
        new MadeClass()
            .edge("Ada", 1, -0.5, 3, -7)
            .edge("Bo", 1, 1)
            .edge("Bo", 3, 5)
            .ask(Outcome.EDGE_CHANGE, null);
    FairComparison.Standouts some = found.standouts(3, Set.of());
    assertThat(some.best()).extracting(Dot::value).containsExactly(-0.5, 1.0, 3.0);
    assertThat(some.worst()).extracting(Dot::value).containsExactly(-7.0, 5.0);
  }

  private static FairComparison.Standouts standouts(MadeClass made, Outcome outcome) {
    return made.ask(outcome, null).standouts(3, Set.of());
  }

  /** A look is never above 5, whatever scatter would allow. */
  @Test
  void limitsOfAMeanEndWhereTheScaleEnds() {
    FairComparison found =
        new MadeClass()
            .grade("Ada", 1, 3, 5)
            .grade("Ada", 3, 5)
            .grade("Bo", 1, 2)
            .grade("Bo", 3, 5)
            .ask(Outcome.GRADE, null);
    for (FairRow row : found.rows()) {
      var adjusted = requireNonNull(row.adjusted());
      assertThat(adjusted.mean()).isBetween(1.0, 5.0);
      assertThat(requireNonNull(adjusted.interval()).low()).isBetween(1.0, 5.0);
      assertThat(requireNonNull(adjusted.interval()).high()).isBetween(1.0, 5.0);
    }
    assertThat(requireNonNull(found.rows().get(1).adjusted()).interval())
        .extracting(interval -> interval.high())
        .isEqualTo(5.0);
    assertThat(requireNonNull(found.pairs().get(0).high())).isGreaterThan(0);
  }

  /** Limits and p are of the same three pairs, though two of them are of medians and have no p. */
  @Test
  void pCountsEveryPairThatTheLimitsCount() {
    FairComparison found =
        new MadeClass()
            .gave("Ada", 1, 40, 42)
            .gave("Bo", 1, 44, 41)
            .gave("Ada", 2, 45, 48)
            .gave("Bo", 2, 46, 47)
            .gave("Ada", 3, 70)
            .held("Bo", 3, 90)
            .ask(Outcome.SEAM_STRETCH, null);
    List<Response> two =
        found.rows().stream()
            .limit(2)
            .flatMap(
                row ->
                    row.dots().stream()
                        .map(dot -> new Response(dot.who(), row.levels().get(0), dot.value())))
            .toList();
    double alone = requireNonNull(Additive.of(two, 0.95).differences().get(0).p());
    FairPair pair = requireNonNull(found.pair(List.of("1"), List.of("2")));
    assertThat(requireNonNull(pair.p())).isCloseTo(3 * alone, within(1e-12));
    assertThat(found.pairs()).hasSize(3);
    // Just the family of the limits: these leave nought out where three times p is below 0.05.
    assertThat(requireNonNull(pair.high()) < 0).isEqualTo(3 * alone < 0.05);
  }

  /** A slip of the pen that lies above all is not praised before somebody looked at it. */
  @Test
  void whatIsOddIsNeitherBestNorWorst() {
    MadeClass made = new MadeClass().gave("Ada", 1, 40, 44, 46).gave("Ada", 3, 50, 48, 231);
    UUID slip = made.lines().get(5).pieceId();
    FairComparison.Standouts some = made.ask(Outcome.SEAM_STRETCH, null).standouts(2, Set.of(slip));
    assertThat(some.best()).extracting(Dot::value).containsExactly(50.0, 48.0);
    assertThat(some.worst()).extracting(Dot::value).containsExactly(40.0, 44.0);
    assertThat(some.odd()).extracting(Dot::value).containsExactly(231.0);
    assertThat(some.pieceIds()).contains(slip);
    UUID usual = made.lines().get(1).pieceId();
    assertThat(made.ask(Outcome.SEAM_STRETCH, null).standouts(1, Set.of(usual)).odd()).isEmpty();
  }

  @Test
  void whatOnlyHeldIsNeverWorst() {
    FairComparison.Standouts some =
        standouts(
            new MadeClass().held("Ada", 1, 100, 100, 100, 100, 40).gave("Ada", 3, 90, 70),
            Outcome.SEAM_SHARE);
    assertThat(some.best()).hasSize(3).allMatch(Dot::atLeast);
    assertThat(some.worst()).extracting(Dot::value).containsExactly(70.0, 90.0);
    FairComparison.Standouts none =
        standouts(
            new MadeClass().held("Ada", 1, 100, 100, 90).held("Ada", 3, 80), Outcome.SEAM_SHARE);
    assertThat(none.pieceIds()).isEmpty();
  }

  @Test
  void whatIsAsGoodAsTheBestIsNeverWorst() {
    FairComparison.Standouts some =
        standouts(new MadeClass().grade("Ada", 1, 5, 4, 4).grade("Ada", 3, 4, 4, 2), Outcome.GRADE);
    assertThat(some.best()).extracting(Dot::value).containsExactly(5.0, 4.0, 4.0);
    assertThat(some.worst()).extracting(Dot::value).containsExactly(2.0);
    assertThat(standouts(new MadeClass().grade("Ada", 1, 4, 4, 4, 4), Outcome.GRADE).pieceIds())
        .isEmpty();
  }

  @Test
  void onePieceAloneIsNeitherBestNorWorst() {
    assertThat(standouts(new MadeClass().edge("Ada", 1, 2), Outcome.EDGE_CHANGE).pieceIds())
        .isEmpty();
  }

  @Test
  void noPieceIsBestAcrossGroupsThatNothingCompares() {
    MadeClass made = new MadeClass().edge("Ada", 1, 1, 2).edge("Bo", 3, 3, 4);
    assertThat(standouts(made, Outcome.EDGE_CHANGE).pieceIds()).isEmpty();
    assertThat(standouts(made.edge("Ada", 3, 3), Outcome.EDGE_CHANGE).pieceIds()).isNotEmpty();
  }

  @Test
  void factorsStandAloneAndInPairs() {
    MadeClass made = new MadeClass().edge("Ada", 1, 1, 2).edge("Bo", 1, 3).on("7");
    made.edge("Ada", 3, 4).edge("Bo", 3, 5);
    FactorTables tables =
        FactorTables.of(
            made.lines(),
            FairQuestion.of(Outcome.EDGE_CHANGE, List.of(Factor.WIDTH, Factor.STUDENT)),
            MadeClass.stretches(),
            made.names(),
            made.setAside(),
            null);
    assertThat(tables.single()).hasSize(2);
    FactorTables.Grid grid = tables.pairs().get(0);
    assertThat(grid.rows()).containsExactly("1", "3");
    assertThat(grid.columns()).containsExactly("Ada", "Bo");
    FactorTables.Cell cell = requireNonNull(grid.cell("1", "Ada"));
    assertThat(cell.pieces()).isEqualTo(2);
    assertThat(cell.shown()).isEqualTo(1.5);
  }

  /** Two things that read as one number are two all the same: none of their pieces gets lost. */
  @Test
  void namesThatReadAsTheSameNumberStayApart() {
    MadeClass made = new MadeClass();
    made.onCloth("1").edge("Ada", 2, 1.0).edge("Bo", 2, 2.0);
    made.onCloth("1d").edge("Ada", 2, 3.0).edge("Bo", 2, 4.0);
    made.onCloth("01").edge("Ada", 2, 5.0).edge("Bo", 2, 6.0);
    FairComparison found =
        CompareFairly.of(
            made.lines(),
            FairQuestion.of(Outcome.EDGE_CHANGE, List.of(Factor.CLOTH)),
            MadeClass.stretches(),
            made.names(),
            Set.of(),
            null);
    assertThat(found.rows()).hasSize(3);
    assertThat(found.rows().stream().mapToInt(FairRow::pieces).sum()).isEqualTo(found.pieces());
  }

  /** Numbers come first, by size; a name that begins with a figure is a name. */
  @Test
  void theOrderOfLevelsGoesRoundInNoCircle() {
    List<List<String>> mixed =
        new java.util.ArrayList<>(List.of(List.of("2"), List.of("1a"), List.of("10")));
    for (int i = 0; i < 3; i++) {
      java.util.Collections.rotate(mixed, 1);
      assertThat(mixed.stream().sorted(CompareBySetting.byLevels()))
          .containsExactly(List.of("2"), List.of("10"), List.of("1a"));
    }
  }
}
