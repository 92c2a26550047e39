package walebook.book;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.record.By;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.CriterionTag;
import walebook.record.Feedback;
import walebook.record.GarmentSewing;
import walebook.record.GarmentSheet;
import walebook.record.Grain;
import walebook.record.Help;
import walebook.record.MachineKind;
import walebook.record.Mark;
import walebook.record.MarkedValue;
import walebook.record.Marking;
import walebook.record.Note;
import walebook.record.Parent;
import walebook.record.PatternAsks;
import walebook.record.PhotoInfo;
import walebook.record.PieceCheck;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.StitchChoice;
import walebook.record.TestPiece;

/** What lies in the bin is met by nobody, and comes back as it was. */
class BinTest {
  private static final By TUTOR = By.named("Tutor");

  @TempDir Path folder;

  private static TestPiece piece(Classroom room) {
    List<PullReading> pulls =
        List.of(new PullReading(1, SeamEnd.GAVE, 140), new PullReading(2, SeamEnd.GAVE, 150));
    TestPiece piece =
        room.piece(room.first.id(), 2.5, pulls, List.of(Classroom.fault("wavy", 2)), null);
    room.book.pieces().add(piece);
    return piece;
  }

  @Test
  void aPieceGoesWithAllThatHangsOnItAndComesBackWhole() throws Exception {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      Book book = room.book;
      TestPiece piece = piece(room);
      PhotoInfo photo = Classroom.photo(piece.id());
      book.photos().add(photo, new byte[] {1, 2, 3});
      book.notes()
          .add(
              new Note(
                  Ids.next(), Note.About.PIECE, piece.id(), "Bo", "as if wet", Classroom.FRESH));
      book.marks().put(MarkedValue.GRADE, piece.id(), Mark.SET_ASIDE, "wet", TUTOR, Ids.next());
      Criterion criterion = assessed(room, piece);
      TestPiece next =
          room.piece(room.first.id(), 3, List.of(), List.of(), new Parent(piece.id(), "width"));
      book.pieces().add(next);
      Map<String, List<String>> before = BookContent.of(book);

      book.bin().put("test_piece", piece.id(), TUTOR);
      assertThat(book.pieces().byCode(piece.code())).isNull();
      assertThat(book.pieces().count(PieceFilter.ALL)).isEqualTo(1);
      assertThat(book.photos().ofPiece(piece.id())).isEmpty();
      assertThat(book.marks().all()).isEmpty();
      assertThat(book.assessments().checksOf(room.schoolClass.id())).isEmpty();
      assertThat(book.assessments().feedbackOn(piece.id())).isEmpty();
      assertThat(book.assessments().tagsOf(room.schoolClass.id())).isEmpty();
      assertThat(book.assessments().criteriaOf(room.schoolClass.id())).containsExactly(criterion);
      assertThat(requireNonNull(book.pieces().find(next.id())).parent()).isNull();
      assertThat(book.bin().all()).hasSize(1);
      assertThat(book.bin().all().get(0).who()).isEqualTo("Tutor");

      book.bin().restore(book.bin().all().get(0).id(), TUTOR);
      assertThat(BookContent.of(book)).isEqualTo(before);
      assertThat(book.photos().image(photo.id())).containsExactly(1, 2, 3);
      assertThat(book.bin().all()).isEmpty();
      book.history().undo(requireNonNull(book.history().lastDone(null)), TUTOR);
      assertThat(book.bin().all()).hasSize(1);
      book.history().undo(requireNonNull(book.history().lastDone(null)), TUTOR);
      assertThat(BookContent.of(book)).isEqualTo(before);
    }
  }

  /** Tags the piece, has it looked over by both, and says something of it. */
  private static Criterion assessed(Classroom room, TestPiece piece) {
    Assessments all = room.book.assessments();
    Criterion criterion = room.criterion("1.1");
    all.keep(criterion);
    all.tag(CriterionTag.onPiece(criterion.id(), piece.id()));
    LocalDate day = LocalDate.of(2026, 10, 5);
    for (CheckedBy by : CheckedBy.values()) {
      all.keep(
          new PieceCheck(
              Ids.next(),
              piece.id(),
              by,
              Map.of(Marking.REASONING, 3),
              Help.PROMPTED,
              day,
              Classroom.FRESH));
    }
    all.add(new Feedback(Ids.next(), piece.id(), day, "Well told.", "M", Classroom.FRESH));
    return criterion;
  }

  /** Its criterion went meanwhile: the piece comes back without that tag, all else with it. */
  @Test
  void aPieceComesBackThoughACriterionOfItsIsNoMore() {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      TestPiece piece = piece(room);
      Criterion criterion = assessed(room, piece);
      room.book.bin().put("test_piece", piece.id(), TUTOR);
      room.book.assessments().remove(criterion.id());
      room.book.bin().restore(room.book.bin().all().get(0).id(), TUTOR);
      assertThat(room.book.pieces().find(piece.id())).isEqualTo(piece);
      assertThat(room.book.assessments().checksOf(room.schoolClass.id())).hasSize(2);
      assertThat(room.book.assessments().feedbackOn(piece.id())).hasSize(1);
      assertThat(room.book.assessments().tagsOf(room.schoolClass.id())).isEmpty();
    }
  }

  @Test
  void aClothInUseStaysAndAnUnusedOneGoesWithItsReadings() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      TestPiece piece = piece(room);
      assertThatThrownBy(() -> room.book.bin().put("cloth", room.cloth.id(), TUTOR))
          .isInstanceOfSatisfying(
              StillUsed.class, used -> assertThat(used.id()).isEqualTo(piece.id()));
      room.book.bin().put("test_piece", piece.id(), TUTOR);
      room.book.bin().put("cloth", room.cloth.id(), TUTOR);
      assertThat(room.book.cloths().all()).isEmpty();
      UUID pieceItem = room.book.bin().all().get(1).id();
      assertThatThrownBy(() -> room.book.bin().restore(pieceItem, TUTOR))
          .isInstanceOf(BookTrouble.class);
      assertThat(room.book.bin().all()).hasSize(2);
      room.book.bin().restore(room.book.bin().all().get(0).id(), TUTOR);
      room.book.bin().restore(pieceItem, TUTOR);
      assertThat(room.book.pieces().find(piece.id())).isNotNull();
    }
  }

  @Test
  void aSheetKeepsItsBodyInTheBinAndOutOfTheHistory() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      GarmentSheet sheet =
          new GarmentSheet(
              Ids.next(),
              room.first.id(),
              "Top",
              "top",
              room.cloth.id(),
              Grain.COURSE,
              "day",
              new PatternAsks(null, null, null),
              new GarmentSewing(
                  new StitchChoice(MachineKind.SEWING, "304", null, null), null, false, false),
              List.of(),
              List.of(),
              "",
              Classroom.FRESH);
      room.book.garments().add(sheet);
      room.book.garments().keepBody(sheet.id(), Map.of("bust", 912.5));
      room.book.bin().put("garment_sheet", sheet.id(), TUTOR);
      assertThat(room.book.garments().all()).isEmpty();
      assertThat(room.book.history().of("garment_sheet", sheet.id()).toString())
          .doesNotContain("912.5");
      room.book.history().undo(requireNonNull(room.book.history().lastDone(null)), TUTOR);
      assertThat(room.book.garments().bodyOf(sheet.id())).containsEntry("bust", 912.5);
    }
  }

  @Test
  void whatWasEmptiedIsGoneAndUndoGoesOnBeforeIt() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      TestPiece other = room.piece(SeamEnd.GAVE, 120);
      room.book.pieces().add(other);
      TestPiece piece = piece(room);
      room.book.photos().add(Classroom.photo(piece.id()), new byte[] {1, 2, 3});
      UUID step = room.book.bin().put("test_piece", piece.id(), TUTOR);
      assertThat(room.book.bin().empty(TUTOR)).isEqualTo(1);
      assertThat(room.book.bin().all()).isEmpty();
      assertThatThrownBy(() -> room.book.history().undo(step, TUTOR))
          .isInstanceOf(IllegalArgumentException.class);
      assertThat(room.book.history().lastDone(null)).isNotEqualTo(step);
    }
  }

  @Test
  void whatIsNotThereOrNeverGoesIsRefused() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      assertThatThrownBy(() -> room.book.bin().put("test_piece", Ids.next(), TUTOR))
          .isInstanceOf(StaleRow.class);
      assertThatThrownBy(() -> room.book.bin().put("student", room.first.id(), TUTOR))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }
}
