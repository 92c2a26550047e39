package walebook.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import walebook.record.SeamEnd;

class ExtremesTest {
  private static SettingRow row(String level, int held, int gave) {
    return row(List.of(level), held, gave);
  }

  private static SettingRow row(List<String> levels, int held, int gave) {
    List<PieceResult> results = new ArrayList<>();
    for (int i = 0; i < held + gave; i++) {
      results.add(
          new PieceResult(
              UUID.randomUUID(),
              "AAAAAA",
              UUID.randomUUID(),
              i < held ? SeamEnd.HELD : SeamEnd.GAVE,
              50.0,
              null,
              null,
              null,
              null,
              0));
    }
    return new SettingRow(levels, results);
  }

  private static Extremes<SettingRow> of(SettingRow... rows) {
    return Objects.requireNonNull(Extremes.of(List.of(rows), List.of(Factor.WIDTH)));
  }

  @Test
  void aFewLuckyPiecesDoNotWinOverMany() {
    Extremes<SettingRow> ends =
        of(row("few", 2, 0), row("many", 19, 1), row("one", 0, 1), row("none", 1, 19));
    assertThat(ends.most().levels()).containsExactly("many");
    assertThat(ends.least().levels()).containsExactly("none");
    assertThat(ends.surely()).isTrue();
    assertThat(ends.apart()).isTrue();
  }

  /** Fisher's tea tasting, 4 of 4 against 0 of 4: p = 2/70 = 0.0286 (two-sided; Fisher 1935). */
  @Test
  void pickingTheTwoFurthestApartIsAllowedFor() {
    assertThat(of(row("a", 4, 0), row("b", 0, 4)).apart()).isTrue();
    assertThat(of(row("a", 4, 0), row("b", 0, 4), row("c", 2, 2)).apart()).isFalse();
  }

  @Test
  void oneSettingAloneHasNoExtremes() {
    assertThat(Extremes.of(List.of(row("a", 3, 1), row("b", 0, 0)), List.of(Factor.WIDTH)))
        .isNull();
    assertThat(of(row("a", 2, 2), row("b", 2, 2)).even()).isTrue();
  }

  @Test
  void whatWasJudgedIsTheWidestOfAllPairs() {
    // Four settings make 4 * 3 / 2 = 6 pairs.
    assertThat(of(row("a", 4, 0), row("b", 0, 4), row("c", 2, 2), row("d", 1, 2)).pairs())
        .isEqualTo(6);
  }

  /** The surest of these, 50 of 100 and 25 of 50, held alike, yet the third did not. */
  @Test
  void settingsAreEvenOnlyWhenAllOfThemAre() {
    Extremes<SettingRow> ends = of(row("a", 50, 50), row("b", 25, 25), row("c", 1, 0));
    assertThat(ends.even()).isFalse();
    assertThat(ends.most().levels()).containsExactly("c");
  }

  /** By the near ends 50 of 100 would be the most and 3 of 4 the least, which is the wrong way. */
  @Test
  void theOneSaidToHoldMostNeverHeldInASmallerShareThanTheOther() {
    Extremes<SettingRow> ends = of(row("a", 50, 50), row("b", 3, 1), row("c", 1, 0));
    assertThat(Objects.requireNonNull(ends.most().heldShare()).share())
        .isGreaterThan(Objects.requireNonNull(ends.least().heldShare()).share());
    assertThat(ends.surely()).isFalse();
    assertThat(ends.apart()).isFalse();
  }

  /** The furthest apart of all lie on two cloths: what makes them so may be the cloth. */
  @Test
  void bothLieOnOneCloth() {
    Extremes<SettingRow> ends =
        Objects.requireNonNull(
            Extremes.of(
                List.of(
                    row(List.of("jersey", "1"), 20, 0),
                    row(List.of("jersey", "3"), 19, 1),
                    row(List.of("rib", "1"), 12, 8),
                    row(List.of("rib", "3"), 0, 20)),
                List.of(Factor.CLOTH, Factor.WIDTH)));
    assertThat(ends.most().levels()).containsExactly("rib", "1");
    assertThat(ends.least().levels()).containsExactly("rib", "3");
    assertThat(ends.pairs()).isEqualTo(2);
    assertThat(ends.within()).containsExactly(Factor.CLOTH);
    assertThat(ends.sharing()).isNotNull();
  }

  @Test
  void settingsEachOnItsOwnClothHaveNoExtremes() {
    List<SettingRow> rows =
        List.of(row(List.of("jersey", "1"), 2, 0), row(List.of("rib", "3"), 0, 2));
    assertThat(Extremes.of(rows, List.of(Factor.CLOTH, Factor.WIDTH))).isNull();
  }
}
