package walebook.garment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.words.Words;
import walebook.working.Working;

/** Whole boards as a class sees them, followed by hand once. */
class GoldenWorkingsTest {
  private static final Words WORDS = Words.english();

  private static List<String> board(Working working) {
    return working.steps().stream().map(step -> step.formula() + " | " + step.numbers()).toList();
  }

  @Test
  void ease() {
    Working working = Ease.of(900, 800, Rows.ROWS.fits()).value();
    assertThat(board(working))
        .containsExactly(
            "E = finished − body | 800 − 900 = −100 mm",
            "E % = 100 × (finished − body) ÷ body | 100 × (800 − 900) ÷ 900 = −11.1 %",
            "ε = 100 × (body − finished) ÷ finished, 0 when finished ≥ body"
                + " | 100 × (900 − 800) ÷ 800 = 12.5 %");
    assertThat(WORDS.say(working.says()))
        .isEqualTo(
            "The garment is smaller than the body: ease −100 mm, which is −11.1 % of the body; the"
                + " cloth is stretched by 12.5 %. That is a close fit: a cloth that stretches both"
                + " ways.");
  }

  @Test
  void opening() {
    Working working =
        Opening.of(
                new OpeningQuestion(
                    500,
                    601,
                    10,
                    List.of(
                        Link.gave(LinkKind.CLOTH, 60, 0.5, 3, 1),
                        Link.gave(LinkKind.HEM, 25, 0.5, 4, 2))))
            .working();
    assertThat(board(working))
        .containsExactly(
            "demand = 100 × (P − O) ÷ O, 0 when O ≥ P | 100 × (601 − 500) ÷ 500 = 20.2 %",
            "need = demand + margin | 20.2 + 10 = 30.2 %",
            "cloth ≥ need | 60 − 1.0 % ≥ 30.2 %",
            "hem ≥ need | 25 − 1.0 % < 30.2 %");
    assertThat(WORDS.say(working.says()))
        .isEqualTo(
            "Not met: it passes, but without 10 points to spare: it must stretch by 20.2 % to"
                + " pass, by 30.2 % with them. The weakest link is the hem, which stretches by"
                + " 25.0 %.");
  }

  @Test
  void overlocker() {
    assertThat(board(Overlocker.of(15, 6, 2, 90, 180).value()))
        .containsExactly(
            "d = a − k | 15 − 6 = 9 mm",
            "trim a − k from every edge; cut edge at the knife"
                + " | 15 − 6 = 9 mm; needle at 6 mm from the new edge: size kept",
            "needle on the seam line; knife takes a − k"
                + " | needle at 15 mm from the cut edge, knife takes 9 mm: size kept",
            "untrimmed edge at the knife: 2 × n × d | 2 × 2 × 9 = 36 mm",
            "mismatch = d × (θ_cap + θ_armhole) | 9 × (1.571 + 3.142) = 42.4 mm");
  }

  @Test
  void segments() {
    assertThat(
            board(SegmentMarks.worked(List.of(400.0, 200.0), List.of(1.0, 3.0), 600, 540).value()))
        .containsExactly(
            "λ = (Σ L − b) ÷ Σ (k × L) | (600 − 540) ÷ 1000 = 0.0600",
            "b_i = L × (1 − λ × k); mark at Σ b_i | 400 × (1 − 0.0600 × 1) = 376 mm; mark at 376"
                + " mm",
            "b_i = L × (1 − λ × k); mark at Σ b_i | 200 × (1 − 0.0600 × 3) = 164 mm; mark at 540"
                + " mm");
  }
}
