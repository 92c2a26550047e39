package walebook.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.open.SqliteFiles;
import walebook.record.Grain;
import walebook.record.Parent;
import walebook.record.PieceOutcome;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.Seen;
import walebook.record.TestPiece;

class PiecesTest {
  @TempDir Path folder;

  @Test
  void aPieceComesBackAsItWasSaved() {
    Path file = folder.resolve("class.walebook");
    TestPiece one;
    TestPiece three;
    try (Classroom room = Classroom.in(file)) {
      one = room.piece(SeamEnd.HELD, 152);
      three =
          room.piece(
              room.second.id(),
              1.5,
              List.of(
                  new PullReading(1, SeamEnd.HELD, 148),
                  new PullReading(2, SeamEnd.GAVE, 151),
                  new PullReading(3, SeamEnd.GAVE, 149)),
              List.of(Classroom.fault("wavy-seam", 2), Classroom.fault("skipped-stitches", 1)),
              new Parent(one.id(), "dial-width"));
      room.book.pieces().add(one);
      room.book.pieces().add(three);
    }
    try (Book again = new SqliteFiles().open(file, Classroom.CLOCK).value()) {
      assertThat(again.pieces().find(one.id())).isEqualTo(one);
      assertThat(again.pieces().byCode(three.code())).isEqualTo(three);
      assertThat(again.pieces().chainOf(three.id())).containsExactly(one, three);
      assertThat(again.pieces().list(PieceFilter.ALL)).containsExactly(three, one);
      assertThat(again.machines().all()).hasSize(1);
      assertThat(again.machines().all().get(0).dials()).hasSize(1);
    }
  }

  /** Words of a row are fetched as one text; what was typed may hold the signs between them. */
  @Test
  void typedSignsBetweenWordsMixNothingUp() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      List<TestPiece> pieces =
          Stream.of("", "a", "a\u001eb", "a\u001ec", "a\u001fb", "a\u001fc", "'", "''", "\u001e")
              .map(thread -> SewnOtherwise.threaded(room.piece(SeamEnd.GAVE, 140), thread))
              .toList();
      pieces.forEach(room.book.pieces()::add);
      assertThat(room.book.pieces().list(PieceFilter.ALL))
          .containsExactlyInAnyOrderElementsOf(pieces);
      PieceOrder order = room.book.pieces().inOrder(ResultFilter.ALL, Set.of(), Set.of(), false);
      assertThat(order.some(0, order.size())).containsExactlyInAnyOrderElementsOf(pieces);
    }
  }

  @Test
  void theShortestLengthAtWhichItGaveSpeaksForThePiece() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      TestPiece piece =
          room.piece(
              room.first.id(),
              2,
              List.of(
                  new PullReading(1, SeamEnd.HELD, 140),
                  new PullReading(2, SeamEnd.GAVE, 155),
                  new PullReading(3, SeamEnd.GAVE, 149)),
              List.of(),
              null);
      assertThat(piece.measure().counting()).isEqualTo(new PullReading(3, SeamEnd.GAVE, 149));
    }
  }

  @Test
  void searchLooksAtCodeStudentClothStitchFaultAndRemark() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      TestPiece wavy =
          room.piece(
              room.second.id(), 2, List.of(), List.of(Classroom.fault("wavy-seam", 2)), null);
      room.book.pieces().add(room.piece(SeamEnd.GAVE, 140));
      room.book.pieces().add(wavy);
      assertThat(found(room, "quay jersey")).containsExactly(wavy);
      assertThat(found(room, "WAVY")).containsExactly(wavy);
      assertThat(found(room, wavy.code().substring(0, 3) + "-" + wavy.code().substring(3)))
          .containsExactly(wavy);
      assertThat(found(room, "slow feed")).hasSize(2);
      assertThat(found(room, "velour")).isEmpty();
      assertThat(room.book.pieces().count(PieceFilter.ALL.with("zigzag"))).isEqualTo(2);
    }
  }

  private static List<TestPiece> found(Classroom room, String words) {
    return room.book.pieces().list(PieceFilter.ALL.with(words));
  }

  @Test
  void aLateSaveDoesNotOverwriteAnEarlierOne() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      room.book.pieces().add(piece);
      TestPiece kept = seen(piece, PieceOutcome.KEEP);
      room.book.pieces().update(kept);
      assertThatThrownBy(() -> room.book.pieces().update(seen(piece, PieceOutcome.CHANGE)))
          .isInstanceOf(StaleRow.class);
      assertThat(room.book.pieces().find(piece.id())).isEqualTo(kept);
    }
  }

  private static TestPiece seen(TestPiece piece, PieceOutcome outcome) {
    return piece
        .with(new Seen(5, outcome, List.of(), "flat"))
        .with(piece.stamp().next(Classroom.NOW.plusSeconds(60)));
  }

  @Test
  void severalStepsAreSavedTogetherOrNotAtAll() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      assertThatThrownBy(
              () ->
                  room.book.inOneStep(
                      () -> {
                        room.book.pieces().add(piece);
                        assertThat(room.book.pieces().find(piece.id())).isNotNull();
                        throw new IllegalStateException("half-way");
                      }))
          .hasMessage("half-way");
      assertThat(room.book.pieces().count(PieceFilter.ALL)).isZero();
    }
  }

  @Test
  void onlyPulledPiecesOfTheClothGrainAndStitchAreFound() {
    try (Classroom room = Classroom.in(folder.resolve("pulled.walebook"))) {
      TestPiece pulled = room.piece(SeamEnd.GAVE, 150);
      TestPiece not = room.piece(room.first.id(), 2, List.of(), List.of(), null);
      room.book.pieces().add(pulled);
      room.book.pieces().add(not);
      Grain grain = pulled.cloth().grain();
      Grain other = grain == Grain.WALE ? Grain.COURSE : Grain.WALE;
      String stitch = pulled.setting().stitchType();
      UUID cloth = pulled.cloth().clothId();
      Pieces pieces = room.book.pieces();
      assertThat(pieces.pulled(cloth, grain, Set.of(stitch, "000"))).containsExactly(pulled);
      assertThat(pieces.pulled(cloth, other, Set.of(stitch))).isEmpty();
      assertThat(pieces.pulled(cloth, grain, Set.of("000"))).isEmpty();
      assertThat(pieces.pulled(cloth, grain, Set.of())).isEmpty();
      assertThat(pieces.pulled(Ids.next(), grain, Set.of(stitch))).isEmpty();
    }
  }

  /** Nothing in the file forbids a piece to follow one that follows it, as after a rescue. */
  @Test
  @Timeout(20)
  void attemptsThatFollowEachOtherInACircleComeOnceEach() {
    try (Classroom room = Classroom.in(folder.resolve("circle.walebook"))) {
      TestPiece first = room.piece(SeamEnd.GAVE, 130);
      room.book.pieces().add(first);
      TestPiece second =
          room.piece(
              room.first.id(), 3, List.of(), List.of(), Parent.of(first.id(), List.of("x"), ""));
      room.book.pieces().add(second);
      TestPiece turned =
          new TestPiece(
              first.id(),
              first.code(),
              first.whose(),
              first.cloth(),
              first.setting(),
              first.measure(),
              first.seen(),
              Parent.of(second.id(), List.of("x"), ""),
              first.stamp().next(Classroom.CLOCK.instant()));
      room.book.pieces().update(turned);
      assertThat(room.book.pieces().chainOf(second.id()))
          .extracting(TestPiece::id)
          .containsExactlyInAnyOrder(first.id(), second.id());
    }
  }

  /** A log left beside the file would be another's once a copy is put in the file's place. */
  @Test
  @Timeout(20)
  void aReadThatOutlastsTheBookLeavesNothingOpen() throws Exception {
    Path file = folder.resolve("outlasted.walebook");
    CountDownLatch reading = new CountDownLatch(1);
    CountDownLatch goOn = new CountDownLatch(1);
    Classroom room = Classroom.in(file);
    room.book.pieces().add(room.piece(SeamEnd.GAVE, 130));
    Thread late =
        new Thread(
            () ->
                room.book
                    .results()
                    .each(
                        ResultFilter.ALL,
                        (line, done) -> {
                          reading.countDown();
                          try {
                            goOn.await();
                          } catch (InterruptedException e) {
                            Thread.currentThread().interrupt();
                          }
                        }));
    late.start();
    reading.await();
    room.close();
    goOn.countDown();
    late.join();
    assertThat(folder.resolve("outlasted.walebook-wal")).doesNotExist();
    assertThat(folder.resolve("outlasted.walebook-shm")).doesNotExist();
    assertThatThrownBy(() -> room.book.pieces().count(PieceFilter.ALL))
        .isInstanceOf(RuntimeException.class);
  }
}
