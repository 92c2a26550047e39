package walebook.act.gather;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.assess.CheckPiece;
import walebook.act.assess.GiveFeedback;
import walebook.act.assess.KeepCriteria;
import walebook.act.assess.LookOver;
import walebook.act.assess.TagEvidence;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.gather.FromBook;
import walebook.compare.assessed.AssessedClass;
import walebook.compare.assessed.Standing;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.Marking;
import walebook.record.PieceCheck;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/** Checks that students made in their own books, gathered beside the tutor's. */
class GatherChecksTest {
  @TempDir Path folder;
  private Path tutor;
  private Classroom room;
  private TestPiece old;

  @BeforeEach
  void makeTheTutorsBook() {
    tutor = folder.resolve("tutor.walebook");
    room = Classroom.in(tutor);
    old = room.piece(SeamEnd.GAVE, 140);
    room.book.pieces().add(old);
    new KeepCriteria(room.book, Classroom.CLOCK)
        .addList(room.schoolClass.id(), "1.1 Chooses a stitch\n1.2 Works safely", "")
        .value();
    room.close();
  }

  private static void check(Book book, TestPiece piece, CheckedBy by, int mark) {
    new CheckPiece(book, Classroom.CLOCK)
        .check(piece.id(), by, Map.of("choice-mark", "3", "reasoning-mark", String.valueOf(mark)))
        .value();
  }

  private static LookOver over(Book book, TestPiece piece) {
    return Objects.requireNonNull(LookOver.of(book, piece.id()));
  }

  @Test
  void aSelfCheckComesAlongAndStandsBesideTheTutors() throws Exception {
    Path student = Hall.copy(tutor, "student.walebook");
    TestPiece fresh = room.piece(SeamEnd.HELD, 150);
    Hall.work(
        student,
        book -> {
          book.pieces().add(fresh);
          check(book, fresh, CheckedBy.SELF, 2);
          check(book, old, CheckedBy.SELF, 3);
          Criterion first = book.assessments().criteriaOf(room.schoolClass.id()).get(0);
          new TagEvidence(book).piece(first.id(), fresh.id(), true);
        });
    Hall.work(tutor, book -> check(book, old, CheckedBy.TUTOR, 2));
    FromBook came = Hall.gather(tutor, student).books().get(0);
    assertThat(came.problem()).isNull();
    assertThat(came.conflicts()).isZero();
    Hall.work(
        tutor,
        book -> {
          LookOver both = over(book, old);
          assertThat(Objects.requireNonNull(both.self()).mark(Marking.REASONING)).isEqualTo(3);
          assertThat(Objects.requireNonNull(both.tutor()).mark(Marking.REASONING)).isEqualTo(2);
          LookOver came2 = over(book, fresh);
          assertThat(came2.own()).hasSize(1);
          assertThat(came2.self()).isNotNull();
          AssessedClass assessed = AssessedClass.of(book, room.schoolClass.id());
          assertThat(assessed.coverage().rows().get(0).cells().get(0).standing())
              .isEqualTo(Standing.UNCHECKED);
        });
    FromBook again = Hall.gather(tutor, student).books().get(0);
    assertThat(List.of(again.added(), again.taken(), again.conflicts())).containsOnly(0);
  }

  @Test
  void aLaterSelfCheckIsTakenAndFeedbackStays() throws Exception {
    Hall.work(tutor, book -> check(book, old, CheckedBy.SELF, 1));
    Path student = Hall.copy(tutor, "student.walebook");
    Hall.work(student, book -> check(book, old, CheckedBy.SELF, 3));
    Hall.work(
        tutor,
        book ->
            new GiveFeedback(book, Classroom.CLOCK).give(old.id(), "Even feed.", "", true).value());
    FromBook came = Hall.gather(tutor, student).books().get(0);
    assertThat(came.taken()).isEqualTo(1);
    Hall.work(
        tutor,
        book -> {
          PieceCheck self = Objects.requireNonNull(over(book, old).self());
          assertThat(self.mark(Marking.REASONING)).isEqualTo(3);
          assertThat(over(book, old).feedback()).hasSize(1);
          assertThat(over(book, old).bank()).containsExactly("Even feed.");
        });
  }

  @Test
  void aCheckChangedInBothIsAskedAbout() throws Exception {
    Hall.work(tutor, book -> check(book, old, CheckedBy.SELF, 1));
    Path student = Hall.copy(tutor, "student.walebook");
    Hall.work(student, book -> check(book, old, CheckedBy.SELF, 3));
    Hall.work(tutor, book -> check(book, old, CheckedBy.SELF, 2));
    assertThat(Hall.gather(tutor, student).books().get(0).conflicts()).isEqualTo(1);
    Hall.work(
        tutor,
        book ->
            assertThat(Objects.requireNonNull(over(book, old).self()).mark(Marking.REASONING))
                .isEqualTo(2));
  }

  @Test
  void aStarterBookBringsCriteriaAndTheStudentsOwnChecksAndComesBackAsTheSame() throws Exception {
    TestPiece others = room.piece(room.second.id(), 2, List.of(), List.of(), null);
    List<Path> given =
        Hall.at(
            tutor,
            book -> {
              book.pieces().add(others);
              check(book, old, CheckedBy.SELF, 1);
              check(book, others, CheckedBy.TUTOR, 1);
              new GiveFeedback(book, Classroom.CLOCK)
                  .give(old.id(), "Even feed.", "", true)
                  .value();
              return new GiveStarterBooks(book, Hall.FILES, Classroom.CLOCK)
                  .give(room.schoolClass, folder.resolve("out"), false, false)
                  .value();
            });
    Path mine =
        given.stream().filter(each -> each.toString().contains("s01")).findFirst().orElseThrow();
    Hall.work(
        mine,
        book -> {
          LookOver over = over(book, old);
          assertThat(over.criteria()).hasSize(2);
          assertThat(over.feedback()).hasSize(1);
          assertThat(over.bank()).isEmpty();
          assertThat(book.assessments().checksOf(room.schoolClass.id())).hasSize(1);
          check(book, old, CheckedBy.SELF, 2);
        });
    FromBook came = Hall.gather(tutor, mine).books().get(0);
    assertThat(List.of(came.added(), came.taken(), came.conflicts())).containsExactly(0, 1, 0);
  }
}
