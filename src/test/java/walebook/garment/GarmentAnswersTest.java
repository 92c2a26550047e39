package walebook.garment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import walebook.garment.Advice.Action;
import walebook.words.Words;
import walebook.working.Message;
import walebook.working.Verdict;

/** Made-up garments of the class; the girths are invented. */
class GarmentAnswersTest {
  private static final Words WORDS = Words.english();
  private static final GrainStretch FAR = new GrainStretch(60, 0.5);
  private static final GrainStretch SHORT = new GrainStretch(15, 0.5);
  private static final List<Link> GOOD = List.of(Link.gave(LinkKind.SEAM, 55, 0.5, 3, 2));

  private static GarmentQuestion top(
      GrainRound round,
      ClothStretch cloth,
      double neckline,
      List<Link> links,
      @Nullable AllowancePlan allowance) {
    return new GarmentQuestion(
        Rows.kind("fitted-top"),
        new GaugeNeed(100, 130),
        cloth,
        round,
        Wear.DAY,
        10,
        List.of(
            new GirthPlan(Girth.CHEST, 920.0, 880.0, 2),
            new GirthPlan(Girth.WAIST, 760.0, 760.0, 2),
            new GirthPlan(Girth.UPPER_ARM, 300.0, 290.0, 1)),
        List.of(
            new OpeningPlan(OpeningEdge.NECKLINE, Girth.HEAD, neckline, 570.0, 6, 0, links),
            new OpeningPlan(OpeningEdge.SLEEVE_HEM, Girth.HAND, 190.0, 210.0, 0, 1, links),
            new OpeningPlan(OpeningEdge.HEM, Girth.CHEST, 940.0, 920.0, 0, 2, links)),
        allowance,
        List.of());
  }

  private static GarmentAnswers of(GarmentQuestion question) {
    GarmentAnswers answers = GarmentAnswers.of(question, Rows.ROWS);
    answers.checks().forEach(GarmentAnswersTest::whole);
    answers.advice().forEach(advice -> whole(advice.says()));
    return answers;
  }

  private static void whole(Check check) {
    whole(check.about());
    whole(check.working().says());
  }

  private static void whole(Message message) {
    assertThat(WORDS.say(message))
        .doesNotContain("{", "}", "@", "[" + message.key(), "null", "NaN", "Infinity");
  }

  private static List<Action> actions(GarmentAnswers answers) {
    return answers.advice().stream().map(Advice::action).toList();
  }

  @Test
  void allIsWell() {
    GarmentAnswers answers =
        of(top(GrainRound.COURSE, new ClothStretch(SHORT, FAR), 480, GOOD, null));
    assertThat(answers.verdict()).isEqualTo(Verdict.MET);
    assertThat(answers.advice()).isEmpty();
  }

  @Test
  void whatIsMetByReckoningAloneSaysSo() {
    ClothStretch cloth = new ClothStretch(SHORT, FAR);
    GarmentAnswers sewn = of(top(GrainRound.COURSE, cloth, 480, GOOD, null));
    assertThat(sewn.isReckonedOnly()).isFalse();
    List<Link> reckoned = List.of(Link.model(LinkKind.SEAM, 70));
    GarmentAnswers answers = of(top(GrainRound.COURSE, cloth, 480, reckoned, null));
    assertThat(answers.verdict()).isEqualTo(Verdict.MET);
    assertThat(answers.isReckonedOnly()).isTrue();
    assertThat(opening(answers, OpeningEdge.NECKLINE).isReckonedOnly()).isTrue();
  }

  @Test
  void laidTheWrongWayRoundItSaysTurnAndTurningMendsIt() {
    GarmentQuestion wrong = top(GrainRound.WALE, new ClothStretch(SHORT, FAR), 480, GOOD, null);
    GarmentAnswers answers = of(wrong);
    assertThat(answers.verdict()).isEqualTo(Verdict.NOT_MET);
    assertThat(actions(answers).get(0)).isEqualTo(Action.TURN_PIECES);
    assertThat(of(wrong.turned()).verdict()).isEqualTo(Verdict.MET);
    Check way =
        answers.checks().stream()
            .filter(check -> check.kind() == Check.Kind.WAY)
            .findFirst()
            .orElseThrow();
    assertThat(way.verdict()).as("of the way as laid").isEqualTo(Verdict.NOT_MET);
    assertThat(WORDS.say(way.working().says())).startsWith("As laid now it does not pass");
    assertThat(actions(answers)).as("turning widens it").doesNotContain(Action.WIDEN_OPENING);
  }

  @Test
  void theDemandIsSaidWithItsMarginAndWithWhatTheAllowanceDoes() {
    // By hand: 100 × (570 − 480) ÷ 480 = 18.75 %, and the margin of 10 points.
    ClothStretch cloth = new ClothStretch(SHORT, FAR);
    Check neck = opening(of(top(GrainRound.COURSE, cloth, 480, GOOD, null)), OpeningEdge.NECKLINE);
    assertThat(WORDS.say(neck.working().says()))
        .containsPattern("by 18\\.[78] % to pass, by 28\\.[78] % with 10 points to spare");
    AllowancePlan untrimmed = new AllowancePlan(15, 6, false, 1.6, 3);
    Check narrowed =
        opening(of(top(GrainRound.COURSE, cloth, 480, GOOD, untrimmed)), OpeningEdge.NECKLINE);
    // The neckline shrinks by 6 × 9 = 54 mm.
    assertThat(narrowed.working().steps().get(0).numbers()).contains("480").contains("426");
  }

  @Test
  void whenNeitherWayPassesAnotherClothIsNamedByItsStretch() {
    GarmentQuestion question =
        top(GrainRound.COURSE, new ClothStretch(SHORT, SHORT), 480, GOOD, null);
    GarmentAnswers answers = of(question);
    assertThat(actions(answers).get(0)).isEqualTo(Action.OTHER_CLOTH);
    double wanted = GarmentAdvice.stretchWanted(question, Rows.ROWS, answers.checks());
    ClothStretch enough = new ClothStretch(SHORT, new GrainStretch(wanted, 0));
    assertThat(of(top(GrainRound.COURSE, enough, 480, GOOD, null)).verdict())
        .isEqualTo(Verdict.MET);
  }

  @Test
  void aNecklineThatWouldNotPassIsWidenedToWhatPasses() {
    GarmentQuestion tight = top(GrainRound.COURSE, new ClothStretch(SHORT, FAR), 380, GOOD, null);
    GarmentAnswers answers = of(tight);
    Check neck = opening(answers, OpeningEdge.NECKLINE);
    assertThat(neck.verdict()).isEqualTo(Verdict.NOT_MET);
    assertThat(Objects.requireNonNull(neck.weakest()).kind()).isEqualTo(LinkKind.SEAM);
    assertThat(actions(answers)).contains(Action.WIDEN_OPENING, Action.OTHER_LINK);
    double least = Objects.requireNonNull(neck.question()).leastOpening(54);
    assertThat(
            opening(
                    of(
                        top(
                            GrainRound.COURSE,
                            new ClothStretch(SHORT, FAR),
                            Math.ceil(least),
                            GOOD,
                            null)),
                    OpeningEdge.NECKLINE)
                .verdict())
        .isEqualTo(Verdict.MET);
  }

  private static Check opening(GarmentAnswers answers, OpeningEdge edge) {
    return answers.checks().stream()
        .filter(check -> check.plan() != null && check.plan().edge() == edge)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void anUnknownSeamAsksForItsTestPiece() {
    List<Link> none = List.of(Link.unknown(LinkKind.SEAM), Link.unknown(LinkKind.HEM));
    GarmentAnswers answers =
        of(top(GrainRound.COURSE, new ClothStretch(SHORT, FAR), 480, none, null));
    assertThat(answers.verdict()).isEqualTo(Verdict.NOT_KNOWN);
    assertThat(answers.advice())
        .extracting(Advice::piece)
        .filteredOn(Objects::nonNull)
        .extracting(Advice.PieceWanted::link)
        .containsExactlyInAnyOrder(LinkKind.SEAM, LinkKind.HEM, LinkKind.SEAM, LinkKind.HEM);
  }

  @Test
  void anUntrimmedAllowanceReworksEverythingAndTrimmingRestoresIt() {
    AllowancePlan untrimmed = new AllowancePlan(15, 6, false, 1.6, 3);
    GarmentAnswers answers =
        of(top(GrainRound.COURSE, new ClothStretch(SHORT, FAR), 480, GOOD, untrimmed));
    assertThat(actions(answers)).contains(Action.CHANGE_ALLOWANCE);
    Check sleeve =
        answers.checks().stream()
            .filter(check -> check.kind() == Check.Kind.SLEEVE)
            .findFirst()
            .orElseThrow();
    // d (θ_cap + θ_armhole) = 9 × 4.6 = 41.4 mm.
    assertThat(Math.round(sleeve.working().value() * 10)).isEqualTo(414);
    // The neckline shrinks by 6 × 9 = 54 mm.
    OpeningQuestion neck =
        Objects.requireNonNull(opening(answers, OpeningEdge.NECKLINE).question());
    assertThat(Math.round(neck.openingMm())).isEqualTo(426);
    AllowancePlan trimmed = new AllowancePlan(15, 6, true, 1.6, 3);
    GarmentAnswers mended =
        of(top(GrainRound.COURSE, new ClothStretch(SHORT, FAR), 480, GOOD, trimmed));
    assertThat(mended.verdict()).isEqualTo(Verdict.MET);
    assertThat(mended.advice()).isEmpty();
  }

  @Test
  void aClothWithoutReadingsIsMeasuredFirst() {
    GarmentAnswers answers =
        of(top(GrainRound.COURSE, new ClothStretch(null, null), 480, GOOD, null));
    assertThat(answers.verdict()).isEqualTo(Verdict.NOT_KNOWN);
    assertThat(actions(answers)).contains(Action.MEASURE_CLOTH);
  }

  @Test
  void anEmptySheetOfEveryKindAnswersWithoutGuessing() {
    for (GarmentKind kind : Rows.ROWS.kinds()) {
      GarmentAnswers answers =
          of(
              new GarmentQuestion(
                  kind,
                  null,
                  new ClothStretch(null, null),
                  GrainRound.COURSE,
                  kind.wear(),
                  Rows.ROWS.margin(kind.margin()),
                  List.of(),
                  List.of(),
                  null,
                  List.of()));
      assertThat(answers.verdict()).isEqualTo(Verdict.NOT_KNOWN);
      assertThat(answers.checks()).hasSize(kind.girths().size() + kind.openings().size());
      assertThat(answers.cautions()).hasSameSizeAs(kind.cautions());
    }
  }

  @Test
  void aBandIsAnsweredForLengthLieAndHead() {
    GarmentQuestion plain = top(GrainRound.COURSE, new ClothStretch(SHORT, FAR), 480, GOOD, null);
    BandChoice band =
        new BandChoice(
            OpeningEdge.NECKLINE,
            new BandPlan(480, 0.95, 20, 6, 6),
            BandRatio.Place.NECK,
            6,
            new GrainStretch(20, 0.5),
            Girth.HEAD,
            570.0);
    GarmentAnswers answers =
        of(
            new GarmentQuestion(
                plain.kind(),
                plain.need(),
                plain.cloth(),
                plain.round(),
                plain.wear(),
                plain.marginPoints(),
                plain.girths(),
                plain.openings(),
                null,
                List.of(band)));
    assertThat(answers.checks())
        .extracting(Check::kind)
        .contains(Check.Kind.BAND, Check.Kind.BAND_FLAT, Check.Kind.BAND_OVER);
    assertThat(actions(answers)).contains(Action.CHANGE_BAND);
  }
}
