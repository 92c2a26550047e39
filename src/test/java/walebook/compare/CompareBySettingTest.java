package walebook.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.record.Grain;
import walebook.record.Pull;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;
import walebook.statistics.Interval;

class CompareBySettingTest {
  @TempDir Path folder;

  private static TestPiece piece(Classroom room, double width, SeamEnd end, double mm) {
    return room.piece(
        room.first.id(), width, List.of(new PullReading(1, end, mm)), List.of(), null);
  }

  private static Comparison compare(Classroom room, List<TestPiece> pieces) {
    Map<Grain, ClothStretch> stretch =
        Map.of(Grain.COURSE, new ClothStretch(3, 50, 0.5, Pull.FIRM));
    return CompareBySetting.of(
        pieces,
        CompareBySetting.USUAL,
        Map.of(room.cloth.id(), stretch),
        Names.of(room.book, false));
  }

  /** Wilson's interval for 8 of 10, z = 1.959964: 0.4902 to 0.9433 (Newcombe 1998, method 3). */
  @Test
  void theShareThatHeldHasWilsonsInterval() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      List<TestPiece> pieces = new ArrayList<>();
      for (int i = 0; i < 8; i++) {
        pieces.add(piece(room, 3, SeamEnd.HELD, 150));
      }
      pieces.add(piece(room, 3, SeamEnd.GAVE, 140));
      pieces.add(piece(room, 3, SeamEnd.GAVE, 145));
      SettingRow row = compare(room, pieces).rows().get(0);
      Interval interval = Objects.requireNonNull(row.heldInterval());
      assertThat(interval.low()).isCloseTo(0.4902, within(0.00005));
      assertThat(interval.high()).isCloseTo(0.9433, within(0.00005));
      assertThat(row.held()).isEqualTo(8);
      assertThat(row.gave()).isEqualTo(2);
    }
  }

  @Test
  void whatHeldNeverGoesIntoTheMedianOfWhatGave() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Comparison found =
          compare(
              room,
              List.of(
                  piece(room, 2, SeamEnd.GAVE, 130),
                  piece(room, 2, SeamEnd.GAVE, 140),
                  piece(room, 2, SeamEnd.HELD, 190)));
      SettingRow row = found.rows().get(0);
      assertThat(Objects.requireNonNull(row.stretchOfGave()).median()).isEqualTo(35);
      assertThat(Objects.requireNonNull(row.shareOfGave()).median()).isEqualTo(70);
    }
  }

  @Test
  void rowsAreToldApartOnlyByWhatDiffersAndStandInOrder() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      Comparison found =
          compare(
              room,
              List.of(
                  piece(room, 10, SeamEnd.GAVE, 150),
                  piece(room, 2.5, SeamEnd.GAVE, 140),
                  piece(room, 1, SeamEnd.GAVE, 120)));
      assertThat(found.factors()).containsExactly(Factor.WIDTH);
      assertThat(found.rows())
          .extracting(SettingRow::levels)
          .containsExactly(List.of("1"), List.of("2.5"), List.of("10"));
      assertThat(found.same())
          .contains(new Comparison.FixedLevel(Factor.CLOTH, "Grey jersey"))
          .contains(new Comparison.FixedLevel(Factor.LENGTH, "2.5"));
    }
  }

  @Test
  void noPiecesMakeAnEmptyComparison() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      assertThat(compare(room, List.of()).isEmpty()).isTrue();
      assertThat(compare(room, List.of()).rows()).isEmpty();
    }
  }
}
