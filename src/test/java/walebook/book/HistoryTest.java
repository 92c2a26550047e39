package walebook.book;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.record.By;
import walebook.record.Change;
import walebook.record.ClothReading;
import walebook.record.CutEdge;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.How;
import walebook.record.Mark;
import walebook.record.MarkedValue;
import walebook.record.Pull;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.Seen;
import walebook.record.TestPiece;
import walebook.record.ValueMark;

/**
 * Nothing typed is lost: what was there stands in the history, and everything can be taken back.
 */
class HistoryTest {
  private static final By TUTOR = By.named("Tutor");

  @TempDir Path folder;

  private static TestPiece piece(Classroom room) {
    return room.piece(
        room.first.id(),
        2.5,
        List.of(new PullReading(1, SeamEnd.GAVE, 140), new PullReading(2, SeamEnd.HELD, 150)),
        List.of(Classroom.fault("wavy", 2)),
        null);
  }

  private static TestPiece changed(TestPiece piece) {
    return piece
        .with(new Seen(5, null, List.of(Classroom.fault("skipped", 1)), "flat"))
        .with(piece.stamp().next(Classroom.NOW.plusSeconds(60)));
  }

  /** The same but for its stamp: taking back is a change, too. */
  private static TestPiece as(TestPiece piece, TestPiece stamped) {
    return piece.with(stamped.stamp());
  }

  @Test
  void anUpdateKeepsWhatWasAndIsTakenBackWithPullsAndFaults() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      TestPiece before = piece(room);
      room.book.pieces().add(before);
      TestPiece after = changed(before);
      UUID step = Ids.next();
      room.book.pieces().update(after, TUTOR, "piece.correct", step);
      assertThat(room.book.pieces().find(before.id())).isEqualTo(after);
      Change change = room.book.history().of("test_piece", before.id()).get(0);
      assertThat(change.by().name()).isEqualTo("Tutor");
      assertThat(change.act()).isEqualTo("piece.correct");
      assertThat(change.before()).contains("slow feed").contains("wavy").contains("140.0");
      assertThat(change.after()).contains("flat").contains("skipped");
      room.book.history().undo(step, TUTOR);
      TestPiece back = requireNonNull(room.book.pieces().find(before.id()));
      assertThat(back).isEqualTo(as(before, back));
      assertThat(back.stamp().version()).isEqualTo(3);
      assertThat(requireNonNull(room.book.history().find(change.id())).undone()).isTrue();
      assertThat(room.book.history().of("test_piece", before.id()))
          .extracting(Change::act)
          .containsExactly("undo", "piece.correct", "add");
    }
  }

  @Test
  void takingBackCanBeTakenBack() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      TestPiece before = piece(room);
      room.book.pieces().add(before);
      UUID step = Ids.next();
      room.book.pieces().update(changed(before), TUTOR, "piece.correct", step);
      room.book.history().undo(step, TUTOR);
      UUID undoing = room.book.history().latest(1).get(0).stepId();
      room.book.history().undo(undoing, TUTOR);
      TestPiece again = requireNonNull(room.book.pieces().find(before.id()));
      assertThat(again.seen()).isEqualTo(changed(before).seen());
      assertThat(again.measure()).isEqualTo(before.measure());
    }
  }

  @Test
  void whatWasChangedSinceOrTakenBackIsNotTakenBackAgain() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      TestPiece before = piece(room);
      room.book.pieces().add(before);
      UUID first = Ids.next();
      TestPiece after = changed(before);
      room.book.pieces().update(after, TUTOR, "piece.correct", first);
      UUID second = Ids.next();
      room.book.pieces().update(changed(after), TUTOR, "piece.correct", second);
      assertThatThrownBy(() -> room.book.history().undo(first, TUTOR)).isInstanceOf(StaleRow.class);
      room.book.history().undo(second, TUTOR);
      assertThatThrownBy(() -> room.book.history().undo(second, TUTOR))
          .isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> room.book.history().undo(Ids.next(), TUTOR))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Test
  void aRefusedUpdateLeavesNoTrace() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      TestPiece before = piece(room);
      room.book.pieces().add(before);
      room.book.pieces().update(changed(before));
      int changes = room.book.history().latest(100).size();
      assertThatThrownBy(() -> room.book.pieces().update(changed(before)))
          .isInstanceOf(StaleRow.class);
      assertThatThrownBy(() -> room.book.pieces().update(changed(piece(room))))
          .isInstanceOf(StaleRow.class);
      assertThat(room.book.history().latest(100)).hasSize(changes);
    }
  }

  @Test
  void aReadingIsPutRightAndBack() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      ClothReading wrong = reading(room, 510, 1);
      room.book.clothLog().add(wrong);
      ClothReading right = reading(room, 151, 2);
      right =
          new ClothReading(
              wrong.id(),
              right.clothId(),
              null,
              null,
              right.measuredBy(),
              right.grain(),
              100,
              151,
              null,
              right.how(),
              right.edge(),
              1,
              right.measuredOn(),
              "",
              wrong.stamp().next(Classroom.NOW));
      UUID step = Ids.next();
      room.book.clothLog().update(right, TUTOR, "reading.correct", step);
      assertThat(room.book.clothLog().find(wrong.id())).isEqualTo(right);
      assertThat(room.book.history().step(step).get(0).before()).contains("510.0");
      room.book.history().undo(step, TUTOR);
      assertThat(requireNonNull(room.book.clothLog().find(wrong.id())).stretchedMm())
          .isEqualTo(510);
    }
  }

  private static ClothReading reading(Classroom room, double stretched, int cycle) {
    return new ClothReading(
        Ids.next(),
        room.cloth.id(),
        null,
        null,
        room.first.id(),
        Grain.COURSE,
        100,
        stretched,
        null,
        new How(Fold.FOLDED, Pull.FIRM, null, null, null),
        CutEdge.INSIDE,
        cycle,
        LocalDate.of(2026, 10, 5),
        "",
        Classroom.FRESH);
  }

  @Test
  void aMarkReplacesTheOneBeforeAndIsTakenBack() {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      TestPiece piece = piece(room);
      room.book.pieces().add(piece);
      Marks marks = room.book.marks();
      marks.put(MarkedValue.EDGE_CHANGE, piece.id(), Mark.KEPT, "", TUTOR, Ids.next());
      UUID step = Ids.next();
      ValueMark aside =
          marks.put(MarkedValue.EDGE_CHANGE, piece.id(), Mark.SET_ASIDE, "wet", TUTOR, step);
      assertThat(marks.all()).containsExactly(aside);
      assertThat(marks.setAside(MarkedValue.EDGE_CHANGE)).containsExactly(piece.id());
      assertThat(marks.setAside(MarkedValue.GRADE)).isEmpty();
      room.book.history().undo(step, TUTOR);
      assertThat(requireNonNull(marks.find(MarkedValue.EDGE_CHANGE, piece.id())).mark())
          .isEqualTo(Mark.KEPT);
      UUID first = room.book.history().of("value_mark", aside.id()).get(2).stepId();
      room.book.history().undo(first, TUTOR);
      assertThat(marks.all()).isEmpty();
    }
  }

  @Test
  void theFirstMarkTakenBackIsGone() {
    try (Classroom room = Classroom.in(folder.resolve("g.walebook"))) {
      ClothReading reading = reading(room, 150, 1);
      room.book.clothLog().add(reading);
      UUID step = Ids.next();
      Marks marks = room.book.marks();
      marks.put(MarkedValue.CLOTH_STRETCH, reading.id(), Mark.SET_ASIDE, "slipped", TUTOR, step);
      assertThat(marks.setAside(MarkedValue.CLOTH_STRETCH)).containsExactly(reading.id());
      room.book.history().undo(step, TUTOR);
      assertThat(marks.find(MarkedValue.CLOTH_STRETCH, reading.id())).isNull();
    }
  }
}
