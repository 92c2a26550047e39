package walebook.act.gather;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.history.PieceTimeline;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.book.PieceFilter;
import walebook.book.gather.Choice;
import walebook.book.gather.Conflict;
import walebook.record.By;
import walebook.record.Change;
import walebook.record.Criterion;
import walebook.record.CriterionTag;
import walebook.record.Feedback;
import walebook.record.PhotoInfo;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.Seen;
import walebook.record.Stamp;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.record.Tier;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** What gathering, the way back, the bin and assessment have to know of each other. */
class GatheredHistoryTest {
  @TempDir Path folder;
  private Path tutor;
  private Classroom room;

  @BeforeEach
  void makeTheTutorsBook() {
    tutor = folder.resolve("tutor.walebook");
    room = Classroom.in(tutor);
    room.close();
  }

  private By ada() {
    return new By("Ada Pier", room.first.id(), null);
  }

  private static TestPiece graded(TestPiece piece, int grade, Instant at) {
    return piece
        .with(new Seen(grade, null, List.of(), "looked at again"))
        .with(piece.stamp().next(at));
  }

  /** Saves a piece with a photo, and gives the photo's key. */
  private UUID photographed(TestPiece piece) {
    PhotoInfo photo = Classroom.photo(piece.id());
    Hall.work(
        tutor,
        book -> {
          book.pieces().add(piece);
          book.photos().add(photo, new byte[] {1, 2, 3});
        });
    return photo.id();
  }

  private static void decide(Path file, Choice choice) {
    Hall.work(
        file,
        book -> {
          List<Conflict> open = book.gathering().conflicts();
          assertThat(open).hasSize(1);
          assertThat(book.gathering().decide(open.get(0).id(), choice, Hall.TUTOR).problems())
              .isEmpty();
          assertThat(book.gathering().conflicts()).isEmpty();
        });
  }

  @Test
  void undoAfterGatheringTakesBackWhatWasDoneHereAndNothingThatStudentsDid() throws Exception {
    Path student = Hall.copy(tutor, "ada.walebook");
    TestPiece kept = room.piece(SeamEnd.GAVE, 140);
    Hall.remark(tutor, "the tutor's", 0);
    Hall.work(
        student,
        book -> {
          // Later than anything here: the newest steps by far are the student's.
          book.history().madeBy(ada());
          book.pieces().add(kept);
          book.pieces().update(graded(kept, 2, Classroom.NOW.plusSeconds(60)));
          book.pieces().add(room.piece(SeamEnd.HELD, 150));
          book.history().undo(requireNonNull(book.history().lastDone(null)), ada());
        });
    Hall.gather(tutor, student);
    Hall.work(
        tutor,
        book -> {
          assertThat(book.history().lastDone(room.first.id())).as("at Ada's name").isNull();
          UUID mine = requireNonNull(book.history().lastDone(null));
          assertThat(book.history().step(mine)).extracting(Change::entity).containsExactly("cloth");
          book.history().undo(mine, Hall.TUTOR);
          assertThat(book.cloths().all().get(0).remark()).isEmpty();
          assertThat(requireNonNull(book.pieces().find(kept.id())).seen().grade()).isEqualTo(2);
          assertThat(book.history().lastUndone(null)).isEqualTo(mine);
        });
    Hall.work(
        tutor,
        book -> {
          book.history().redo(requireNonNull(book.history().lastUndone(null)), Hall.TUTOR);
          assertThat(book.cloths().all().get(0).remark()).isEqualTo("the tutor's");
          assertThat(book.pieces().count(PieceFilter.ALL)).isEqualTo(1);
        });
  }

  @Test
  void whatGatheringOrAPersonsDecisionChangedIsNotTheNextToBeTakenBack() throws Exception {
    Path student = Hall.copy(tutor, "ada.walebook");
    Path other = Hall.copy(tutor, "bo.walebook");
    UUID before = Hall.at(tutor, book -> requireNonNull(book.history().lastDone(null)));
    Hall.remark(student, "Ada's", 0);
    Hall.remark(other, "Bo's", 1);
    assertThat(Hall.gather(tutor, student).books().get(0).taken()).isEqualTo(1);
    assertThat(Hall.gather(tutor, other).books().get(0).conflicts()).isEqualTo(1);
    decide(tutor, Choice.THEIRS);
    assertThat(Hall.remarkOf(tutor)).isEqualTo("Bo's");
    Hall.work(
        tutor,
        book -> {
          assertThat(book.history().lastDone(null)).isEqualTo(before);
          assertThat(book.history().of("cloth", room.cloth.id()))
              .extracting(Change::act)
              .contains("gather.decide", "gather");
        });
  }

  @Test
  void aGatheredPieceTellsWhoSavedItAndWhen() throws Exception {
    Path student = Hall.copy(tutor, "ada.walebook");
    TestPiece piece = room.piece(SeamEnd.GAVE, 140);
    Instant corrected = Classroom.NOW.plusSeconds(3600);
    try (Book book = Hall.FILES.open(student, Classroom.CLOCK).value()) {
      book.history().madeBy(ada());
      book.pieces().add(piece);
    }
    Clock later = Clock.offset(Classroom.CLOCK, Duration.ofHours(1));
    try (Book book = Hall.FILES.open(student, later).value()) {
      book.history().madeBy(new By("Bo Quay", room.second.id(), null));
      book.pieces().update(graded(piece, 1, corrected));
    }
    Clock last = Clock.offset(Classroom.CLOCK, Duration.ofHours(2));
    try (Book book = Hall.FILES.open(student, last).value()) {
      book.history().madeBy(Hall.TUTOR);
      book.assessments()
          .add(
              new Feedback(
                  Ids.next(),
                  piece.id(),
                  LocalDate.of(2026, 10, 5),
                  "Well told.",
                  "",
                  Stamp.fresh(last.instant())));
    }
    Hall.gather(tutor, student);
    Hall.work(
        tutor,
        book -> {
          List<PieceTimeline.Event> events =
              new PieceTimeline(book, SharedTables.read(), Words.english(), false).of(piece.id());
          assertThat(events)
              .extracting(PieceTimeline.Event::who, PieceTimeline.Event::at)
              .containsExactly(
                  org.assertj.core.groups.Tuple.tuple("Ada Pier", Classroom.NOW),
                  org.assertj.core.groups.Tuple.tuple("Bo Quay", corrected),
                  org.assertj.core.groups.Tuple.tuple("Mara Lock", last.instant()));
          assertThat(events.get(1).fields()).isNotEmpty();
        });
  }

  @Test
  void aPieceInTheBinThatAStudentWentOnWithComesBackWholeAndCanBeBinnedAgain() throws Exception {
    TestPiece piece = room.piece(SeamEnd.GAVE, 140);
    UUID photo = photographed(piece);
    Path student = Hall.copy(tutor, "ada.walebook");
    Hall.gather(tutor, student);
    Hall.work(tutor, book -> book.bin().put("test_piece", piece.id(), Hall.TUTOR));
    Hall.work(
        student, book -> book.pieces().update(graded(piece, 2, Classroom.NOW.plusSeconds(60))));
    Hall.gather(tutor, student);
    decide(tutor, Choice.THEIRS);
    Hall.work(
        tutor,
        book -> {
          assertThat(requireNonNull(book.pieces().find(piece.id())).seen().grade()).isEqualTo(2);
          assertThat(book.photos().image(photo)).containsExactly(1, 2, 3);
          assertThat(book.bin().all()).isEmpty();
          book.bin().put("test_piece", piece.id(), Hall.TUTOR);
          book.bin().restore(book.bin().all().get(0).id(), Hall.TUTOR);
          assertThat(requireNonNull(book.pieces().find(piece.id())).seen().grade()).isEqualTo(2);
          assertThat(book.photos().image(photo)).containsExactly(1, 2, 3);
        });
  }

  @Test
  void aPieceThatBothChangedIsShownAndTakenOverWithItsPullsAndFaults() throws Exception {
    TestPiece piece = room.piece(SeamEnd.GAVE, 140);
    Hall.work(tutor, book -> book.pieces().add(piece));
    Path student = Hall.copy(tutor, "ada.walebook");
    TestPiece theirs =
        pulled(piece, Classroom.NOW.plusSeconds(60), List.of(pull(1, 151), pull(2, 149)), 3);
    TestPiece mine = pulled(piece, Classroom.NOW.plusSeconds(30), List.of(pull(1, 140)), 1);
    Hall.work(student, book -> book.pieces().update(theirs));
    Hall.work(tutor, book -> book.pieces().update(mine));
    assertThat(Hall.gather(tutor, student).books().get(0).conflicts()).isEqualTo(1);
    Hall.work(
        tutor,
        book ->
            assertThat(book.gathering().conflicts().get(0).fields())
                .extracting(Conflict.Field::name)
                .contains("piece_pull", "fault_seen", "end_mm"));
    decide(tutor, Choice.THEIRS);
    Hall.work(
        tutor,
        book -> {
          TestPiece now = requireNonNull(book.pieces().find(piece.id()));
          assertThat(now.measure()).isEqualTo(theirs.measure());
          assertThat(now.seen()).isEqualTo(theirs.seen());
          Change decided =
              book.history().of("test_piece", piece.id()).stream()
                  .filter(each -> each.act().equals("gather.decide"))
                  .findFirst()
                  .orElseThrow();
          assertThat(book.history().pieceIn(requireNonNull(decided.before()))).isEqualTo(mine);
          book.history().undo(decided.stepId(), Hall.TUTOR);
          TestPiece back = requireNonNull(book.pieces().find(piece.id()));
          assertThat(back.measure()).isEqualTo(mine.measure());
          assertThat(back.seen()).isEqualTo(mine.seen());
        });
  }

  private static PullReading pull(int nth, double endMm) {
    return new PullReading(nth, SeamEnd.GAVE, endMm);
  }

  private static TestPiece pulled(
      TestPiece piece, Instant at, List<PullReading> pulls, int severity) {
    return piece
        .with(piece.measure().withPulls(pulls))
        .with(new Seen(2, null, List.of(Classroom.fault("wavy-seam", severity)), ""))
        .with(piece.stamp().next(at));
  }

  @Test
  void aPhotoInTheBinWhoseCaptionWasChangedComesBackWithItsPicture() throws Exception {
    TestPiece piece = room.piece(SeamEnd.GAVE, 140);
    UUID photo = photographed(piece);
    Path student = Hall.copy(tutor, "ada.walebook");
    Hall.gather(tutor, student);
    Hall.work(tutor, book -> book.bin().put("photo", photo, Hall.TUTOR));
    try (java.sql.Connection link = walebook.book.sqlite.SqliteLink.migrator(student)) {
      walebook.book.sqlite.SqliteLink.run(
          link,
          "UPDATE photo SET caption = 'the edge', row_version = 2, changed_at = changed_at + 9");
    }
    Hall.gather(tutor, student);
    decide(tutor, Choice.THEIRS);
    Hall.work(
        tutor,
        book -> {
          assertThat(book.photos().ofPiece(piece.id()))
              .extracting(PhotoInfo::caption)
              .containsExactly("the edge");
          assertThat(book.photos().image(photo)).containsExactly(1, 2, 3);
        });
  }

  @Test
  void twoClassesOfOneNameBecomeOneWithTheirCriteriaAndTags() throws Exception {
    Path other = folder.resolve("other.walebook");
    Classroom second = Classroom.in(other);
    TestPiece piece = second.piece(SeamEnd.GAVE, 140);
    second.book.pieces().add(piece);
    Criterion theirs = second.criterion("1.1");
    Criterion more = second.criterion("1.2");
    second.book.assessments().keep(theirs);
    second.book.assessments().keep(more);
    second.book.assessments().tag(CriterionTag.onPiece(theirs.id(), piece.id()));
    second.close();
    Criterion ours = room.criterion("1.1");
    Hall.work(tutor, book -> book.assessments().keep(ours));
    Hall.gather(tutor, other);
    Hall.work(
        tutor,
        book -> {
          for (Conflict each : book.gathering().conflicts()) {
            if (each.why() == Conflict.Why.SAME_NAME) {
              assertThat(book.gathering().decide(each.id(), Choice.MINE, Hall.TUTOR).problems())
                  .as(each.entity())
                  .isEmpty();
            }
          }
          assertThat(book.classes().all()).containsExactly(room.schoolClass);
          assertThat(book.assessments().criteriaOf(room.schoolClass.id()))
              .extracting(Criterion::code)
              .containsExactly("1.1", "1.2");
          assertThat(book.assessments().tagsOf(room.schoolClass.id()))
              .containsExactly(CriterionTag.onPiece(ours.id(), piece.id()));
        });
  }

  @Test
  void whatAnotherBookCallsAStudentGoesWithTheName() throws Exception {
    Path student = Hall.copy(tutor, "ada.walebook");
    Hall.work(tutor, book -> book.students().update(called("Ada Pier", Tier.CORE, 30)));
    Hall.work(student, book -> book.students().update(called("Ada Seawall", Tier.OWN, 60)));
    assertThat(Hall.gather(tutor, student).books().get(0).conflicts()).isEqualTo(1);
    Hall.work(
        tutor,
        book -> {
          assertThat(book.gathering().conflicts().toString()).contains("Seawall");
          book.privacy().rename(room.first.id(), "S01", "S01");
          book.privacy().scrub();
          assertThat(book.gathering().conflicts()).isEmpty();
        });
    String bytes =
        new String(
            java.nio.file.Files.readAllBytes(tutor), java.nio.charset.StandardCharsets.UTF_8);
    assertThat(bytes.contains("Seawall")).isFalse();
    assertThat(bytes.contains("Ada Pier")).isFalse();
  }

  private Student called(String name, Tier tier, int seconds) {
    return new Student(
        room.first.id(),
        name,
        room.first.alias(),
        tier,
        room.first.stamp().next(Classroom.NOW.plusSeconds(seconds)));
  }
}
