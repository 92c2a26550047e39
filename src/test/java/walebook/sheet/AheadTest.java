package walebook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class AheadTest {

  @Test
  void everythingComesOnceAndInOrder() {
    List<Integer> all = IntStream.range(0, 1_000).boxed().toList();
    List<Integer> taken = new ArrayList<>();
    try (Ahead<Integer> ahead = new Ahead<>(all::iterator)) {
      ahead.forEachRemaining(taken::add);
      assertThat(ahead.hasNext()).isFalse();
      assertThatThrownBy(ahead::next).isInstanceOf(NoSuchElementException.class);
    }
    assertThat(taken).isEqualTo(all);
  }

  @Test
  void whatGoesWrongComesAfterWhatWentRight() {
    Iterator<Integer> failing =
        IntStream.range(0, 5)
            .map(
                i -> {
                  if (i == 3) {
                    throw new IllegalArgumentException("at three");
                  }
                  return i;
                })
            .iterator();
    List<Integer> taken = new ArrayList<>();
    try (Ahead<Integer> ahead = new Ahead<>(() -> failing)) {
      assertThatThrownBy(() -> ahead.forEachRemaining(taken::add)).hasMessage("at three");
    }
    assertThat(taken).containsExactly(0, 1, 2);
  }

  @Test
  void closingStopsTheWorkAtOnceAndWaitsForIt() {
    AtomicInteger made = new AtomicInteger();
    Iterator<Integer> endless = IntStream.generate(made::incrementAndGet).iterator();
    try (Ahead<Integer> ahead = new Ahead<>(() -> endless)) {
      assertThat(ahead.next()).isEqualTo(1);
    }
    int atClose = made.get();
    assertThat(atClose).isLessThan(20);
    assertThat(Thread.getAllStackTraces().keySet())
        .noneMatch(each -> each.getName().equals("walebook-ahead"));
    assertThat(made.get()).isEqualTo(atClose);
  }
}
