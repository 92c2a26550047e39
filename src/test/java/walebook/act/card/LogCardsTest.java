package walebook.act.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.piece.LogTestPiece;
import walebook.act.piece.PieceEntry;
import walebook.act.piece.PieceField;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.desk.PlannedClass;
import walebook.lesson.LogField;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.record.PieceCode;
import walebook.record.TestPiece;
import walebook.tables.SharedTables;

@SuppressWarnings("NullAway.Init")
class LogCardsTest {
  @TempDir Path folder;

  private PlannedClass made;
  private CardSheet sheet;
  private LogCards act;

  @BeforeEach
  void make() {
    made = PlannedClass.in(folder.resolve("a.walebook"), 1);
    sheet = load();
    act = new LogCards(made.room.book, Classroom.CLOCK, new Random(3));
  }

  @AfterEach
  void close() {
    made.close();
  }

  private CardSheet load() {
    LoadCards load = new LoadCards(made.room.book, SharedTables.read());
    return Objects.requireNonNull(load.of(made.lesson.id()));
  }

  private PieceEntry card(int nth, String end, String length) {
    return sheet
        .cards()
        .get(nth)
        .start()
        .with(PieceField.SEWN_ON, "2026-09-28")
        .with(PieceField.END, end)
        .with(PieceField.END_LENGTH, length);
  }

  private Map<UUID, Answer<TestPiece>> save(PieceEntry... cards) {
    return act.save(List.of(cards), sheet.room(), Map.of());
  }

  private static Problem first(Answer<TestPiece> answer) {
    return answer.problems().get(0);
  }

  @Test
  void theGoodCardsAreSavedWithTheDayOfTheLessonAndTheOthersStay() {
    PieceEntry good = card(0, "gave", "140");
    PieceEntry bad = card(1, "gave", "14o");
    Map<UUID, Answer<TestPiece>> answers = save(good, bad);
    TestPiece saved = Objects.requireNonNull(answers.get(good.pieceId())).value();
    assertThat(saved.whose().sewnOn()).isEqualTo(LocalDate.of(2026, 9, 28));
    assertThat(saved.measure().measuredOn()).isEqualTo(LocalDate.of(2026, 9, 28));
    assertThat(saved.code()).isEqualTo(made.plan.get(0).code());
    assertThat(answers.get(bad.pieceId())).matches(each -> !each.isGood());
    assertThat(made.room.book.pieces().list(PieceFilter.ALL)).containsExactly(saved);
  }

  @Test
  void aCardIsCheckedAsAPieceLoggedInTheFormIs() {
    for (String length : new String[] {"14o", "90", "400", ""}) {
      PieceEntry card = card(1, "gave", length);
      Answer<TestPiece> byForm =
          new LogTestPiece(made.room.book, Classroom.CLOCK, new Random(3))
              .save(card, sheet.room(), false);
      assertThat(Objects.requireNonNull(save(card).get(card.pieceId())).problems())
          .as(length)
          .isNotEmpty()
          .isEqualTo(byForm.problems());
    }
  }

  @Test
  void whatIsUnlikelyIsTakenOnceItWasConfirmed() {
    PieceEntry card = card(0, "held", "400");
    List<Problem> asked = Objects.requireNonNull(save(card).get(card.pieceId())).problems();
    assertThat(asked).noneMatch(Problem::refuses);
    Map<UUID, Answer<TestPiece>> again =
        act.save(List.of(card), sheet.room(), Map.of(card.pieceId(), asked));
    assertThat(again.get(card.pieceId())).matches(Answer::isGood);
  }

  @Test
  void savedTwiceItIsThereOnce() {
    PieceEntry card = card(0, "gave", "140");
    save(card);
    assertThat(save(card).get(card.pieceId())).matches(Answer::isGood);
    assertThat(made.room.book.pieces().list(PieceFilter.ALL)).hasSize(1);
  }

  @Test
  void aPieceLoggedMeanwhileOnAnotherWayIsNotLoggedTwice() {
    save(card(0, "gave", "140"));
    PieceEntry before = sheet.cards().get(0).start();
    PieceEntry other =
        new PieceEntry(
            UUID.randomUUID(),
            before.classId(),
            before.studentId(),
            before.lessonId(),
            before.plannedId(),
            before.code(),
            null,
            card(0, "gave", "150").typed());
    Problem problem = first(Objects.requireNonNull(save(other).get(other.pieceId())));
    assertThat(problem.code()).isEqualTo("code.logged");
    assertThat(made.room.book.pieces().list(PieceFilter.ALL)).hasSize(1);
  }

  private PieceEntry beside(String code) {
    PieceEntry like = card(0, "gave", "140");
    return new PieceEntry(
        UUID.randomUUID(),
        like.classId(),
        like.studentId(),
        like.lessonId(),
        null,
        code,
        null,
        like.typed());
  }

  @Test
  void aCodeStandsOnOneCardOnlyAndIsNoneOfThePlans() {
    String code = PieceCode.draw(new Random(91));
    PieceEntry one = beside(code);
    PieceEntry two = beside(PieceCode.spoken(code).toLowerCase(java.util.Locale.ROOT));
    PieceEntry planned = beside(made.plan.get(3).code());
    PieceEntry none = beside("no code");
    Map<UUID, Answer<TestPiece>> answers = save(one, two, planned, none);
    Map<UUID, String> codes = new HashMap<>();
    answers.forEach((piece, answer) -> codes.put(piece, first(answer).code()));
    assertThat(codes)
        .containsEntry(one.pieceId(), "card.code-twice")
        .containsEntry(two.pieceId(), "card.code-twice")
        .containsEntry(planned.pieceId(), "card.code-planned")
        .containsEntry(none.pieceId(), "code.not-a-code");
    PieceEntry alone = beside(PieceCode.spoken(code));
    assertThat(Objects.requireNonNull(save(alone).get(alone.pieceId())).value().code())
        .isEqualTo(code);
  }

  @Test
  void whatContradictsItselfOnACardIsInTheWay() {
    PieceEntry card = card(0, "held", "150").with(PieceField.BROKE, "needle-thread");
    assertThat(first(Objects.requireNonNull(save(card).get(card.pieceId()))).code())
        .isEqualTo("card.broke-but-held");
  }

  @Test
  void aLoggedCardComesBackAsItWouldHaveBeenTyped() {
    PieceEntry card =
        card(0, "gave", "140")
            .with(PieceField.GRADE, "4")
            .with(PieceField.FAULTS, "wavy-seam")
            .with(PieceField.REMARK, "note");
    save(card);
    Map<PieceField, String> logged = load().cards().get(0).logged();
    assertThat(logged)
        .containsEntry(PieceField.END, "gave")
        .containsEntry(PieceField.END_LENGTH, "140 mm")
        .containsEntry(PieceField.GRADE, "4")
        .containsEntry(PieceField.REMARK, "note");
    assertThat(CardClashes.differs(PieceField.END_LENGTH, "14 cm", "140 mm", Unit.MM)).isNull();
    assertThat(CardClashes.differs(PieceField.FAULTS, "wavy-seam", "wavy-seam,x,2", Unit.MM))
        .isNull();
    Problem differs = CardClashes.differs(PieceField.END_LENGTH, "142", "140 mm", Unit.MM);
    assertThat(Objects.requireNonNull(differs).wanted()).isEqualTo("140 mm");
  }

  @Test
  void theColumnsAreTheLogsFieldsInTheFormsOrder() {
    assertThat(
            CardColumns.of(
                List.of(LogField.NOTE, LogField.PULL, LogField.NEEDLE, LogField.PHOTO), 2))
        .containsExactly(
            PieceField.NEEDLE_POINT,
            PieceField.NEEDLE_NM,
            PieceField.END,
            PieceField.END_LENGTH,
            PieceField.END_2,
            PieceField.END_LENGTH_2,
            PieceField.REMARK);
  }

  @Test
  void firstLettersStandForAChoiceWhileTheyMeanOne() {
    assertThat(Shorthand.whole(PieceField.END, "g", sheet.room())).isEqualTo("gave");
    assertThat(Shorthand.whole(PieceField.END, "H", sheet.room())).isEqualTo("held");
    assertThat(Shorthand.whole(PieceField.END, "x", sheet.room())).isEqualTo("x");
    assertThat(Shorthand.whole(PieceField.FAULTS, "wavy,3; tunn", sheet.room()))
        .isEqualTo("wavy-seam,3;tunnelling");
    assertThat(Shorthand.whole(PieceField.END_LENGTH, "g", sheet.room())).isEqualTo("g");
  }
}
