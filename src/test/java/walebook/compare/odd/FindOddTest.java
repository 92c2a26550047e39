package walebook.compare.odd;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import walebook.compare.MadeClass;
import walebook.compare.alike.MeasureAlike;
import walebook.record.Mark;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;
import walebook.record.Stamp;
import walebook.record.ValueMark;
import walebook.words.Words;

class FindOddTest {
  private static List<OddReading> odd(MadeClass made, ValueMark... marks) {
    MeasureAlike nothing = MeasureAlike.of(List.of(), made.names(), Set.of(), 0.95);
    return FindOdd.of(made.lines(), nothing, made.names(), List.of(marks));
  }

  private static MadeClass slip() {
    return new MadeClass().gave("Ada", 2, 40, 42, 44).gave("Bo", 2, 41, 43, 45).gave("Cy", 2, 143);
  }

  /** Median 43, MAD 2: the modified z of 143 is 0.6745 · 100 / 2 = 33.7. */
  @Test
  void aSlipOfThePenStandsFirstWithItsReason() {
    List<OddReading> found = odd(slip());
    assertThat(found).hasSize(1);
    OddReading odd = found.get(0);
    assertThat(odd.who()).isEqualTo("Cy");
    assertThat(odd.median()).isEqualTo(43.0);
    assertThat(odd.z()).isCloseTo(33.7, within(0.05));
    assertThat(odd.reasons()).containsExactly(OddReading.Reason.FAR_FROM_MIDDLE);
    assertThat(Words.english().say(OddFindings.of(odd).get(0)))
        .isEqualTo("Far from the others like it: 143.0 % where they are mostly 40.0 to 45.0 %.");
    assertThat(Words.english().say(requireNonNull(OddFindings.rule(odd))))
        .isEqualTo(
            "By the rule: 33.7 times the usual spread from 43.0 %, the middle of 7 alike;"
                + " odd beyond 3.5 times.");
  }

  /** Another odd one is no part of where most of them lie. */
  @Test
  void whereMostLieLeavesOutWhatIsOdd() {
    List<OddReading> found = odd(slip().gave("Di", 2, 150));
    assertThat(found)
        .extracting(OddReading::mostly)
        .containsExactly(new OddReading.Mostly(40, 45), new OddReading.Mostly(40, 45));
  }

  /** More than half are alike: a grade is told without a percent sign. */
  @Test
  void aGradeFarFromTheOthersIsToldPlainly() {
    OddReading odd = odd(new MadeClass().grade("Ada", 2, 4, 4, 4, 4, 4, 4, 1)).get(0);
    assertThat(Words.english().say(OddFindings.of(odd).get(0)))
        .isEqualTo("Far from the others like it: 1 where they are mostly 4.");
  }

  /** A wider stitch gives later than all the narrow ones: that is the setting, and no slip. */
  @Test
  void aBetterSettingIsNoOddReading() {
    MadeClass made =
        new MadeClass()
            .gave("Ada", 1, 41, 43, 45, 40)
            .gave("Bo", 2, 44, 46, 48, 50)
            .gave("Cy", 3, 96, 98, 94);
    assertThat(odd(made)).isEmpty();
    assertThat(odd(made.gave("Di", 4, 140))).isEmpty();
  }

  /** Too few of one setting, but the others tell what it comes to: 52, and one reads 152. */
  @Test
  void aSlipAmongFewOfItsSettingIsFoundByTheOthers() {
    MadeClass made =
        new MadeClass()
            .gave("Ada", 1, 40, 42, 41, 43)
            .gave("Bo", 2, 51, 152, 52, 53)
            .gave("Cy", 3, 61, 63, 60, 62);
    List<OddReading> found = odd(made);
    assertThat(found).extracting(OddReading::number).containsExactly(152.0);
    assertThat(found.get(0).reasons()).containsExactly(OddReading.Reason.FAR_FROM_EXPECTED);
    assertThat(found.get(0).median()).isCloseTo(52.0, within(1.0));
    assertThat(Words.english().say(OddFindings.of(found.get(0)).get(0)))
        .startsWith("Far from what such a setting comes to by the others of its cloth and stitch:");
    assertThat(Words.english().say(requireNonNull(OddFindings.rule(found.get(0)))))
        .contains("which 12 of its cloth and stitch lead one to expect");
  }

  /** Other hems and other cloths are another thing, and so are other classes. */
  @Test
  void anotherClothOrStitchTellsNothing() {
    MadeClass made =
        new MadeClass()
            .gave("Ada", 2, 40, 41, 42, 43, 44, 45)
            .with("overlock")
            .gave("Ada", 2, 98, 99)
            .onCloth("Soft rib")
            .gave("Ada", 2, 140, 141);
    assertThat(odd(made)).isEmpty();
  }

  @Test
  void whatIsMarkedStandsLast() {
    ResultLine cy = slip().lines().get(6);
    ValueMark kept =
        new ValueMark(
            UUID.randomUUID(),
            MarkedValue.SEAM_STRETCH,
            cy.pieceId(),
            Mark.KEPT,
            "",
            "",
            Stamp.fresh(Instant.EPOCH));
    MadeClass more = slip().gave("Di", 2, 80);
    List<OddReading> found = odd(more, kept);
    assertThat(found).extracting(OddReading::who).containsExactly("Di", "Cy");
    assertThat(found.get(1).mark()).isEqualTo(kept);
  }

  /** A coarse scale is no oddity: half of the looks are 4, one grade off is a judgement. */
  @Test
  void aGradeNextDoorIsNotOdd() {
    assertThat(odd(new MadeClass().grade("Ada", 2, 4, 4, 4, 4, 4, 4, 5))).isEmpty();
    assertThat(odd(new MadeClass().grade("Ada", 2, 4, 4, 4, 4, 4, 4, 1))).hasSize(1);
  }

  @Test
  void beyondEveryLimitIsAskedAboutEvenAlone() {
    List<OddReading> found = odd(new MadeClass().edge("Ada", 2, 45));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).reasons()).containsExactly(OddReading.Reason.BEYOND_LIMIT);
    assertThat(found.get(0).z()).isNull();
  }

  @Test
  void heldAndGaveAreNotMixed() {
    MadeClass made =
        new MadeClass().gave("Ada", 2, 40, 41, 42, 43, 44).held("Bo", 2, 98, 99, 100, 101, 102);
    assertThat(odd(made)).isEmpty();
  }

  @Test
  void fewEqualOrNoValuesGiveNothing() {
    assertThat(odd(new MadeClass())).isEmpty();
    assertThat(odd(new MadeClass().gave("Ada", 2, 40, 140))).isEmpty();
    assertThat(odd(new MadeClass().edge("Ada", 2, 2, 2, 2, 2, 2, 2))).isEmpty();
  }
}
