package walebook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import walebook.book.sqlite.Thinning;

/** Age thins backups out as the rule of the issue has it: a day, a week, a quarter, ever after. */
class ThinningTest {
  private static final Instant NOW = Instant.parse("2026-10-05T18:30:00Z");

  private static BookCopy copy(Duration ago, BookCopy.Why why) {
    Instant at = NOW.minus(ago);
    return new BookCopy(Path.of(at + ".walebook"), at, why, 1);
  }

  private static List<BookCopy> kept(List<BookCopy> copies) {
    List<BookCopy> kept = new ArrayList<>(copies);
    kept.removeAll(Thinning.goers(copies, NOW, ZoneOffset.UTC));
    return kept;
  }

  private static List<BookCopy> every(Duration step, Duration until) {
    List<BookCopy> copies = new ArrayList<>();
    for (Duration ago = Duration.ZERO; ago.compareTo(until) < 0; ago = ago.plus(step)) {
      copies.add(copy(ago, BookCopy.Why.ROUTINE));
    }
    return copies;
  }

  @Test
  void allOfTheLastDayStay() {
    List<BookCopy> copies = every(Duration.ofMinutes(20), Duration.ofDays(1));
    assertThat(kept(copies)).isEqualTo(copies);
  }

  @Test
  void thenOneADayAWeekAMonth() {
    List<BookCopy> kept = kept(every(Duration.ofHours(1), Duration.ofDays(400)));
    assertThat(kept.stream().filter(each -> younger(each, 1)).count()).isEqualTo(24);
    assertThat(between(kept, 2, 7)).isEqualTo(5);
    assertThat(between(kept, 9, 86)).isEqualTo(11);
    assertThat(between(kept, 100, 400)).isBetween(9L, 11L);
  }

  private static boolean younger(BookCopy copy, int days) {
    return copy.madeAt().isAfter(NOW.minus(Duration.ofDays(days)));
  }

  private static long between(List<BookCopy> kept, int from, int to) {
    return kept.stream().filter(each -> !younger(each, from) && younger(each, to)).count();
  }

  @Test
  void theOnlyOneStaysHoweverOldAndSoDoThoseBeforeAMigration() {
    List<BookCopy> old = List.of(copy(Duration.ofDays(3000), BookCopy.Why.ROUTINE));
    assertThat(kept(old)).isEqualTo(old);
    List<BookCopy> shapes =
        List.of(
            copy(Duration.ofDays(300), BookCopy.Why.BEFORE_MIGRATION),
            copy(Duration.ofDays(300).plusHours(1), BookCopy.Why.BEFORE_MIGRATION));
    assertThat(kept(shapes)).isEqualTo(shapes);
  }

  @Test
  void thinningAgainAndAgainEndsWithTheSame() {
    List<BookCopy> once = kept(every(Duration.ofHours(1), Duration.ofDays(200)));
    assertThat(kept(once)).isEqualTo(once);
  }
}
