package walebook.desk.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.assess.CheckPiece;
import walebook.act.assess.GiveFeedback;
import walebook.act.assess.KeepCriteria;
import walebook.act.assess.LookOver;
import walebook.book.Classroom;
import walebook.desk.PlannedClass;
import walebook.desk.Sessions;
import walebook.desk.WaitingWork;
import walebook.desk.common.Session;
import walebook.record.CheckedBy;
import walebook.record.Criterion;
import walebook.record.Feedback;
import walebook.record.Help;
import walebook.record.Marking;
import walebook.record.PieceCheck;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

class LookOverViewModelTest {
  @TempDir Path folder;
  private Classroom room;
  private TestPiece piece;
  private TestPiece other;
  private Session session;

  @BeforeEach
  void open() {
    room = Classroom.in(folder.resolve("a.walebook"));
    piece = room.piece(SeamEnd.GAVE, 140);
    other = room.piece(SeamEnd.HELD, 150);
    room.book.pieces().add(piece);
    room.book.pieces().add(other);
    session = Sessions.of(room);
  }

  @AfterEach
  void close() {
    room.close();
  }

  private LookOverViewModel shown() {
    LookOverViewModel model = new LookOverViewModel(session);
    model.open(piece.id());
    return model;
  }

  private static LookOver of(LookOverViewModel model) {
    return Objects.requireNonNull(model.shownProperty().get());
  }

  private static void mark(LookOverViewModel model, CheckedBy by, Marking marking, String mark) {
    model.check(by).field(CheckPiece.field(marking)).text().set(mark);
  }

  @Test
  void bothChecksAreSavedEachForItself() {
    LookOverViewModel model = shown();
    mark(model, CheckedBy.SELF, Marking.CHOICE, "3");
    mark(model, CheckedBy.TUTOR, Marking.CHOICE, "1");
    model.check(CheckedBy.TUTOR).field(CheckPiece.HELP).text().set("hands-on");
    assertThat(model.isUnsaved(CheckedBy.SELF)).isTrue();
    model.save(CheckedBy.SELF);
    assertThat(model.isUnsaved(CheckedBy.SELF)).isFalse();
    assertThat(model.isUnsaved(CheckedBy.TUTOR)).isTrue();
    assertThat(of(model).tutor()).isNull();
    model.save(CheckedBy.TUTOR);
    PieceCheck tutor = Objects.requireNonNull(of(model).tutor());
    assertThat(tutor.mark(Marking.CHOICE)).isEqualTo(1);
    assertThat(tutor.help()).isEqualTo(Help.HANDS_ON);
    assertThat(model.saysProperty().get()).contains("tutor’s check is saved");
  }

  @Test
  void whatIsWrongIsSaidAtItsField() {
    LookOverViewModel model = shown();
    mark(model, CheckedBy.SELF, Marking.FINISH, "9");
    model.save(CheckedBy.SELF);
    assertThat(
            Objects.requireNonNull(
                    model
                        .check(CheckedBy.SELF)
                        .field(CheckPiece.field(Marking.FINISH))
                        .problem()
                        .get())
                .code())
        .isEqualTo("number.outside");
    model.give();
    assertThat(model.said().field("feedback-says").problem().get()).isNotNull();
    assertThat(of(model).self()).isNull();
  }

  @Test
  void whatIsTypedWaitsAsADraftAndASaveElsewhereLeavesItAlone() {
    LookOverViewModel model = shown();
    mark(model, CheckedBy.TUTOR, Marking.FINISH, "2");
    model.said().field("feedback-says").text().set("Even f");
    session.changed();
    assertThat(model.check(CheckedBy.TUTOR).text("finish-mark")).isEqualTo("2");
    model.open(other.id());
    assertThat(model.check(CheckedBy.TUTOR).text("finish-mark")).isEmpty();
    assertThat(model.said().text("feedback-says")).isEmpty();
    LookOverViewModel again = shown();
    assertThat(again.check(CheckedBy.TUTOR).text("finish-mark")).isEqualTo("2");
    assertThat(again.said().text("feedback-says")).isEqualTo("Even f");
    again.said().field("feedback-says").text().set("Even feed.");
    again.keepDraft();
    again.save(CheckedBy.TUTOR);
    again.give();
    again.rest();
    assertThat(room.book.drafts().of("assess")).isEmpty();
  }

  @Test
  void feedbackFromTheBankAndIntoIt() {
    LookOverViewModel model = shown();
    model.said().field("feedback-says").text().set("Even feed.");
    model.keepingProperty().set(true);
    model.give();
    assertThat(of(model).bank()).containsExactly("Even feed.");
    assertThat(model.keepingProperty().get()).isFalse();
    model.take("Even feed.");
    model.take("Well measured.");
    model.give();
    assertThat(of(model).feedback())
        .extracting(Feedback::says)
        .containsExactly("Even feed.", "Even feed. Well measured.");
    model.unbank("Even feed.");
    assertThat(of(model).bank()).isEmpty();
  }

  @Test
  void whileAStudentIsAtTheScreenTheTutorsPartIsOnlyRead() {
    LookOverViewModel model = shown();
    assertThat(model.lockedProperty().get()).isFalse();
    session.studentProperty().set(room.first);
    assertThat(model.lockedProperty().get()).isTrue();
    mark(model, CheckedBy.TUTOR, Marking.CHOICE, "3");
    model.save(CheckedBy.TUTOR);
    model.said().field(GiveFeedback.SAYS).text().set("Well done.");
    model.give();
    assertThat(of(model).tutor()).isNull();
    assertThat(of(model).feedback()).isEmpty();
    mark(model, CheckedBy.SELF, Marking.CHOICE, "2");
    model.save(CheckedBy.SELF);
    assertThat(of(model).self()).isNotNull();
    int attended = model.attentionProperty().get();
    model.tutorIsHere();
    assertThat(session.studentProperty().get()).isNull();
    assertThat(model.attentionProperty().get()).isGreaterThan(attended);
    model.save(CheckedBy.TUTOR);
    assertThat(of(model).tutor()).isNotNull();
  }

  @Test
  void nothingIsWrittenToThePieceBeforeWhileAnotherIsRead() {
    Criterion criterion =
        new KeepCriteria(room.book, Classroom.CLOCK)
            .add(room.schoolClass.id(), "1.1", "Chooses", "")
            .value();
    WaitingWork work = new WaitingWork();
    session = Sessions.bare(room.book, work, PlannedClass.OneFile.NONE);
    LookOverViewModel model = shown();
    work.hold();
    model.open(other.id());
    assertThat(model.shownProperty().get()).isNull();
    model.tag(criterion, true);
    model.save(CheckedBy.TUTOR);
    model.open(piece.id());
    work.release();
    assertThat(of(model).pieceId()).isEqualTo(piece.id());
    assertThat(of(model).own()).isEmpty();
    assertThat(of(model).tutor()).isNull();
  }

  @Test
  void tagsAreSetAndTakenOff() {
    Criterion criterion =
        new KeepCriteria(room.book, Classroom.CLOCK)
            .add(room.schoolClass.id(), "1.1", "Chooses", "")
            .value();
    LookOverViewModel model = shown();
    model.tag(criterion, true);
    assertThat(of(model).own()).containsExactly(criterion.id());
    model.tag(criterion, false);
    assertThat(of(model).own()).isEmpty();
  }

  @Test
  void whileAStudentIsAtTheScreenTagsAndTheBankStayAsTheyAre() {
    Criterion criterion =
        new KeepCriteria(room.book, Classroom.CLOCK)
            .add(room.schoolClass.id(), "1.1", "Chooses", "")
            .value();
    LookOverViewModel model = shown();
    model.said().field(GiveFeedback.SAYS).text().set("Even feed.");
    model.keepingProperty().set(true);
    model.give();
    session.studentProperty().set(room.first);
    model.tag(criterion, true);
    assertThat(of(model).own()).isEmpty();
    model.unbank("Even feed.");
    assertThat(of(model).bank()).containsExactly("Even feed.");
    model.tutorIsHere();
    model.tag(criterion, true);
    session.studentProperty().set(room.first);
    model.tag(criterion, false);
    assertThat(of(model).own()).containsExactly(criterion.id());
  }

  @Test
  void theHandsGoToTheCheckOnceThePieceIsShown() {
    LookOverViewModel model = shown();
    model.await(other.id());
    assertThat(model.attentionProperty().get()).isZero();
    model.open(other.id());
    assertThat(model.attentionProperty().get()).isEqualTo(1);
    model.await(other.id());
    model.open(other.id());
    assertThat(model.attentionProperty().get()).isEqualTo(2);
    model.open(piece.id());
    assertThat(model.attentionProperty().get()).isEqualTo(2);
  }
}
