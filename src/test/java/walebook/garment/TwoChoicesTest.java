package walebook.garment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.working.Verdict;

/**
 * Two cloths for one invented garment: 30 % are asked, one stretches by 15 %, the other by 60 %.
 */
class TwoChoicesTest {
  private static final GrainStretch FAR = new GrainStretch(60, 0.5);
  private static final GrainStretch SHORT = new GrainStretch(15, 0.5);

  private static GarmentAnswers of(GrainStretch course, List<BandChoice> bands) {
    return GarmentAnswers.of(
        new GarmentQuestion(
            Rows.kind("loose-top"),
            new GaugeNeed(100, 130),
            new ClothStretch(null, course),
            GrainRound.COURSE,
            Wear.DAY,
            10,
            List.of(new GirthPlan(Girth.CHEST, 920.0, 1000.0, 2)),
            List.of(),
            null,
            bands),
        Rows.ROWS);
  }

  private static TwoChoices.Pair pair(TwoChoices both, Check.Kind kind) {
    return both.pairs().stream()
        .filter(
            each -> {
              Check check = each.one() == null ? each.other() : each.one();
              return check != null && check.kind() == kind;
            })
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theBetterOneIsNamedFromBothSides() {
    GarmentAnswers worse = of(SHORT, List.of());
    GarmentAnswers better = of(FAR, List.of());
    assertThat(pair(new TwoChoices(worse, better), Check.Kind.GAUGE).differs())
        .isEqualTo(TwoChoices.Differs.BETTER);
    assertThat(pair(new TwoChoices(better, worse), Check.Kind.GAUGE).differs())
        .isEqualTo(TwoChoices.Differs.WORSE);
  }

  @Test
  void whatIsAlikeIsCalledTheSameAndOtherFiguresAreTold() {
    GarmentAnswers far = of(FAR, List.of());
    assertThat(new TwoChoices(far, of(FAR, List.of())).pairs())
        .isNotEmpty()
        .allMatch(each -> each.differs() == TwoChoices.Differs.SAME);
    GarmentAnswers nearly = of(new GrainStretch(50, 0.5), List.of());
    assertThat(pair(new TwoChoices(far, nearly), Check.Kind.GAUGE).differs())
        .isEqualTo(TwoChoices.Differs.FIGURES);
  }

  @Test
  void aCheckOfOneAloneStandsByItself() {
    BandChoice band =
        new BandChoice(
            OpeningEdge.NECKLINE,
            new BandPlan(520, 0.8, 20, 6, 6),
            BandRatio.Place.NECK,
            6,
            FAR,
            Girth.HEAD,
            570.0);
    TwoChoices both = new TwoChoices(of(FAR, List.of()), of(FAR, List.of(band)));
    TwoChoices.Pair alone = pair(both, Check.Kind.BAND);
    assertThat(alone.one()).isNull();
    assertThat(alone.differs()).isEqualTo(TwoChoices.Differs.ONE_SIDED);
    assertThat(both.pairs()).hasSize(both.other().checks().size());
  }

  @Test
  void notKnownIsNeitherBetterNorWorse() {
    GarmentAnswers unread =
        GarmentAnswers.of(
            new GarmentQuestion(
                Rows.kind("loose-top"),
                new GaugeNeed(100, 130),
                new ClothStretch(null, null),
                GrainRound.COURSE,
                Wear.DAY,
                10,
                List.of(),
                List.of(),
                null,
                List.of()),
            Rows.ROWS);
    TwoChoices.Pair gauge = pair(new TwoChoices(of(FAR, List.of()), unread), Check.Kind.GAUGE);
    assertThat(gauge.other()).isNotNull();
    assertThat(unread.verdict()).isEqualTo(Verdict.NOT_KNOWN);
    assertThat(gauge.differs()).isEqualTo(TwoChoices.Differs.ONE_SIDED);
  }
}
