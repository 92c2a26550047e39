package walebook.compare.odd;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import walebook.compare.MadeClass;
import walebook.record.Mark;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;
import walebook.record.Stamp;
import walebook.record.ValueMark;

/** Pieces that came by and were let go are counted as those are that were kept. */
class SeenValuesTest {
  private static final List<MarkedValue> OF_PIECES =
      List.of(MarkedValue.SEAM_STRETCH, MarkedValue.EDGE_CHANGE, MarkedValue.GRADE);

  private static MadeClass made(Random random, int pieces) {
    MadeClass made = new MadeClass();
    for (int i = 0; i < pieces; i++) {
      String who = "S" + random.nextInt(5);
      double width = 1 + random.nextInt(4);
      double value = random.nextInt(9) == 0 ? 120 + random.nextInt(200) : 40 + random.nextInt(9);
      switch (random.nextInt(4)) {
        case 0 -> made.held(who, width, value);
        case 1 -> made.gave(who, width, value);
        case 2 -> made.edge(who, width, value / 8);
        default -> made.grade(who, width, random.nextInt(9) == 0 ? 1 : 4);
      }
    }
    return made;
  }

  private static ValueMark mark(ResultLine piece, MarkedValue value) {
    return new ValueMark(
        UUID.randomUUID(), value, piece.pieceId(), Mark.KEPT, "", "", Stamp.fresh(Instant.EPOCH));
  }

  private static OddLots lots(MadeClass made, List<ValueMark> marks) {
    return OddLots.of(made.lines(), made.names(), marks);
  }

  private static int seen(MadeClass made, OddLots lots, List<ValueMark> marks) {
    SeenValues values =
        new SeenValues(marks.stream().map(ValueMark::targetId).collect(Collectors.toSet()));
    made.lines().forEach(values::add);
    return values.unseen(lots);
  }

  private static int oneByOne(MadeClass made, OddLots lots) {
    return (int)
        made.lines().stream()
            .filter(piece -> lots.of(piece).stream().anyMatch(odd -> odd.mark() == null))
            .count();
  }

  @Test
  void noOneElseIsCountedThanLookedAtOneByOne() {
    int odd = 0;
    for (int seed = 0; seed < 40; seed++) {
      Random random = new Random(seed);
      MadeClass made = made(random, seed == 0 ? 3000 : random.nextInt(120));
      List<ValueMark> marks = new ArrayList<>();
      for (ResultLine each : made.lines()) {
        if (random.nextInt(10) == 0) {
          marks.add(mark(each, OF_PIECES.get(random.nextInt(OF_PIECES.size()))));
        }
      }
      OddLots lots = lots(made, marks);
      int counted = seen(made, lots, marks);
      assertThat(counted).as("seed " + seed).isEqualTo(oneByOne(made, lots));
      odd += counted;
    }
    assertThat(odd).isGreaterThan(100);
  }

  @Test
  void whatSomebodyLookedAtIsNotCounted() {
    MadeClass made = new MadeClass().gave("Ada", 2, 40, 42, 44, 41, 43, 45).gave("Cy", 2, 143);
    assertThat(seen(made, lots(made, List.of()), List.of())).isEqualTo(1);
    List<ValueMark> marks = List.of(mark(made.lines().get(6), MarkedValue.SEAM_STRETCH));
    assertThat(seen(made, lots(made, marks), marks)).isZero();
  }
}
