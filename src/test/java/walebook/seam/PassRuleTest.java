package walebook.seam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.Seeded;
import walebook.problem.Problem;
import walebook.tables.SharedTables;
import walebook.working.Band;
import walebook.working.Message;
import walebook.working.Verdict;
import walebook.working.Working;

class PassRuleTest {

  // ASTM D6193 4.2.2 (the seam slightly more than the cloth) under the guard band of JCGM 106 8.3;
  // held is a lower bound. With u 0.5 on both, U against the cloth is 1.41, against a need 1.
  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      value = {
        "62, GAVE, 60, -, MET, cloth-met",
        "61, GAVE, 60, -, TOO_CLOSE, cloth-close",
        "58, GAVE, 60, -, NOT_MET, cloth-not-met",
        "60, HELD, 60, -, MET, cloth-held",
        "59, HELD, 60, -, MET, cloth-held",
        "61, HELD, 60, -, MET, cloth-held",
        "62, HELD, 60, -, MET, cloth-held-above",
        "40, HELD, 60, -, NOT_KNOWN, held-short",
        "62, GAVE, -, 60, MET, need-met",
        "60.5, GAVE, 90, 60, TOO_CLOSE, need-close",
        "58, GAVE, 50, 60, NOT_MET, need-not-met",
        "62, HELD, -, 60, MET, need-held",
        "40, HELD, 40, 60, NOT_KNOWN, cloth-limit",
        "60, HELD, -, 60, NOT_KNOWN, cloth-limit",
        "62, GAVE, -, -, NOT_KNOWN, nothing",
        "62, HELD, -, -, MET, outlasted",
      })
  void verdicts(
      double seam,
      SeamEnd end,
      @Nullable Double cloth,
      @Nullable Double need,
      Verdict verdict,
      String reason) {
    Working working = PassRule.of(new PassQuestion(seam, 0.5, end, cloth, 0.5, need));
    assertThat(working.verdict()).isEqualTo(verdict);
    assertThat(working.says().key()).isEqualTo("seam.pass.says-" + reason);
    assertThat(working.result() == null).isEqualTo(end == SeamEnd.HELD || reason.equals("nothing"));
  }

  @Test
  void heldNeverMissesANeed() {
    Seeded.cases(
        1,
        random -> {
          double seam = Seeded.between(random, 0, 150);
          double cloth = Seeded.between(random, 0, 150);
          Double need = random.nextBoolean() ? Seeded.between(random, 0, 150) : null;
          Working held = PassRule.of(new PassQuestion(seam, 0.5, SeamEnd.HELD, cloth, 0.5, need));
          assertThat(held.verdict()).isIn(Verdict.MET, Verdict.NOT_KNOWN);
        });
  }

  @Test
  void measuredStretchOfASeam() {
    // The definition on a 100 mm gauge.
    Working gave = SeamStretch.of(100, 160, SeamEnd.GAVE, 1).value();
    assertThat(gave.value()).isCloseTo(60, within(1e-9));
    Working held = SeamStretch.of(100, 160, SeamEnd.HELD, 1).value();
    assertThat(held.result()).isNull();
    assertThat(held.says()).isEqualTo(Message.of("seam.stretch.says-held", "60.0 %", "1.1"));
    assertThat(SeamStretch.of(100, 90, SeamEnd.GAVE, 1).problems())
        .extracting(Problem::code)
        .containsExactly("reading.stretched-shorter");
  }

  @Test
  void shareOfTheCloth() {
    // By definition 48 of 60 is 80 %; common practice calls a seam below that the limit.
    assertThat(SeamShare.of(48, SeamEnd.GAVE, 60).value().value()).isCloseTo(80, within(1e-9));
    assertThat(SeamShare.of(48, SeamEnd.HELD, 60).value().result()).isNull();
    assertThat(SeamShare.of(48, SeamEnd.GAVE, 0).value().says().key())
        .isEqualTo("seam.share.says-undefined");
  }

  // Guide of common practice: 0–2 % flat, 3–5 slight, 6–10 plainly wavy, above 10 frilled.
  @ParameterizedTest
  @CsvSource({
    "100, flat",
    "102, flat",
    "103, slight",
    "105, slight",
    "106, wavy",
    "110, wavy",
    "111, lettuce",
    "130, lettuce",
    "97, drawn-in"
  })
  void edgeChange(double sewn, String band) {
    List<GrowthBand> bands = SharedTables.read().seamGrowth();
    assertThat(Band.holding(bands, sewn - 100).key()).isEqualTo(band);
    assertThat(EdgeChange.of(100, sewn, null, 1, bands).value().value())
        .isCloseTo(sewn - 100, within(1e-9));
  }

  @Test
  void edgeAfterPressingIsTheResult() {
    List<GrowthBand> bands = SharedTables.read().seamGrowth();
    Working working = EdgeChange.of(100, 105, 101.0, 1, bands).value();
    assertThat(working.value()).isCloseTo(1, within(1e-9));
    assertThat(working.says().key()).isEqualTo("seam.edge.says-pressed");
    assertThat(EdgeChange.of(0, -1, 0.0, 1, bands).problems()).hasSize(3);
  }
}
