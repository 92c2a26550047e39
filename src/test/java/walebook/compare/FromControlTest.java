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
        ControlFindings.of(found, levels -> "width " + String.join("", levels), 0.95).stream()
            .map(words::say)
            .toList();
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
        .contains("Without a control to read against, and left out: Di.")
        .anyMatch(each -> each.contains("on average below it, by −2.4 to −1.1"));
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
        .containsExactly(
            "Nobody has a control with a plain value, so nothing can be read against it.");
    MadeClass one = new MadeClass().edge("Ada", 2, 3).control().edge("Ada", 1, 2);
    assertThat(says(ask(one, EDGES))).anyMatch(each -> each.endsWith("Too few to tell more."));
    MadeClass held =
        new MadeClass().gave("Ada", 2, 60).control().held("Ada", 1, 95).held("Bo", 2, 99).control();
    FairQuestion seams = FairQuestion.of(Outcome.SEAM_STRETCH, List.of(Factor.WIDTH));
    assertThat(says(ask(held, seams))).anyMatch(each -> each.contains("that is a lower bound"));
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
}
