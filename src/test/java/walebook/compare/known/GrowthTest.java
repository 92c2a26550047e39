package walebook.compare.known;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import walebook.book.Classroom;
import walebook.record.Parent;
import walebook.record.PieceOutcome;
import walebook.record.SeamEnd;
import walebook.record.Seen;
import walebook.record.TestPiece;
import walebook.record.Whose;
import walebook.words.Words;
import walebook.working.Verdict;

class GrowthTest {
  private static final UUID AUTUMN = UUID.randomUUID();
  private static final UUID SPRING = UUID.randomUUID();

  private static final String RULE =
      "Good means here: it looks good (said to be kept, or where nobody said, look 4 or 5), and"
          + " where the seam was pulled, its own verdict is met. A piece that was never pulled, or"
          + " whose verdict is not known, is judged by its look alone.";

  @TempDir Path folder;
  private final List<TestPiece> pieces = new ArrayList<>();
  private final Map<UUID, Verdict> seams = new HashMap<>();

  private void chain(Classroom room, UUID classId, String on, @Nullable PieceOutcome... outcomes) {
    UUID before = null;
    int day = 0;
    for (PieceOutcome outcome : outcomes) {
      TestPiece like = room.piece(SeamEnd.GAVE, 140);
      LocalDate date = LocalDate.parse(on).plusDays(day++);
      Integer grade = outcome == null ? null : Integer.valueOf(3);
      pieces.add(
          new TestPiece(
              like.id(),
              like.code(),
              new Whose(classId, room.first.id(), null, null, date),
              like.cloth(),
              like.setting(),
              like.measure(),
              new Seen(grade, outcome, List.of(), ""),
              before == null ? null : new Parent(before, "dial-width"),
              like.stamp()));
      before = like.id();
    }
  }

  private Growth growth() {
    return Growth.of(
        pieces,
        each -> seams.getOrDefault(each.id(), Verdict.NOT_KNOWN),
        id -> id.equals(AUTUMN) ? "Autumn" : "Spring");
  }

  private List<String> says() {
    Words words = Words.english();
    return GrowthFindings.of(growth()).stream().map(words::say).toList();
  }

  @Test
  void triesAreCountedUntilOneIsGood() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      chain(
          room, AUTUMN, "2026-10-05", PieceOutcome.CHANGE, PieceOutcome.CHANGE, PieceOutcome.KEEP);
      chain(room, AUTUMN, "2026-10-12", PieceOutcome.KEEP);
      chain(room, AUTUMN, "2026-10-19", PieceOutcome.SPOILED, PieceOutcome.CHANGE);
      chain(room, AUTUMN, "2026-10-26", (PieceOutcome) null);
    }
    Growth.Period autumn = growth().periods().get(0);
    assertThat(autumn.tries()).extracting(Attempts::untilGood).containsExactly(3, 1, 2);
    assertThat(autumn.tries()).extracting(Attempts::good).containsExactly(true, true, false);
    assertThat(autumn.firstTimeRight().count()).isEqualTo(1);
    assertThat(autumn.pieces()).isEqualTo(6);
    // Kaplan and Meier by hand: 1 of 3 at 1, one drops out at 2, the last at 3 - and that alone.
    assertThat(autumn.half()).isNull();
    assertThat(autumn.tooFew()).isTrue();
    assertThat(growth().notJudged()).isEqualTo(1);
    assertThat(says())
        .contains(
            "Autumn: the first piece was good in 1 of 3 tries.",
            "By which piece number half of the tries come to a good one can’t be told: too few"
                + " went so far.",
            "Tries of which no piece was judged, left out: 1.");
  }

  @Test
  void whereHalfCameToAGoodOneIsToldFromThreeTriesOn() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      chain(room, AUTUMN, "2026-10-05", PieceOutcome.KEEP);
      chain(room, AUTUMN, "2026-10-12", PieceOutcome.CHANGE, PieceOutcome.KEEP);
      chain(room, AUTUMN, "2026-10-19", PieceOutcome.CHANGE, PieceOutcome.KEEP);
      assertThat(growth().periods().get(0).tooFew()).isTrue();
      chain(room, AUTUMN, "2026-10-26", PieceOutcome.CHANGE, PieceOutcome.CHANGE);
    }
    // Kaplan and Meier by hand: 3/4 left after 1, of three still followed two are good at 2: 1/4.
    assertThat(growth().periods().get(0).half()).isEqualTo(2.0);
    assertThat(says())
        .containsExactly(
            "Autumn: the first piece was good in 1 of 4 tries.",
            "Half of these tries came to a good piece by piece number 2.",
            RULE);
  }

  /** Two of eight came to a good one; of the three that went on one at 2, so 6/8 · 2/3 = 1/2. */
  @Test
  void whatTriesGivenUpWouldHaveComeToIsNotCountedAsSeen() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      chain(room, AUTUMN, "2026-10-05", PieceOutcome.KEEP);
      chain(room, AUTUMN, "2026-10-06", PieceOutcome.KEEP);
      chain(room, AUTUMN, "2026-10-07", PieceOutcome.CHANGE);
      chain(room, AUTUMN, "2026-10-08", PieceOutcome.CHANGE);
      chain(room, AUTUMN, "2026-10-09", PieceOutcome.CHANGE);
      chain(room, AUTUMN, "2026-10-12", PieceOutcome.CHANGE, PieceOutcome.KEEP);
      chain(room, AUTUMN, "2026-10-19", PieceOutcome.CHANGE, PieceOutcome.CHANGE);
      chain(room, AUTUMN, "2026-10-26", PieceOutcome.CHANGE, PieceOutcome.CHANGE);
    }
    assertThat(growth().periods().get(0).half()).isEqualTo(2.0);
    assertThat(says())
        .containsExactly(
            "Autumn: the first piece was good in 2 of 8 tries.",
            "Had the tries given up early gone on like the others, half would have come to a good"
                + " piece by piece number 2.",
            RULE);
  }

  /** A pretty seam that gives way is no good seam; what nobody pulled can only be looked at. */
  @ParameterizedTest
  @CsvSource({"MET, 1", "NOT_MET, 0", "TOO_CLOSE, 0", "NOT_KNOWN, 1"})
  void whatLooksGoodIsGoodOnlyWhenItsSeamMeetsWhatIsAsked(Verdict seam, int good) {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      chain(room, AUTUMN, "2026-10-05", PieceOutcome.KEEP);
    }
    seams.put(pieces.get(0).id(), seam);
    assertThat(growth().periods().get(0).firstTimeRight().count()).isEqualTo(good);
    assertThat(says()).endsWith(RULE);
  }

  @Test
  void growthIsClaimedOnlyBeyondChance() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      for (int i = 0; i < 5; i++) {
        chain(room, AUTUMN, "2026-10-0" + (i + 1), i < 3 ? PieceOutcome.CHANGE : PieceOutcome.KEEP);
      }
      for (int i = 0; i < 4; i++) {
        chain(room, SPRING, "2027-02-0" + (i + 1), PieceOutcome.KEEP);
      }
      assertThat(says()).anyMatch(each -> each.startsWith("First against last: too few"));
      for (int i = 0; i < 6; i++) {
        chain(room, AUTUMN, "2026-11-0" + (i + 1), PieceOutcome.CHANGE);
        chain(room, SPRING, "2027-03-0" + (i + 1), PieceOutcome.KEEP);
      }
    }
    assertThat(requireNonNull(growth().lastAgainstFirst()).fisher()).isLessThan(0.05);
    assertThat(says())
        .contains("More come right at once than at first; chance seldom makes such a difference.");
  }

  @Test
  void nothingJudgedIsSaidToBeSo() {
    assertThat(says())
        .containsExactly("No piece was judged yet, so nothing can be said of growth.");
  }
}
