package walebook.compare;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import walebook.record.Grain;
import walebook.statistics.Additive;
import walebook.statistics.Response;

/** Settings are compared with each other on one cloth. */
class GroundTest {
  private static final List<Factor> CLOTH_AND_WIDTH = List.of(Factor.CLOTH, Factor.WIDTH);
  private static final FairQuestion EDGES = FairQuestion.of(Outcome.EDGE_CHANGE, CLOTH_AND_WIDTH);

  private static MadeClass twoCloths() {
    return new MadeClass()
        .onCloth("Jersey")
        .edge("Ada", 1, 2.0, 2.5)
        .edge("Ada", 3, 5.0)
        .edge("Bo", 1, 3.5)
        .edge("Bo", 3, 7.0, 6.5)
        .onCloth("Rib")
        .edge("Ada", 1, 12.0, 11.0)
        .edge("Bo", 1, 14.0)
        .edge("Bo", 3, 9.0)
        .edge("Cy", 3, 8.0, 9.0);
  }

  @Test
  void pairsLieOnOneCloth() {
    FairComparison found = twoCloths().ask(EDGES, null);
    assertThat(found.rows()).hasSize(4);
    assertThat(found.within()).containsExactly(Factor.CLOTH);
    assertThat(found.pairs())
        .hasSize(2)
        .allMatch(pair -> pair.first().get(0).equals(pair.second().get(0)));
    assertThat(found.pair(List.of("Jersey", "1"), List.of("Rib", "3"))).isNull();
    assertThat(found.mixesCloths()).isFalse();
  }

  /** Bo goes 2 further than Ada, on either cloth: the rib's setting does the rest. */
  @Test
  void handsThatDoAlikeOnAllClothsAreAllowedForTogether() {
    FairComparison found =
        new MadeClass()
            .onCloth("Jersey")
            .edge("Ada", 1, 2.0)
            .edge("Bo", 1, 4.0)
            .onCloth("Rib")
            .edge("Ada", 1, 10.0)
            .edge("Bo", 3, 15.0)
            .ask(EDGES, null);
    FairPair pair = requireNonNull(found.pair(List.of("Rib", "3"), List.of("Rib", "1")));
    assertThat(requireNonNull(pair.estimate())).isCloseTo(3.0, within(1e-12));
  }

  /** Two pairs at once: each interval at 97.5 % of the model of both cloths. */
  @Test
  void theFamilyIsThatOfThePairsCompared() {
    Additive model =
        Additive.of(
            List.of(
                new Response("Ada", "J1", 2.0),
                new Response("Ada", "J1", 2.5),
                new Response("Ada", "J3", 5.0),
                new Response("Bo", "J1", 3.5),
                new Response("Bo", "J3", 7.0),
                new Response("Bo", "J3", 6.5),
                new Response("Ada", "R1", 12.0),
                new Response("Ada", "R1", 11.0),
                new Response("Bo", "R1", 14.0),
                new Response("Bo", "R3", 9.0),
                new Response("Cy", "R3", 8.0),
                new Response("Cy", "R3", 9.0)),
            0.95,
            0.975);
    FairPair pair =
        requireNonNull(
            twoCloths().ask(EDGES, null).pair(List.of("Jersey", "3"), List.of("Jersey", "1")));
    var wanted = requireNonNull(model.difference("J3", "J1"));
    assertThat(requireNonNull(pair.low()))
        .isCloseTo(requireNonNull(wanted.interval()).low(), within(1e-12));
    assertThat(requireNonNull(pair.high()))
        .isCloseTo(requireNonNull(wanted.interval()).high(), within(1e-12));
    double one = requireNonNull(wanted.p());
    double other = requireNonNull(requireNonNull(model.difference("R3", "R1")).p());
    double holm = one < other ? 2 * one : Math.max(2 * other, one);
    assertThat(requireNonNull(pair.p())).isCloseTo(Math.min(1, holm), within(1e-12));
  }

  /** 9 of 9 against 0 of 2 has Fisher's p = 1/55; the other cloth's rates make it one of two. */
  @Test
  void ratesOfOtherClothsAreAFamilyWithItButNoPair() {
    MadeClass made = new MadeClass().onCloth("Jersey");
    for (int i = 0; i < 9; i++) {
      made.held("S" + i, 1, 90);
    }
    made.gave("Ada", 3, 50, 51).onCloth("Rib").held("Bo", 1, 90).gave("Bo", 3, 50);
    FairComparison found = made.ask(FairQuestion.of(Outcome.HELD, CLOTH_AND_WIDTH), null);
    assertThat(found.pairs()).hasSize(2);
    FairPair pair = requireNonNull(found.pair(List.of("Jersey", "1"), List.of("Jersey", "3")));
    assertThat(requireNonNull(pair.p())).isCloseTo(2.0 / 55, within(1e-9));
    assertThat(pair.isSure()).isTrue();
  }

  @Test
  void grainsAreComparedWhereAllElseIsAlike() {
    FairComparison found =
        new MadeClass()
            .edge("Ada", 1, 1, 2)
            .edge("Ada", 3, 3)
            .along(Grain.WALE)
            .edge("Ada", 1, 4)
            .edge("Ada", 3, 5)
            .ask(EDGES.by(List.of(Factor.GRAIN, Factor.WIDTH)), null);
    assertThat(found.within()).containsExactly(Factor.GRAIN);
    assertThat(found.pairs()).hasSize(4);
    assertThat(found.pair(List.of("course", "1"), List.of("wale", "1"))).isNotNull();
    assertThat(found.pair(List.of("course", "1"), List.of("wale", "3"))).isNull();
  }

  @Test
  void clothsAreComparedWhereTheyAloneAreAsked() {
    FairComparison found = twoCloths().ask(EDGES.by(List.of(Factor.CLOTH)), null);
    assertThat(found.within()).isEmpty();
    assertThat(found.pairs()).hasSize(1);
    FairComparison widths = twoCloths().ask(EDGES.by(List.of(Factor.WIDTH)), null);
    assertThat(widths.mixesCloths()).isTrue();
    assertThat(widths.cloths()).isEqualTo(2);
  }

  /** On one of two cloths nobody sewed both settings: that cloth alone falls apart. */
  @Test
  void aClothFallsApartByItself() {
    FairComparison found =
        new MadeClass()
            .onCloth("Jersey")
            .edge("Ada", 1, 1, 2)
            .edge("Ada", 3, 3)
            .onCloth("Rib")
            .edge("Ada", 1, 4, 5)
            .edge("Bo", 3, 6)
            .ask(EDGES, null);
    assertThat(found.apartOn()).containsExactly("Rib");
    assertThat(found.groups())
        .extracting(FairComparison.Group::cloth)
        .containsExactly("Jersey", "Rib", "Rib");
    assertThat(found.standouts(3, Set.of()).best())
        .extracting(Dot::value)
        .containsExactly(1.0, 2.0);
    assertThat(found.standouts(3, Set.of()).worst()).extracting(Dot::value).containsExactly(3.0);
  }
}
