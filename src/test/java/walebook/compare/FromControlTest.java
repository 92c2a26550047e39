package walebook.compare;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.words.Words;

class FromControlTest {
  private static final FairQuestion EDGES =
      FairQuestion.of(Outcome.EDGE_CHANGE, List.of(Factor.WIDTH));

  private static FromControl ask(MadeClass made, FairQuestion question) {
    return FromControl.of(
        made.lines(),
        made.controls(),
        question,
        MadeClass.stretches(),
        made.names(),
        made.setAside());
  }

  private static List<String> says(FromControl found) {
    Words words = Words.english();
    List<String> says =
        new ControlFindings(found, levels -> "width " + String.join("", levels), 0.95)
            .all().stream().map(words::say).toList();
    assertThat(says).noneMatch(each -> each.contains("NaN") || each.contains("[compare"));
    return says;
  }

  private static MadeClass made() {
    return new MadeClass()
        .edge("Ada", 2, 3.0)
        .control()
        .edge("Ada", 1, 1.0, 2.0)
        .edge("Bo", 2, 8.0)
        .control()
        .edge("Bo", 1, 6.0)
        .edge("Cy", 2, 5.0)
        .control()
        .edge("Cy", 1, 3.2)
        .edge("Di", 1, 9.0);
  }

  /** All that is read is zigzag, but it is read against a straight stitch. */
  @Test
  void aRowNamesItsStitchWhereTheControlHasAnother() {
    MadeClass made =
        new MadeClass()
            .with("straight stitch")
            .edge("Ada", 0, 3.0)
            .control()
            .with("zigzag")
            .edge("Ada", 1, 1.0);
    FromControl found = ask(made, EDGES.by(List.of(Factor.CLOTH, Factor.STITCH, Factor.WIDTH)));
    assertThat(found.rows()).hasSize(1);
    assertThat(found.rows().get(0).levels()).containsExactly("zigzag", "1");
    assertThat(found.same())
        .containsExactly(new Comparison.FixedLevel(Factor.CLOTH, "Grey jersey"));
  }

  /** Two lessons, two controls: whoever missed one is read against another thing. */
  @Test
  void controlsOfSeveralKindsAreSaidToBeMixed() {
    assertThat(says(ask(made(), EDGES))).noneMatch(each -> each.contains("ways"));
    MadeClass two = made().with("straight stitch").edge("Ada", 2, 1.0).control();
    assertThat(says(ask(two, EDGES)))
        .anyMatch(each -> each.startsWith("The controls were sewn in 2 ways"));
  }

  /** Ada −1.5 over two pieces, Bo −2, Cy −1.8: nobody counts twice, mean −1.7667. */
  @Test
  void eachPieceIsReadAgainstItsOwnHands() {
    FromControl found = ask(made(), EDGES);
    FromControl.Row row = found.rows().get(0);
    assertThat(row.apart()).extracting(FromControl.Apart::difference).contains(-2.0, -1.0);
    assertThat(requireNonNull(row.perStudent()).mean()).isCloseTo(-5.3 / 3, within(1e-12));
    assertThat(row.students()).isEqualTo(3);
    assertThat(found.without()).containsExactly("Di");
    assertThat(says(found))
        .contains("Left out, sewer has no control of which this is known: 1 (Di).")
        .anyMatch(each -> each.contains("on average below it (95 % interval −2.4 to −1.1)"));
  }

  @Test
  void withinAMachineOnlyItsOwnControlCounts() {
    MadeClass made = new MadeClass().on("4").edge("Ada", 2, 3).control().edge("Ada", 1, 2);
    made.on("7").edge("Ada", 1, 9);
    assertThat(ask(made, EDGES).rows().get(0).apart()).hasSize(2);
    FromControl within = ask(made, EDGES.withinMachines(true));
    assertThat(within.rows().get(0).apart()).hasSize(1);
  }

  @Test
  void whatCannotBeToldIsSaidToBeSo() {
    assertThat(says(ask(new MadeClass(), EDGES)))
        .singleElement()
        .asString()
        .startsWith("Nobody has a control of which this is known")
        .contains("log it as the planned piece that it is, under Today");
    MadeClass one = new MadeClass().edge("Ada", 2, 3).control().edge("Ada", 1, 2);
    assertThat(says(ask(one, EDGES))).anyMatch(each -> each.contains("One piece can’t tell"));
    MadeClass held =
        new MadeClass().gave("Ada", 2, 60).control().held("Ada", 1, 95).held("Bo", 2, 99).control();
    FairQuestion seams = FairQuestion.of(Outcome.SEAM_STRETCH, List.of(Factor.WIDTH));
    assertThat(says(ask(held, seams)))
        .anyMatch(each -> each.contains("it only held and may lie higher"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ask(one, FairQuestion.of(Outcome.HELD, List.of(Factor.WIDTH))));
  }

  @Test
  void machinesAreComparedByTheirControls() {
    MadeClass made = new MadeClass();
    for (String who : List.of("Ada", "Bo", "Cy", "Di")) {
      double hands = who.length();
      made.on("4").edge(who, 2, hands + 1).control().edge(who, 2, hands + 1.2).control();
      made.on("7").edge(who, 2, hands + 5).control().edge(who, 2, hands + 5.1).control();
    }
    assertThat(says(ask(made, EDGES)))
        .contains("The controls differ from machine to machine: compare within one machine first.");
  }

  /** Seven pieces: one set aside, one without a value, two controls, one of a sewer without. */
  @Test
  void everyPieceIsAccountedForOnce() {
    MadeClass made =
        new MadeClass()
            .edge("Ada", 2, 3.0)
            .control()
            .edge("Ada", 1, 1.0)
            .edge("Ada", 1, 9.0)
            .aside()
            .edge("Bo", 2, 8.0)
            .control()
            .edge("Bo", 1, 6.0)
            .grade("Bo", 1, 4)
            .edge("Di", 1, 9.0);
    FromControl.Counted counted = ask(made, EDGES).counted();
    assertThat(counted).isEqualTo(new FromControl.Counted(1, 0, 1, 2, 1, 2));
    assertThat(counted.logged()).isEqualTo(7);
    assertThat(says(ask(made, EDGES)))
        .contains(
            "Pieces read against their sewer’s own control: 2 of 7 logged.",
            "Left out, set aside by the tutor: 1.",
            "Left out, edge not measured: 1.",
            "Left out, the controls themselves: 2.");
  }

  /** Left out, the held pieces would leave a mean of the short ones alone: −20, called below. */
  @Test
  void noMeanIsTakenWhereAPieceOnlyHeld() {
    MadeClass made = new MadeClass();
    for (String who : List.of("Ada", "Bo", "Cy")) {
      made.gave(who, 2, 60).control().gave(who, 1, 40).held(who, 1, 95);
    }
    FromControl found = ask(made, FairQuestion.of(Outcome.SEAM_STRETCH, List.of(Factor.WIDTH)));
    assertThat(found.rows().get(0).perStudent()).isNull();
    assertThat(says(found)).anyMatch(each -> each.contains("Of these 3 only held"));
  }

  /** Without the one that held, the control would come out at 50, and all would lie above it. */
  @Test
  void aControlThatPartlyHeldIsKnownNoMoreThanOneThatHeld() {
    MadeClass made = new MadeClass();
    for (String who : List.of("Ada", "Bo", "Cy")) {
      made.gave(who, 2, 50).control().held(who, 2, 95).control().gave(who, 1, 70, 72);
    }
    FromControl found = ask(made, FairQuestion.of(Outcome.SEAM_STRETCH, List.of(Factor.WIDTH)));
    assertThat(found.rows()).isEmpty();
    assertThat(found.own()).isEmpty();
    assertThat(found.without()).containsExactly("Ada", "Bo", "Cy");
    assertThat(found.counted().noControl()).isEqualTo(6);
    assertThat(says(found)).noneMatch(each -> each.contains("above it"));
  }

  /** Five students, each one grade better: no few, but nothing scatters. */
  @Test
  void equalDifferencesAreNotCalledTooFew() {
    MadeClass made = new MadeClass();
    for (String who : List.of("Ada", "Bo", "Cy", "Di", "Ed")) {
      made.grade(who, 2, 3).control().grade(who, 1, 4);
    }
    FromControl found = ask(made, FairQuestion.of(Outcome.GRADE, List.of(Factor.WIDTH)));
    assertThat(says(found))
        .contains(
            "width 1: pieces 5, students 5, range 1.0 to 1.0 grades off their own control. On"
                + " average the same for each student, so nothing tells how large a difference"
                + " chance would make.");
  }
}
