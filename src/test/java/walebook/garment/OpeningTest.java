package walebook.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import walebook.words.Words;
import walebook.working.Verdict;

class OpeningTest {
  private static final Link CLOTH = Link.gave(LinkKind.CLOTH, 60, 0.5, 3, 1);

  /** ANSUR II: male head P95 601 mm over a neckline of 500 mm asks for 20.2 %, with margin 30.2. */
  private static Opening opening(Link... links) {
    return Opening.of(new OpeningQuestion(500, 601, 10, List.of(links)));
  }

  @Test
  void metWhenEveryLinkReachesDemandAndMargin() {
    Opening answer = opening(CLOTH, Link.gave(LinkKind.SEAM, 35, 0.5, 4, 2));
    assertThat(answer.verdict()).isEqualTo(Verdict.MET);
    assertThat(answer.working().value()).isCloseTo(20.2, within(1e-9));
    assertThat(Objects.requireNonNull(answer.weakest()).kind()).isEqualTo(LinkKind.SEAM);
  }

  @Test
  void oneLinkTooShortIsEnough() {
    Opening answer =
        opening(CLOTH, Link.gave(LinkKind.HEM, 20, 0.5, 3, 3), Link.unknown(LinkKind.SEAM));
    assertThat(answer.verdict()).isEqualTo(Verdict.NOT_MET);
    assertThat(Objects.requireNonNull(answer.weakest()).kind()).isEqualTo(LinkKind.HEM);
  }

  /** By hand: 601 over 500 mm asks for 20.2 % bare, 30.2 % with the margin of 10 points. */
  @Test
  void whatPassesWithoutTheMarginIsSaidToPass() {
    Words words = Words.english();
    for (LinkKind kind : LinkKind.values()) {
      Opening little = opening(Link.gave(kind, 25, 0.5, 3, 3));
      assertThat(little.verdict()).isEqualTo(Verdict.NOT_MET);
      assertThat(words.say(little.working().says()))
          .startsWith("Not met: it passes, but without 10 points to spare")
          .contains("by 20.2 % to pass, by 30.2 % with them", "stretches by 25.0 %")
          .doesNotContain("[", "{");
      // 20.5 − 1.0 is under 20.2: not even that is certain.
      assertThat(words.say(opening(Link.gave(kind, 20.5, 0.5, 3, 3)).working().says()))
          .startsWith("Not met: it must stretch by 20.2 % to pass");
    }
    Opening partly =
        opening(Link.gave(LinkKind.HEM, 25, 0.5, 3, 3), Link.unknown(LinkKind.SEAM), CLOTH);
    assertThat(words.say(partly.working().says()))
        .as("of the seam nothing is known")
        .startsWith("Not met: it must stretch");
    Opening reckoned =
        opening(Link.gave(LinkKind.HEM, 25, 0.5, 3, 3), Link.model(LinkKind.SEAM, 50), CLOTH);
    assertThat(words.say(reckoned.working().says()))
        .as("of the seam nothing is sewn")
        .startsWith("Not met: as far as is reckoned it passes, but without 10 points to spare");
  }

  @Test
  void anUnknownLinkIsNeverMet() {
    assertThat(opening(CLOTH, Link.unknown(LinkKind.SEAM)).verdict()).isEqualTo(Verdict.NOT_KNOWN);
    assertThat(opening(Link.unknown(LinkKind.CLOTH)).weakest()).isNull();
  }

  @Test
  void theGuardBandDecides() {
    assertThat(opening(Link.gave(LinkKind.CLOTH, 30.7, 0.5, 1, 1)).verdict())
        .isEqualTo(Verdict.TOO_CLOSE);
    assertThat(opening(Link.gave(LinkKind.CLOTH, 31.3, 0.5, 1, 1)).verdict())
        .isEqualTo(Verdict.MET);
    assertThat(opening(Link.gave(LinkKind.CLOTH, 29.1, 0.5, 1, 1)).verdict())
        .isEqualTo(Verdict.NOT_MET);
  }

  @Test
  void aPieceThatHeldMeetsANeedAndNeverMissesOne() {
    assertThat(opening(CLOTH, Link.held(LinkKind.SEAM, 40, 0.5, 2, 1)).verdict())
        .isEqualTo(Verdict.MET);
    Opening shorter = opening(CLOTH, Link.held(LinkKind.SEAM, 20, 0.5, 2, 1));
    assertThat(shorter.verdict()).isEqualTo(Verdict.NOT_KNOWN);
    assertThat(Objects.requireNonNull(shorter.weakest()).kind()).isEqualTo(LinkKind.CLOTH);
  }

  @Test
  void aMeasuredPieceBeatsAModelAndTheWeakerOfTwoCounts() {
    List<Link> best =
        Link.best(
            List.of(
                Link.model(LinkKind.SEAM, 80),
                Link.held(LinkKind.SEAM, 50, 0.5, 1, 1),
                Link.gave(LinkKind.SEAM, 45, 0.5, 1, 1),
                Link.gave(LinkKind.SEAM, 41, 0.5, 1, 1)));
    assertThat(best).hasSize(1);
    assertThat(best.get(0).percent()).isEqualTo(41);
    assertThat(
            Link.best(List.of(Link.unknown(LinkKind.HEM), Link.model(LinkKind.HEM, 30)))
                .get(0)
                .basis())
        .isEqualTo(Link.Basis.MODEL);
  }

  @Test
  void anOpeningAsLargeAsTheBodyHasNothingToStretch() {
    OpeningQuestion question =
        new OpeningQuestion(601, 601, 10, List.of(Link.unknown(LinkKind.CLOTH)));
    Opening answer = Opening.of(question);
    assertThat(answer.verdict()).isEqualTo(Verdict.MET);
    assertThat(answer.working().says().key()).isEqualTo("garment.opening.says-larger");
    assertThat(question.need()).isZero();
  }

  @Test
  void theLeastOpeningMeetsItsNeedExactly() {
    // Arithmetic: 25 % of usable stretch let 440 mm pass 550 mm.
    OpeningQuestion question = new OpeningQuestion(400, 550, 0, List.of(CLOTH));
    assertThat(question.leastOpening(25)).isCloseTo(440, within(1e-9));
  }
}
