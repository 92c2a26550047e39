package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import walebook.compare.known.Attempts;
import walebook.drawing.DotRow;

class GrowthDotsTest {
  private static Attempts tried(int until, boolean good) {
    return new Attempts(
        List.of(UUID.randomUUID()), UUID.randomUUID(), LocalDate.EPOCH, until, good);
  }

  /** The class of an evening: 25 good and 8 not yet at the first piece, 4 good at the second. */
  @Test
  void everyTryCanBeCounted() {
    List<Attempts> tries = new ArrayList<>();
    for (int i = 0; i < 25; i++) {
      tries.add(tried(1, true));
    }
    for (int i = 0; i < 8; i++) {
      tries.add(tried(1, false));
    }
    for (int i = 0; i < 4; i++) {
      tries.add(tried(2, true));
    }
    List<DotRow.Dot> dots = GrowthDots.of(tries, 2);
    assertThat(dots).hasSize(37);
    Map<Double, List<DotRow.Dot>> piles =
        dots.stream().collect(Collectors.groupingBy(DotRow.Dot::value));
    assertThat(piles.values()).allMatch(pile -> pile.size() <= GrowthDots.PILE);
    assertThat(piles.values())
        .allMatch(pile -> pile.stream().map(DotRow.Dot::held).distinct().count() == 1);
    assertThat(dots).filteredOn(dot -> Math.floor(dot.value()) == 1).hasSize(33);
  }
}
