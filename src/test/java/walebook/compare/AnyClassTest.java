package walebook.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import walebook.record.Grain;
import walebook.words.Words;

/** Tiny, lopsided, tied, censored and disconnected classes: true sentences, never NaN. */
class AnyClassTest {
  private static final Words WORDS = Words.english();
  private static final List<List<Factor>> FACTORS =
      List.of(
          List.of(),
          List.of(Factor.WIDTH),
          List.of(Factor.CLOTH),
          List.of(Factor.CLOTH, Factor.WIDTH),
          List.of(Factor.CLOTH, Factor.GRAIN, Factor.WIDTH));
  private static final List<Outcome> OUTCOMES = List.of(Outcome.values());

  private static MadeClass made(Random random) {
    MadeClass made = new MadeClass();
    int pieces = random.nextInt(14);
    int students = 1 + random.nextInt(4);
    int widths = 1 + random.nextInt(4);
    boolean tied = random.nextInt(4) == 0;
    double share = random.nextInt(3) / 2.0;
    for (int i = 0; i < pieces; i++) {
      String who = "S" + random.nextInt(students);
      double width = 1 + random.nextInt(widths);
      double value = tied ? 40 : 20 + random.nextInt(60);
      made.on(String.valueOf(1 + random.nextInt(2)));
      made.onCloth(random.nextInt(3) == 0 ? "Soft rib" : "Grey jersey");
      made.along(random.nextInt(3) == 0 ? Grain.WALE : Grain.COURSE);
      if (random.nextDouble() < share) {
        made.held(who, width, value);
      } else if (random.nextInt(5) > 0) {
        made.gave(who, width, value);
      } else if (random.nextBoolean()) {
        made.edge(who, width, value / 10);
      } else {
        made.minutes(who, width, value / 10);
      }
      if (random.nextInt(8) == 0) {
        made.aside();
      }
      if (random.nextInt(3) == 0) {
        made.control();
      }
    }
    return made;
  }

  @Test
  void sentencesAreTrueOrLeftOut() {
    Random random = new Random(31);
    for (int round = 0; round < 3000; round++) {
      MadeClass made = made(random);
      Outcome outcome = OUTCOMES.get(random.nextInt(OUTCOMES.size()));
      Double matters = random.nextBoolean() ? 10.0 : null;
      FairQuestion question =
          FairQuestion.of(outcome, FACTORS.get(random.nextInt(FACTORS.size())))
              .mattering(matters)
              .withinMachines(random.nextBoolean());
      FairComparison found = made.ask(question, MeasuringError.of(outcome, 2.0, 80.0));
      String as = "round " + round + " " + outcome;
      List<String> says =
          FairFindings.of(found, levels -> "width " + String.join("", levels)).stream()
              .map(WORDS::say)
              .toList();
      assertThat(says).as(as).isNotEmpty();
      assertThat(String.join(" ", says)).as(as).doesNotContain("NaN", "Infinity", "[compare", "{");
      assertThat(found.toString()).as(as).doesNotContain("NaN", "Infinity");
      consistent(found, as);
    }
  }

  @Test
  void controlsAreReadWithoutNonsense() {
    Random random = new Random(32);
    for (int round = 0; round < 3000; round++) {
      MadeClass made = made(random);
      Outcome outcome = OUTCOMES.get(random.nextInt(OUTCOMES.size()));
      if (outcome.isRate()) {
        continue;
      }
      FairQuestion question =
          FairQuestion.of(outcome, FACTORS.get(random.nextInt(FACTORS.size())))
              .withinMachines(random.nextBoolean());
      FromControl found =
          FromControl.of(
              made.lines(),
              made.controls(),
              question,
              MadeClass.stretches(),
              made.names(),
              made.setAside());
      String as = "round " + round + " " + outcome;
      List<String> says =
          new ControlFindings(found, levels -> String.join(" ", levels), 0.95)
              .all().stream().map(WORDS::say).toList();
      assertThat(says.isEmpty()).as(as).isFalse();
      assertThat(String.join(" ", says)).as(as).doesNotContain("NaN", "Infinity", "[compare", "{");
      assertThat(found.toString()).as(as).doesNotContain("NaN", "Infinity");
      assertThat(found.counted().logged()).as(as).isEqualTo(made.lines().size());
    }
  }

  private static void consistent(FairComparison found, String as) {
    int rows = found.rows().size();
    assertThat(found.pairs().size()).as(as).isLessThanOrEqualTo(rows * (rows - 1) / 2);
    if (found.within().isEmpty()) {
      assertThat(found.pairs()).as(as).hasSize(rows * (rows - 1) / 2);
    }
    assertThat(found.rows().stream().mapToInt(FairRow::pieces).sum())
        .as(as)
        .isEqualTo(found.pieces());
    for (FairRow row : found.rows()) {
      if (row.bounds() > 0) {
        assertThat(row.raw()).as(as).isNull();
        assertThat(row.adjusted()).as(as).isNull();
      }
    }
    for (FairPair pair : found.pairs()) {
      if (pair.isSure()) {
        boolean oneSide =
            (pair.low() != null && pair.low() > 0) || (pair.high() != null && pair.high() < 0);
        assertThat(oneSide).as(as + " " + pair).isTrue();
      }
    }
  }

  /** Ten graded 5 and ten 3, by the same ten: that is not too few, but nothing scatters. */
  @Test
  void noScatterIsNotCalledTooFew() {
    MadeClass made = new MadeClass();
    for (int i = 0; i < 10; i++) {
      made.grade("S" + i, 1, 5).grade("S" + i, 3, 3);
    }
    List<String> says =
        FairFindings.of(made.ask(Outcome.GRADE, null), levels -> "width " + levels.get(0)).stream()
            .map(WORDS::say)
            .toList();
    assertThat(says).noneMatch(each -> each.contains("too few"));
    assertThat(says)
        .contains(
            "width 1 (pieces: 10) against width 3 (pieces: 10): 2.0 grades apart. Allowing"
                + " for who sewed, nothing scatters here, so nothing tells how large a difference"
                + " chance would make.");
  }
}
