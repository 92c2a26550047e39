package walebook.book;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import walebook.book.open.SqliteFiles;
import walebook.record.By;
import walebook.record.Change;
import walebook.record.Cloth;
import walebook.record.Mark;
import walebook.record.MarkedValue;
import walebook.record.Note;
import walebook.record.PhotoInfo;
import walebook.record.SeamEnd;
import walebook.record.Seen;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.record.Tier;

/** Back and forth through everything a person changes, also after the book was shut. */
class UndoTest {
  private static final By TUTOR = By.named("Tutor");

  @TempDir Path folder;

  private static void undo(Book book) {
    book.history().undo(requireNonNull(book.history().lastDone(null)), TUTOR);
  }

  private static void redo(Book book) {
    book.history().redo(requireNonNull(book.history().lastUndone(null)), TUTOR);
  }

  static TestPiece graded(TestPiece piece, int grade) {
    return piece
        .with(new Seen(grade, null, List.of(Classroom.fault("wavy", grade % 4)), "again"))
        .with(piece.stamp().next(Classroom.NOW.plusSeconds(grade)));
  }

  @Test
  void aSavedPieceGoesAndComesBackAfterTheBookWasShut() {
    Path file = folder.resolve("a.walebook");
    TestPiece piece;
    try (Classroom room = Classroom.in(file)) {
      room.book.history().madeBy(new By("Ada Pier", room.first.id(), null));
      piece = room.piece(SeamEnd.GAVE, 140);
      room.book.pieces().add(piece);
    }
    try (Book book = new SqliteFiles().open(file, Classroom.CLOCK).value()) {
      Change added = book.history().of("test_piece", piece.id()).get(0);
      assertThat(added.by().name()).isEqualTo("Ada Pier");
      undo(book);
      assertThat(book.pieces().find(piece.id())).isNull();
    }
    try (Book book = new SqliteFiles().open(file, Classroom.CLOCK).value()) {
      redo(book);
      TestPiece back = requireNonNull(book.pieces().find(piece.id()));
      assertThat(back.setting()).isEqualTo(piece.setting());
      assertThat(back.measure()).isEqualTo(piece.measure());
      assertThat(back.stamp().version()).isGreaterThan(piece.stamp().version());
      assertThat(book.history().lastUndone(null)).isNull();
    }
  }

  @Test
  void whatABookIsHandedOverWithIsNotTakenBack() {
    try (Classroom room = Classroom.in(folder.resolve("g.walebook"))) {
      room.book.history().beginHere();
      assertThat(room.book.history().lastDone(null)).isNull();
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      room.book.pieces().add(piece);
      undo(room.book);
      assertThat(room.book.pieces().find(piece.id())).isNull();
      assertThat(room.book.history().lastDone(null)).isNull();
    }
  }

  @Test
  void somethingNewEndsRedo() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      room.book.pieces().add(room.piece(SeamEnd.GAVE, 140));
      undo(room.book);
      assertThat(room.book.history().lastUndone(null)).isNotNull();
      room.book.pieces().add(room.piece(SeamEnd.HELD, 150));
      assertThat(room.book.history().lastUndone(null)).isNull();
    }
  }

  @Test
  void whatWasChangedSinceStaysAndIsNamed() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      room.book.pieces().add(piece);
      UUID adding = room.book.history().of("test_piece", piece.id()).get(0).stepId();
      room.book.pieces().update(graded(piece, 2));
      assertThatThrownBy(() -> room.book.history().undo(adding, TUTOR))
          .isInstanceOfSatisfying(
              StaleRow.class, stale -> assertThat(stale.id()).isEqualTo(piece.id()));
      assertThat(room.book.pieces().find(piece.id())).isEqualTo(graded(piece, 2));
    }
  }

  @Test
  void whatCarriesSomethingNewerStays() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      room.book.pieces().add(piece);
      UUID adding = room.book.history().of("test_piece", piece.id()).get(0).stepId();
      PhotoInfo photo = Classroom.photo(piece.id());
      room.book.photos().add(photo, new byte[] {1, 2, 3});
      assertThatThrownBy(() -> room.book.history().undo(adding, TUTOR))
          .isInstanceOfSatisfying(
              StaleRow.class, stale -> assertThat(stale.id()).isEqualTo(photo.id()));
      undo(room.book);
      assertThat(room.book.photos().ofPiece(piece.id())).isEmpty();
      redo(room.book);
      assertThat(room.book.photos().image(photo.id())).containsExactly(1, 2, 3);
      assertThat(room.book.photos().ofPiece(piece.id()).get(0).thumbnail()).containsExactly(9, 8);
    }
  }

  @Test
  void aStudentIsOfferedTheirOwnStepsOnly() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      room.book.history().madeBy(new By("Ada Pier", room.first.id(), null));
      TestPiece piece = room.piece(SeamEnd.GAVE, 140);
      room.book.pieces().add(piece);
      room.book.history().madeBy(new By("Bo Quay", room.second.id(), null));
      room.book.pieces().add(room.piece(SeamEnd.HELD, 150));
      UUID mine = room.book.history().lastDone(room.first.id());
      assertThat(mine).isEqualTo(room.book.history().of("test_piece", piece.id()).get(0).stepId());
      assertThat(room.book.history().lastDone(null)).isNotEqualTo(mine);
    }
  }

  @Test
  void stepsInOneGoAreOneStepAndAFailedGoIsNone() {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      int before = room.book.history().latest(1000).size();
      assertThatThrownBy(
              () ->
                  room.book.inOneStep(
                      () -> {
                        room.book.pieces().add(room.piece(SeamEnd.GAVE, 140));
                        throw new IllegalStateException("half-way");
                      }))
          .hasMessage("half-way");
      assertThat(room.book.history().latest(1000)).hasSize(before);
      room.book.inOneStep(
          () -> {
            room.book.pieces().add(room.piece(SeamEnd.GAVE, 140));
            room.book.pieces().add(room.piece(SeamEnd.GAVE, 141));
            return true;
          });
      assertThat(room.book.history().latest(1000)).hasSize(before + 2);
      undo(room.book);
      assertThat(room.book.pieces().list(PieceFilter.ALL)).isEmpty();
    }
  }

  /** Random changes of every kind; all taken back is the beginning, all done again is the end. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 5, 6, 7})
  void allUndoneIsTheBeginningAndAllRedoneIsTheEnd(long seed) throws Exception {
    Path file = folder.resolve("p" + seed + ".walebook");
    Random random = new Random(seed);
    try (Classroom room = Classroom.in(file)) {
      Map<String, List<String>> beginning = BookContent.of(room.book);
      UUID last = requireNonNull(room.book.history().lastDone(null));
      RandomChanges changes = new RandomChanges(room, random);
      int made = 0;
      while (made < 30) {
        made += changes.one() ? 1 : 0;
      }
      Map<String, List<String>> end = BookContent.of(room.book);
      assertThat(end).isNotEqualTo(beginning);
      int undone = 0;
      while (!last.equals(room.book.history().lastDone(null))) {
        undo(room.book);
        undone++;
      }
      assertThat(BookContent.of(room.book)).isEqualTo(beginning);
      int redone = 0;
      while (room.book.history().lastUndone(null) != null) {
        redo(room.book);
        redone++;
      }
      assertThat(redone).isEqualTo(undone);
      assertThat(BookContent.of(room.book)).isEqualTo(end);
      for (int i = 0; i < undone / 2; i++) {
        undo(room.book);
      }
      for (int i = 0; i < undone / 2; i++) {
        redo(room.book);
      }
      assertThat(BookContent.of(room.book)).isEqualTo(end);
    }
  }

  /** One random change after another, of things that are there. */
  private static final class RandomChanges {
    private final Classroom room;
    private final Random random;
    private final List<UUID> pieces = new ArrayList<>();

    RandomChanges(Classroom room, Random random) {
      this.room = room;
      this.random = random;
    }

    private TestPiece any() {
      pieces.removeIf(id -> room.book.pieces().find(id) == null);
      return pieces.isEmpty()
          ? addPiece()
          : requireNonNull(room.book.pieces().find(pieces.get(random.nextInt(pieces.size()))));
    }

    private TestPiece addPiece() {
      TestPiece piece = room.piece(SeamEnd.GAVE, 110 + random.nextInt(80));
      room.book.pieces().add(piece);
      pieces.add(piece.id());
      return piece;
    }

    boolean one() {
      Book book = room.book;
      switch (random.nextInt(10)) {
        case 0, 1 -> addPiece();
        case 2 -> book.pieces().update(graded(any(), 1 + random.nextInt(5)));
        case 3 ->
            book.photos().add(Classroom.photo(any().id()), new byte[] {(byte) random.nextInt(100)});
        case 4 ->
            book.notes()
                .add(
                    new Note(Ids.next(), Note.About.PIECE, any().id(), "Bo", "n", Classroom.FRESH));
        case 5 ->
            book.marks()
                .put(MarkedValue.GRADE, any().id(), Mark.SET_ASIDE, "wet", TUTOR, Ids.next());
        case 6 -> book.bin().put("test_piece", any().id(), TUTOR);
        case 7 -> {
          List<walebook.record.Binned> all = book.bin().all();
          if (all.isEmpty()) {
            return false;
          }
          book.bin().restore(all.get(random.nextInt(all.size())).id(), TUTOR);
        }
        case 8 -> {
          Student student = requireNonNull(book.students().find(room.first.id()));
          book.students()
              .update(
                  new Student(
                      student.id(),
                      "Ada " + random.nextInt(1000),
                      student.alias(),
                      Tier.CORE,
                      student.stamp().next(Classroom.NOW)));
        }
        default -> {
          Cloth cloth = room.cloth;
          book.cloths()
              .add(
                  new Cloth(
                      Ids.next(),
                      "Cloth " + random.nextInt(1000),
                      cloth.kind(),
                      cloth.fibre(),
                      null,
                      null,
                      null,
                      null,
                      cloth.edge(),
                      "",
                      false,
                      Classroom.FRESH));
        }
      }
      return true;
    }
  }
}
