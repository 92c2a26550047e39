package walebook.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.CriterionTag;
import walebook.record.Feedback;
import walebook.record.Help;
import walebook.record.Marking;
import walebook.record.PieceCheck;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

/** What courses ask for and how pieces were looked over, kept and read back. */
class AssessmentsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 10, 5);

  @TempDir Path folder;

  @Test
  void criteriaAndTagsComeBackAndGoTogether() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      TestPiece piece = room.piece(SeamEnd.GAVE, 148);
      room.book.pieces().add(piece);
      Assessments all = room.book.assessments();
      Criterion one = room.criterion("1.1");
      all.keep(one);
      for (Marking left : Marking.values()) {
        Set<Marking> looksAt = EnumSet.complementOf(EnumSet.of(left));
        Criterion some =
            new Criterion(
                Ids.next(), one.classId(), left.key(), "Some", 2, looksAt, Classroom.FRESH);
        all.keep(some);
        assertThat(all.criteriaOf(one.classId())).containsExactly(one, some);
        all.remove(some.id());
      }
      CriterionTag tag = CriterionTag.onPiece(one.id(), piece.id());
      all.tag(tag);
      all.tag(tag);
      assertThat(all.criteriaOf(room.schoolClass.id())).containsExactly(one);
      assertThat(all.tagsOf(room.schoolClass.id())).containsExactly(tag);
      all.untag(tag);
      assertThat(all.tagsOf(room.schoolClass.id())).isEmpty();
      all.tag(tag);
      all.remove(one.id());
      assertThat(all.criteriaOf(room.schoolClass.id())).isEmpty();
      assertThat(all.tagsOf(room.schoolClass.id())).isEmpty();
    }
  }

  @Test
  void bothChecksStandSideBySideAndAFailedPieceMayPassInReasoning() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      TestPiece piece = room.piece(SeamEnd.GAVE, 120);
      room.book.pieces().add(piece);
      Assessments all = room.book.assessments();
      PieceCheck self = check(piece, CheckedBy.SELF, Map.of(Marking.CHOICE, 3), null);
      PieceCheck tutor =
          check(
              piece,
              CheckedBy.TUTOR,
              Map.of(Marking.PERFORMANCE, 0, Marking.REASONING, 3),
              Help.PROMPTED);
      all.keep(self);
      all.keep(tutor);
      assertThat(all.check(piece.id(), CheckedBy.SELF)).isEqualTo(self);
      assertThat(all.checksOf(room.schoolClass.id())).containsExactly(self, tutor);
      assertThat(tutor.passes(Criterion.ALL)).isFalse();
      assertThat(tutor.reasoningPasses()).isTrue();
      assertThatThrownBy(() -> check(piece, CheckedBy.TUTOR, Map.of(Marking.FINISH, 4), Help.NONE))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Test
  void feedbackIsDatedAndTheBankKeepsEachCommentOnce() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      TestPiece piece = room.piece(SeamEnd.HELD, 160);
      room.book.pieces().add(piece);
      Assessments all = room.book.assessments();
      Feedback said = new Feedback(Ids.next(), piece.id(), DAY, "Even feed.", "M", Classroom.FRESH);
      all.add(said);
      assertThat(all.feedbackOn(piece.id())).containsExactly(said);
      assertThat(all.spokenOf(room.schoolClass.id())).containsExactly(piece.id());
      all.bank("Even feed.");
      all.bank("Even feed.");
      assertThat(all.bank()).containsExactly("Even feed.");
      all.unbank("Even feed.");
      assertThat(all.bank()).isEmpty();
    }
  }

  private static PieceCheck check(
      TestPiece piece,
      CheckedBy by,
      Map<Marking, Integer> marks,
      @org.jspecify.annotations.Nullable Help help) {
    return new PieceCheck(Ids.next(), piece.id(), by, marks, help, DAY, Classroom.FRESH);
  }
}
