package walebook.act.classroom;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.compare.CompareBySetting;
import walebook.compare.Comparison;
import walebook.compare.Dot;
import walebook.compare.Factor;
import walebook.compare.FairComparison;
import walebook.compare.FairQuestion;
import walebook.compare.Outcome;
import walebook.compare.odd.OddReading;
import walebook.problem.Answer;
import walebook.record.By;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.Mark;
import walebook.record.MarkedValue;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

class MarkReadingTest {
  private static final By TUTOR = By.named("Tutor");

  @TempDir Path folder;

  private Classroom room(String name) {
    return Classroom.in(folder.resolve(name + ".walebook"));
  }

  private static MarkReading act(Classroom room) {
    return new MarkReading(room.book, Classroom.CLOCK);
  }

  private static TestPiece piece(Classroom room) {
    TestPiece piece = room.piece(SeamEnd.GAVE, 510);
    room.book.pieces().add(piece);
    return piece;
  }

  private static CompareFair.Found ask(Classroom room) {
    return new CompareFair(room.book)
        .compare(
            new CompareFair.Which(List.of(room.schoolClass.id()), null, null, false),
            FairQuestion.of(Outcome.SEAM_STRETCH, List.of(Factor.WIDTH)));
  }

  @Test
  void setAsideNeedsAReasonAndLeavesEveryComparison() {
    try (Classroom room = room("a")) {
      TestPiece piece = piece(room);
      Answer<MarkReading.Marked> bare =
          act(room).setAside(MarkedValue.SEAM_STRETCH, piece.id(), " ", TUTOR);
      assertThat(bare.problems()).extracting(p -> p.code()).containsExactly("field.needed");
      MarkReading.Marked marked =
          act(room).setAside(MarkedValue.SEAM_STRETCH, piece.id(), "slipped", TUTOR).value();
      assertThat(marked.mark().mark()).isEqualTo(Mark.SET_ASIDE);
      assertThat(ask(room).comparison().setAside()).isEqualTo(1);
      assertThat(ask(room).comparison().pieces()).isZero();
      Comparison plain =
          new CompareClass(room.book)
              .compare(
                  new CompareClass.Question(
                      room.schoolClass.id(), null, null, CompareBySetting.USUAL, false));
      assertThat(plain.setAside()).isEqualTo(1);
      assertThat(plain.rows().get(0).heldShare()).isNull();
      assertThat(plain.rows().get(0).edgeChange()).isNotNull();
      assertThat(act(room).undo(marked.stepId(), TUTOR).isGood()).isTrue();
      assertThat(ask(room).comparison().pieces()).isEqualTo(1);
    }
  }

  /** Praised only once somebody said that it is right. */
  @Test
  void anOddPieceIsAmongTheBestOnceItWasKept() {
    try (Classroom room = room("odd")) {
      for (double end : List.of(150, 151, 152, 153, 154, 155)) {
        room.book.pieces().add(room.piece(SeamEnd.GAVE, end));
      }
      TestPiece slip = piece(room);
      FairComparison.Standouts before = ask(room).standouts();
      assertThat(before.odd()).extracting(Dot::pieceId).containsExactly(slip.id());
      assertThat(before.best()).isNotEmpty().noneMatch(dot -> dot.pieceId().equals(slip.id()));
      act(room).keep(MarkedValue.SEAM_STRETCH, slip.id(), TUTOR).value();
      FairComparison.Standouts after = ask(room).standouts();
      assertThat(after.best().get(0).pieceId()).isEqualTo(slip.id());
      assertThat(after.odd()).isEmpty();
    }
  }

  @Test
  void mistypedPutsTheNumberRightAndBothAreTakenBackTogether() {
    try (Classroom room = room("b")) {
      TestPiece piece = piece(room);
      MarkReading.Marked marked =
          act(room)
              .mistyped(MarkedValue.SEAM_STRETCH, piece.id(), "end-length", "15,1 cm", false, TUTOR)
              .value();
      TestPiece right = requireNonNull(room.book.pieces().find(piece.id()));
      assertThat(requireNonNull(right.measure().counting()).endMm()).isEqualTo(151);
      assertThat(room.book.history().step(marked.stepId())).hasSize(2);
      assertThat(room.book.history().step(marked.stepId()).get(0).before()).contains("510.0");
      act(room).undo(marked.stepId(), TUTOR).value();
      TestPiece back = requireNonNull(room.book.pieces().find(piece.id()));
      assertThat(requireNonNull(back.measure().counting()).endMm()).isEqualTo(510);
      assertThat(room.book.marks().all()).isEmpty();
    }
  }

  @Test
  void badInputIsNamedAndChangesNothing() {
    try (Classroom room = room("c")) {
      TestPiece piece = piece(room);
      MarkReading act = act(room);
      UUID id = piece.id();
      int changes = room.book.history().latest(1000).size();
      assertThat(
              codes(act.mistyped(MarkedValue.SEAM_STRETCH, id, "end-length", "far", false, TUTOR)))
          .containsExactly("number.not-a-number");
      assertThat(codes(act.mistyped(MarkedValue.SEAM_STRETCH, id, "end-length", "", false, TUTOR)))
          .containsExactly("field.needed");
      assertThat(codes(act.mistyped(MarkedValue.SEAM_STRETCH, id, "grade", "3", false, TUTOR)))
          .containsExactly("choice.unknown");
      assertThat(codes(act.mistyped(MarkedValue.GRADE, id, "grade", "9", false, TUTOR)))
          .containsExactly("number.outside");
      assertThat(
              codes(act.mistyped(MarkedValue.SEAM_STRETCH, id, "end-length", "5 m", false, TUTOR)))
          .isNotEmpty();
      assertThat(codes(act.keep(MarkedValue.GRADE, Ids.next(), TUTOR)))
          .containsExactly("choice.unknown");
      assertThat(codes(act.undo(Ids.next(), TUTOR))).containsExactly("undo.nothing");
      assertThat(room.book.history().latest(1000)).hasSize(changes);
      assertThat(room.book.pieces().find(id)).isEqualTo(piece);
    }
  }

  private static List<String> codes(Answer<?> answer) {
    assertThat(answer.isGood()).isFalse();
    return answer.problems().stream().map(each -> each.code()).toList();
  }

  /** The log form asks of these lengths too: 960 mm at a gauge of 100 is a stretch of 860 %. */
  @Test
  void aRightNumberIsAskedAboutAsTheLogFormAsks() {
    try (Classroom room = room("asked")) {
      TestPiece piece = piece(room);
      MarkReading act = act(room);
      UUID id = piece.id();
      assertThat(
              codes(act.mistyped(MarkedValue.SEAM_STRETCH, id, "end-length", "960", false, TUTOR)))
          .containsExactly("stretch.unlikely");
      assertThat(
              codes(act.mistyped(MarkedValue.SEAM_STRETCH, id, "end-length", "90", false, TUTOR)))
          .containsExactly("length.below-gauge", "length.released-longer");
      assertThat(codes(act.mistyped(MarkedValue.SEAM_STRETCH, id, "gauge", "600", false, TUTOR)))
          .containsExactly("length.below-gauge");
      assertThat(
              codes(act.mistyped(MarkedValue.EDGE_CHANGE, id, "edge-pressed", "20", false, TUTOR)))
          .containsExactly("edge.unlikely");
      assertThat(
              codes(act.mistyped(MarkedValue.EDGE_CHANGE, id, "edge-before", "20", false, TUTOR)))
          .containsExactly("edge.unlikely", "edge.unlikely");
      assertThat(room.book.pieces().find(id)).isEqualTo(piece);
      assertThat(
              act.mistyped(MarkedValue.SEAM_STRETCH, id, "end-length", "960", true, TUTOR).isGood())
          .isTrue();
    }
  }

  @Test
  void aSeamFarBeyondItsClothIsAskedAbout() {
    try (Classroom room = room("cloth")) {
      TestPiece piece = piece(room);
      room.book.clothLog().add(room.reading(Grain.COURSE, 180));
      Answer<?> asked =
          act(room)
              .mistyped(MarkedValue.SEAM_STRETCH, piece.id(), "end-length", "205 mm", false, TUTOR);
      assertThat(codes(asked)).containsExactly("stretch.beyond-cloth");
      assertThat(asked.problems().get(0).found()).isEqualTo("205 mm");
      assertThat(asked.problems().get(0).wanted()).isEqualTo("80.0 %");
    }
  }

  /** Of a reading as of one that is logged: its own limits, and what the cloth read before. */
  @Test
  void aReadingPutRightIsAskedAboutAsOneThatIsLogged() {
    try (Classroom room = room("reading")) {
      for (double mm : List.of(150, 151, 152, 153)) {
        room.book.clothLog().add(room.reading(Grain.COURSE, mm));
      }
      ClothReading odd = room.reading(Grain.COURSE, 510);
      room.book.clothLog().add(odd);
      MarkReading act = act(room);
      assertThat(
              codes(
                  act.mistyped(
                      MarkedValue.CLOTH_STRETCH, odd.id(), "stretched", "500", false, TUTOR)))
          .containsExactly("stretch.unlikely", "reading.unlike-others");
      assertThat(
              act.mistyped(MarkedValue.CLOTH_STRETCH, odd.id(), "stretched", "151", false, TUTOR)
                  .isGood())
          .isTrue();
    }
  }

  /** What was marked is the number that stood there; the new one is looked at anew. */
  @Test
  void aValuePutRightThatIsStillFarOutIsLookedAtAnew() {
    try (Classroom room = room("still")) {
      for (double end : List.of(150, 151, 152, 153, 154, 155)) {
        room.book.pieces().add(room.piece(SeamEnd.GAVE, end));
      }
      TestPiece slip = piece(room);
      act(room)
          .mistyped(MarkedValue.SEAM_STRETCH, slip.id(), "end-length", "960", true, TUTOR)
          .value();
      assertThat(ask(room).standouts().odd()).extracting(Dot::pieceId).containsExactly(slip.id());
      assertThat(
              new AskOdd(room.book)
                  .ask(new CompareFair.Which(List.of(room.schoolClass.id()), null, null, false)))
          .filteredOn(each -> each.targetId().equals(slip.id()))
          .extracting(OddReading::isLookedAt)
          .containsExactly(false);
      act(room).keep(MarkedValue.SEAM_STRETCH, slip.id(), TUTOR).value();
      assertThat(ask(room).standouts().odd()).isEmpty();
    }
  }

  @Test
  void whatWasChangedSinceIsNotTakenBack() {
    try (Classroom room = room("d")) {
      TestPiece piece = piece(room);
      CorrectReading correct = new CorrectReading(room.book, Classroom.CLOCK);
      UUID first =
          correct.correct(MarkedValue.GRADE, piece.id(), "grade", "2", false, TUTOR).value();
      correct.correct(MarkedValue.GRADE, piece.id(), "grade", "3", false, TUTOR).value();
      assertThat(codes(correct.undo(first, TUTOR))).containsExactly("undo.changed-since");
    }
  }

  @Test
  void everyFieldOfAPieceCanBePutRight() {
    try (Classroom room = room("e")) {
      TestPiece piece = piece(room);
      CorrectReading correct = new CorrectReading(room.book, Classroom.CLOCK);
      for (String field : CorrectReading.fields(MarkedValue.EDGE_CHANGE)) {
        correct.correct(MarkedValue.EDGE_CHANGE, piece.id(), field, "210", false, TUTOR).value();
      }
      correct.correct(MarkedValue.SEAM_STRETCH, piece.id(), "gauge", "200", false, TUTOR).value();
      TestPiece right = requireNonNull(room.book.pieces().find(piece.id()));
      assertThat(right.measure().edgeBeforeMm()).isEqualTo(210.0);
      assertThat(right.measure().edgeSewnMm()).isEqualTo(210.0);
      assertThat(right.measure().edgePressedMm()).isEqualTo(210.0);
      assertThat(right.measure().gaugeMm()).isEqualTo(200.0);
    }
  }
}
