package walebook.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
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
