package walebook.act.assess;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.compare.assessed.AssessedClass;
import walebook.compare.assessed.Standing;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.record.By;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.Feedback;
import walebook.record.Help;
import walebook.record.Marking;
import walebook.record.PieceCheck;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/** What a tutor does for the assessor. */
class AssessTest {
  @TempDir Path folder;
  private Classroom room;
  private TestPiece piece;
  private KeepCriteria keep;

  @BeforeEach
  void open() {
    room = Classroom.in(folder.resolve("a.walebook"));
    piece = room.piece(SeamEnd.GAVE, 140);
    room.book.pieces().add(piece);
    keep = new KeepCriteria(room.book, Classroom.CLOCK);
  }

  @AfterEach
  void close() {
    room.close();
  }

  private List<String> codes() {
    return criteria().stream().map(Criterion::code).toList();
  }

  private List<Criterion> criteria() {
    return room.book.assessments().criteriaOf(room.schoolClass.id());
  }

  private static List<String> problems(Answer<?> answer) {
    return answer.problems().stream().map(Problem::code).toList();
  }

  private void undo() {
    room.book.history().undo(Objects.requireNonNull(room.book.history().lastDone(null)), By.NOBODY);
  }

  @Test
  void aListIsPastedAsItStandsInTheCoursesPapers() {
    Answer<List<Criterion>> added =
        keep.addList(
            room.schoolClass.id(),
            """
            1.1 Chooses a   stitch for the cloth
            1.2: Sets the machine

            (2a)\tFinishes a seam
            • Works safely
            """,
            "");
    assertThat(added.value())
        .extracting(Criterion::code, Criterion::says)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("1.1", "Chooses a stitch for the cloth"),
            org.assertj.core.groups.Tuple.tuple("1.2", "Sets the machine"),
            org.assertj.core.groups.Tuple.tuple("2a", "Finishes a seam"),
            org.assertj.core.groups.Tuple.tuple("1", "Works safely"));
    assertThat(criteria()).isEqualTo(added.value());
  }

  @Test
  void aListWithAMistakeAddsNothingAndNamesEachLine() {
    keep.add(room.schoolClass.id(), "1.1", "Chooses a stitch", "");
    Answer<List<Criterion>> refused =
        keep.addList(room.schoolClass.id(), "1.1 again\n2.1\n3.1 fine\n3.1 twice", "");
    assertThat(refused.problems())
        .extracting(Problem::code, Problem::found)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("criterion.taken", "1.1"),
            org.assertj.core.groups.Tuple.tuple("criterion.no-text", "2.1"),
            org.assertj.core.groups.Tuple.tuple("criterion.taken", "3.1"));
    assertThat(codes()).containsExactly("1.1");
    assertThat(problems(keep.addList(room.schoolClass.id(), " \n ", ""))).contains("field.needed");
  }

  @Test
  void criteriaAreChangedMovedAndRemovedAndEachIsUndone() {
    keep.addList(room.schoolClass.id(), "1 One\n2 Two\n3 Three", "");
    Criterion three = criteria().get(2);
    keep.move(three, -1);
    assertThat(codes()).containsExactly("1", "3", "2");
    keep.move(three, -9);
    assertThat(codes()).containsExactly("3", "1", "2");
    undo();
    undo();
    assertThat(codes()).containsExactly("1", "2", "3");
    Criterion one = criteria().get(0);
    assertThat(one.looksAtAll()).isTrue();
    assertThat(keep.change(one, "1", "One", "finish, Choice").value().inOrder())
        .containsExactly(Marking.CHOICE, Marking.FINISH);
    keep.move(one, 1);
    keep.move(one, -1);
    assertThat(keep.change(one, "1", "One", "all").value().looksAtAll()).isTrue();
    assertThat(problems(keep.change(one, "1", "One", KeepCriteria.NO_MARKS)))
        .containsExactly("criterion.no-marks");
    assertThat(problems(keep.add(one.classId(), "9", "Nine", "finish, shine")))
        .containsExactly("choice.unknown");
    assertThat(problems(keep.change(one, "2", "", ""))).contains("criterion.taken", "field.needed");
    assertThat(keep.change(one, "1", "Once", "").value().says()).isEqualTo("Once");
    assertThat(problems(keep.add(room.schoolClass.id(), "12345678901234567", "x", "")))
        .containsExactly("criterion.long-code");
    new TagEvidence(room.book).piece(one.id(), piece.id(), true);
    keep.remove(one.id());
    assertThat(codes()).containsExactly("2", "3");
    assertThat(problems(keep.change(one, "7", "x", ""))).containsExactly("criterion.gone");
    undo();
    assertThat(codes()).containsExactly("1", "2", "3");
    assertThat(room.book.assessments().tagsOf(room.schoolClass.id())).hasSize(1);
  }

  @Test
  void bothCheckAPieceAndTheTutorsCountsForTheCriterion() {
    keep.add(room.schoolClass.id(), "1.1", "Chooses a stitch", "");
    new TagEvidence(room.book).piece(criteria().get(0).id(), piece.id(), true);
    assertThat(standing()).isEqualTo(Standing.UNCHECKED);
    CheckPiece check = new CheckPiece(room.book, Classroom.CLOCK);
    check.check(piece.id(), CheckedBy.SELF, marks(3)).value();
    assertThat(standing()).isEqualTo(Standing.UNCHECKED);
    PieceCheck first = check.check(piece.id(), CheckedBy.TUTOR, marks(1)).value();
    assertThat(standing()).isEqualTo(Standing.BELOW);
    assertThat(first.checkedOn()).isEqualTo(LocalDate.of(2026, 10, 5));
    PieceCheck second = check.check(piece.id(), CheckedBy.TUTOR, marks(2)).value();
    assertThat(second.stamp().version()).isEqualTo(2);
    assertThat(standing()).isEqualTo(Standing.MET);
    undo();
    assertThat(standing()).isEqualTo(Standing.BELOW);
    LookOver over = Objects.requireNonNull(LookOver.of(room.book, piece.id()));
    assertThat(Objects.requireNonNull(over.self()).mark(Marking.CHOICE)).isEqualTo(3);
    assertThat(Objects.requireNonNull(over.tutor()).help()).isEqualTo(Help.PROMPTED);
    assertThat(CheckPiece.typed(over.tutor())).containsEntry("finish-mark", "1");
  }

  private Standing standing() {
    return AssessedClass.of(room.book, room.schoolClass.id())
        .coverage()
        .rows()
        .get(0)
        .cells()
        .get(0)
        .standing();
  }

  private static Map<String, String> marks(int mark) {
    String text = String.valueOf(mark);
    return Map.of(
        "choice-mark", text,
        "technique-mark", text,
        "performance-mark", text,
        "finish-mark", text,
        "reasoning-mark", text,
        "help-given", "prompted");
  }

  @Test
  void marksOutsideTheScaleAreRefusedEachAtItsField() {
    Answer<PieceCheck> refused =
        new CheckPiece(room.book, Classroom.CLOCK)
            .check(
                piece.id(),
                CheckedBy.TUTOR,
                Map.of(
                    "choice-mark", "4",
                    "finish-mark", "good",
                    "help-given", "lots",
                    "checked-on", "2026-10-06"));
    assertThat(problems(refused))
        .hasSize(4)
        .contains("number.outside", "choice.unknown", "date.future");
    assertThat(
            problems(
                new CheckPiece(room.book, Classroom.CLOCK)
                    .check(piece.id(), CheckedBy.SELF, Map.of())))
        .containsExactly("check.nothing");
    assertThat(room.book.assessments().checksOf(room.schoolClass.id())).isEmpty();
  }

  @Test
  void feedbackIsDatedAndTheBankGrowsOnlyWhenAsked() {
    GiveFeedback give = new GiveFeedback(room.book, Classroom.CLOCK);
    give.give(piece.id(), "Even feed.", "", true).value();
    give.give(piece.id(), "Next: a wider zigzag.", "2026-10-01", false).value();
    LookOver over = Objects.requireNonNull(LookOver.of(room.book, piece.id()));
    assertThat(over.feedback())
        .extracting(Feedback::says)
        .containsExactly("Next: a wider zigzag.", "Even feed.");
    assertThat(over.bank()).containsExactly("Even feed.");
    assertThat(problems(give.give(piece.id(), " ", "5 October", false)))
        .containsExactly("field.needed", "date.not-a-date");
    undo();
    undo();
    over = Objects.requireNonNull(LookOver.of(room.book, piece.id()));
    assertThat(over.feedback()).isEmpty();
    assertThat(over.bank()).isEmpty();
  }

  @Test
  void recordsAreCountedWithTheLastChange() {
    AssessedClass empty = AssessedClass.of(room.book, room.schoolClass.id());
    assertThat(empty.isEmpty()).isTrue();
    assertThat(empty.tally().records()).isEqualTo(1);
    new CheckPiece(room.book, Classroom.CLOCK).check(piece.id(), CheckedBy.SELF, marks(2)).value();
    new GiveFeedback(room.book, Classroom.CLOCK).give(piece.id(), "Good.", "", false).value();
    AssessedClass found = AssessedClass.of(room.book, room.schoolClass.id());
    assertThat(found.tally().records()).isEqualTo(3);
    assertThat(found.tally().lastChange()).isEqualTo(Classroom.NOW);
    assertThat(found.pieces()).hasSize(1);
    assertThat(found.pieces().get(0).comments()).isEqualTo(1);
  }

  @Test
  void whatIsTypedIsKeptUntilItIsSaved() {
    KeepAssessDraft draft = new KeepAssessDraft(room.book);
    draft.keep(piece.id(), Map.of("feedback-says", "Even f"));
    assertThat(draft.find(piece.id())).containsEntry("feedback-says", "Even f");
    draft.keep(piece.id(), Map.of("feedback-says", " "));
    assertThat(draft.find(piece.id())).isEmpty();
  }
}
