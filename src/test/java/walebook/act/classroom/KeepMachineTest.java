package walebook.act.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.record.Machine;

class KeepMachineTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-10-05T18:00:00Z"), ZoneOffset.UTC);
  private static final Map<String, String> OVERLOCKER =
      Map.of("machine-number", "9", "machine-kind", "overlocker");

  @TempDir Path folder;

  private static Map<String, String> with(String field, String typed, String other, String more) {
    Map<String, String> all = new HashMap<>(OVERLOCKER);
    all.put(field, typed);
    all.put(other, more);
    return all;
  }

  /** The two turned round are a slip of the pen, not trouble with the book. */
  @Test
  void theLeastFeedIsNoMoreThanTheMost() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      KeepMachine keep = new KeepMachine(room.book, CLOCK);
      Answer<Machine> turned = keep.keep(null, with("feed-least", "0.9", "feed-most", "0.7"), true);
      assertThat(turned.problems()).extracting(Problem::code).containsExactly("number.too-small");
      assertThat(turned.problems().get(0).wanted()).isEqualTo("0.9");
      assertThat(keep.keep(null, with("feed-least", "0.7", "feed-most", "0.7"), true).isGood())
          .isTrue();
    }
  }

  /** What it sews is said twice, and sews no more for that. */
  @Test
  void aStitchSaidTwiceIsOne() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Answer<Machine> kept =
          new KeepMachine(room.book, CLOCK)
              .keep(null, with("stitches", "504 514 504", "remark", ""), true);
      assertThat(kept.value().stitches()).containsExactly("504", "514");
    }
  }
}
