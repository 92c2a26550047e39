package walebook.act.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.record.Grain;
import walebook.record.Measure;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/** A try came to a good piece only where the seam kept up with its cloth. */
class AskGrowthTest {
  @TempDir Path folder;

  private static TestPiece withoutNeed(TestPiece piece) {
    Measure was = piece.measure();
    return piece.with(
        new Measure(
            was.gaugeMm(),
            was.edgeBeforeMm(),
            was.edgeSewnMm(),
            was.edgePressedMm(),
            was.pulls(),
            was.broke(),
            was.releasedMm(),
            null,
            was.how(),
            was.measuredBy(),
            was.measuredOn(),
            was.sewingMinutes()));
  }

  /** On a cloth that stretches by 80 %, each piece of look 4 (invented). */
  @Test
  void aSeamThatGaveShortOfItsClothIsNotGood() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      room.book.clothLog().add(room.reading(Grain.COURSE, 180));
      TestPiece weak = withoutNeed(room.piece(SeamEnd.GAVE, 110));
      TestPiece strong = withoutNeed(room.piece(SeamEnd.GAVE, 195));
      TestPiece held = withoutNeed(room.piece(SeamEnd.HELD, 180));
      TestPiece never = withoutNeed(room.piece(room.first.id(), 2.5, List.of(), List.of(), null));
      List.of(weak, strong, held, never).forEach(room.book.pieces()::add);
      assertThat(new AskGrowth(room.book).ask(room.first.id()).periods().get(0).tries())
          .filteredOn(each -> !each.good())
          .extracting(each -> each.pieces().get(0))
          .containsExactly(weak.id());
    }
  }
}
