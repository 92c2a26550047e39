package walebook.desk.pieces;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import walebook.act.piece.KeepDraft;
import walebook.act.piece.PieceField;
import walebook.book.PieceFilter;
import walebook.desk.LastFirst;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.drawing.GaugeReading;
import walebook.problem.Problem;
import walebook.quantity.Unit;
import walebook.record.BookInfo;
import walebook.record.PullReading;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;
import walebook.working.Verdict;

@SuppressWarnings("NullAway.Init")
class LogFormViewModelTest {
  @TempDir Path folder;

  private PlannedClass made;
  private Session session;
  private LogFormViewModel form;
  private final List<TestPiece> saved = new ArrayList<>();

  @BeforeEach
  void begin() {
    made = PlannedClass.in(folder.resolve("class.walebook"), 1);
    session = made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE);
    form = new LogFormViewModel(session, Unit.MM, saved::add);
    form.begin(planned(0));
  }

  /** Of one's own nothing is filled in. */
  @Test
  void whatIsMissingIsSaidBeforeAnythingIsAsked() {
    form.begin(new LoadForm(session).own(made.room.schoolClass.id(), made.room.first.id()));
    form.save();
    assertThat(form.askingProperty().get()).isFalse();
    assertThat(Objects.requireNonNull(problem(PieceField.CLOTH)).refuses()).isTrue();
    assertThat(saved).isEmpty();
  }

  @AfterEach
  void close() {
    made.close();
  }

  private FormStart planned(int place) {
    FormStart start =
        new LoadForm(session)
            .planned(made.room.schoolClass.id(), made.room.first.id(), made.planned(place));
    return Objects.requireNonNull(start);
  }

  private void type(PieceField field, String text) {
    form.field(field).textProperty().set(text);
    form.field(field).leave();
  }

  private @Nullable Problem problem(PieceField field) {
    return form.field(field).problemProperty().get();
  }

  private Meaning meaning() {
    return Objects.requireNonNull(form.meaningProperty().get());
  }

  @Test
  void thePlanFillsTheSettingsAndLengthsStandInTheUnitOfTheLabel() {
    assertThat(form.field(PieceField.STITCH).chosenProperty().get())
        .isEqualTo(new Choice("304", "zigzag · 304"));
    assertThat(form.field(PieceField.GAUGE).textProperty().get()).isEqualTo("100");
    assertThat(form.field(PieceField.GAUGE).label()).isEqualTo("between marks, mm");
    assertThat(form.settingsOpenProperty().get()).isFalse();
    assertThat(form.settingsSaysProperty().get()).contains("Grey jersey").contains("width 2.5");
  }

  @Test
  void theVerdictFollowsTheTypingAndAMistakeElsewhereDoesNotHideIt() {
    assertThat(meaning().verdict().verdict()).isEqualTo(Verdict.NOT_KNOWN);
    type(PieceField.END_LENGTH, "1");
    type(PieceField.END, "gave");
    type(PieceField.END_LENGTH, "140");
    assertThat(meaning().verdict().verdict()).isEqualTo(Verdict.NOT_MET);
    type(PieceField.EDGE_PRESSED, "two");
    // 100 mm gone to 160 mm is 60 % by definition, beyond the 50 % that the plan needs.
    type(PieceField.END, "held");
    type(PieceField.END_LENGTH, "160");
    assertThat(meaning().verdict().seamStretch()).isEqualTo(60.0);
    assertThat(meaning().verdict().verdict()).isEqualTo(Verdict.MET);
  }

  @Test
  void theGaugeMovesBeforeItIsSaidWhetherTheSeamGave() {
    type(PieceField.END_LENGTH, "15 cm");
    assertThat(meaning().gauge().reading().stretched()).isEqualTo(150.0);
    assertThat(meaning().gauge().reading().how()).isEqualTo(GaugeReading.How.STRETCHED);
    assertThat(form.field(PieceField.END_LENGTH).understoodProperty().get()).isEqualTo("150 mm");
    type(PieceField.END, "gave");
    assertThat(meaning().gauge().reading().how()).isEqualTo(GaugeReading.How.GAVE);
  }

  @Test
  void onlyWhatMakesSenseIsAsked() {
    assertThat(form.field(PieceField.BROKE).askedProperty().get()).isFalse();
    assertThat(form.field(PieceField.END_2).askedProperty().get()).isFalse();
    type(PieceField.END, "gave");
    assertThat(form.field(PieceField.BROKE).askedProperty().get()).isTrue();
    type(PieceField.STITCH, "301");
    assertThat(form.field(PieceField.DIAL_WIDTH).askedProperty().get()).isFalse();
    type(PieceField.METHOD, "hem");
    assertThat(form.field(PieceField.HEM_METHOD).askedProperty().get()).isTrue();
  }

  @Test
  void aProblemWaitsUntilTheFieldIsLeftAndGoesOnceItIsMended() {
    form.field(PieceField.RELEASED).textProperty().set("10x4");
    assertThat(problem(PieceField.RELEASED)).isNull();
    form.field(PieceField.RELEASED).leave();
    assertThat(problem(PieceField.RELEASED)).isNotNull();
    form.field(PieceField.RELEASED).textProperty().set("104");
    assertThat(problem(PieceField.RELEASED)).isNull();
  }

  @Test
  void minutesSayHowTheyWereUnderstoodAndAreSaved() {
    LogField minutes = form.field(PieceField.MINUTES);
    assertThat(minutes.textProperty().get()).isEmpty();
    type(PieceField.MINUTES, "4:30");
    assertThat(minutes.understoodProperty().get()).isEqualTo("4.5 min");
    type(PieceField.MINUTES, "4.5");
    assertThat(minutes.understoodProperty().get()).isEmpty();
    type(PieceField.MINUTES, "4 kg");
    minutes.leave();
    assertThat(problem(PieceField.MINUTES)).isNotNull();
    type(PieceField.MINUTES, "4:30");
    type(PieceField.END, "gave");
    type(PieceField.END_LENGTH, "140");
    form.save();
    assertThat(saved).hasSize(1);
    assertThat(saved.get(0).measure().sewingMinutes()).isEqualTo(4.5);
  }

  @Test
  void aRefusedSaveLosesNothingAndPointsAtTheField() {
    type(PieceField.END, "gave");
    type(PieceField.END_LENGTH, "wide");
    type(PieceField.REMARK, "slow feed");
    form.save();
    assertThat(saved).isEmpty();
    assertThat(form.attentionProperty().get()).isEqualTo(PieceField.END_LENGTH);
    assertThat(problem(PieceField.END_LENGTH)).isNotNull();
    assertThat(form.field(PieceField.REMARK).textProperty().get()).isEqualTo("slow feed");
    type(PieceField.END_LENGTH, "140");
    form.save();
    assertThat(saved).hasSize(1);
    assertThat(made.room.book.pieces().find(saved.get(0).id())).isEqualTo(saved.get(0));
    assertThat(saved.get(0).code()).isEqualTo(made.plan.get(0).code());
  }

  @Test
  void whatIsOnlyUnlikelyIsSavedByASecondSave() {
    type(PieceField.END, "held");
    type(PieceField.END_LENGTH, "90");
    form.save();
    assertThat(saved).isEmpty();
    assertThat(form.askingProperty().get()).isTrue();
    form.save();
    assertThat(saved).hasSize(1);
  }

  @Test
  void aNewUnlikelyThingIsAskedAboutAnew() {
    type(PieceField.END, "held");
    type(PieceField.END_LENGTH, "90");
    form.save();
    type(PieceField.END_LENGTH, "80");
    assertThat(form.askingProperty().get()).isFalse();
    form.save();
    assertThat(saved).isEmpty();
  }

  @Test
  void cautionsAreSaidOnceALesson() {
    assertThat(form.cautionProperty().get()).contains("Pull steadily");
    form.begin(planned(1));
    assertThat(form.cautionProperty().get()).isEmpty();
  }

  /** Common practice: switch off at each change of needle or plate, not only at the first. */
  @Test
  void aChangeAtTheNeedleBringsItsCautionEachTime() {
    type(PieceField.END, "gave");
    type(PieceField.END_LENGTH, "140");
    form.save();
    form.begin(Objects.requireNonNull(new LoadForm(session).again(saved.get(0).id())));
    assertThat(form.cautionProperty().get()).isEmpty();
    type(PieceField.PRESSURE, "lower");
    assertThat(form.cautionProperty().get()).isEmpty();
    type(PieceField.PRESSURE, "");
    type(PieceField.NEEDLE_POINT, "universal");
    assertThat(form.cautionProperty().get()).contains("Switch the machine off");
    type(PieceField.NEEDLE_POINT, "twin-stretch");
    assertThat(form.cautionProperty().get()).contains("turn the wheel by hand once");
    form.begin(Objects.requireNonNull(new LoadForm(session).again(saved.get(0).id())));
    type(PieceField.OTHER_CHANGE, "straight-stitch plate");
    assertThat(form.cautionProperty().get())
        .contains("Switch the machine off")
        .contains("straight-stitch plate lets one needle through");
    type(PieceField.OTHER_CHANGE, "lift and press with steam");
    assertThat(form.cautionProperty().get()).contains("Steam and plate burn");
    type(PieceField.OTHER_CHANGE, "straight-stitch plate");
    form.save();
    // It may sit in the machine still when the next attempt is sewn.
    form.begin(Objects.requireNonNull(new LoadForm(session).again(saved.get(1).id())));
    assertThat(form.cautionProperty().get()).contains("put the wide plate back");
  }

  /** Where the button of the place before stood, a second click would save an empty piece. */
  @Test
  void aFormThatNobodyTypedInIsAskedAboutOnce() {
    form.save();
    assertThat(saved).isEmpty();
    assertThat(form.askingProperty().get()).isTrue();
    assertThat(form.wholeProperty().get()).contains("Nothing is measured");
    type(PieceField.REMARK, "spoiled");
    assertThat(form.askingProperty().get()).isFalse();
    form.save();
    assertThat(saved).hasSize(1);
    form.begin(planned(1));
    form.save();
    form.save();
    assertThat(saved).hasSize(2);
  }

  @Test
  void theDraftComesBackUntilThePieceIsSaved() {
    type(PieceField.END_LENGTH, "14");
    form.keepDraft();
    LogFormViewModel later = new LogFormViewModel(session, Unit.MM, saved::add);
    later.begin(planned(0));
    assertThat(later.field(PieceField.END_LENGTH).textProperty().get()).isEqualTo("14");
    assertThat(later.noteProperty().get()).isNotEmpty();
    later.field(PieceField.END_LENGTH).textProperty().set("140");
    later.field(PieceField.END).textProperty().set("gave");
    later.save();
    assertThat(new KeepDraft(made.room.book).find(made.room.first.id(), made.planned(0))).isNull();
    assertThat(made.room.book.drafts().of("piece")).isEmpty();
  }

  @Test
  void whatIsThrownAwayLeavesNoDraft() {
    type(PieceField.END_LENGTH, "14");
    form.keepDraft();
    boolean[] then = {false};
    form.discard(() -> then[0] = true);
    form.keepDraft();
    assertThat(then[0]).isTrue();
    assertThat(made.room.book.drafts().of("piece")).isEmpty();
  }

  @Test
  void restKeepsTheDraftBeforeTheBookIsClosed() {
    type(PieceField.END_LENGTH, "14");
    form.rest();
    assertThat(made.room.book.drafts().of("piece")).hasSize(1);
  }

  @Test
  void aSecondAttemptSaysWhatIsChangedAndAsksWhenNothingIs() {
    TestPiece parent = made.room.piece(SeamEnd.GAVE, 140);
    made.room.book.pieces().add(parent);
    form.begin(Objects.requireNonNull(new LoadForm(session).again(parent.id())));
    assertThat(form.settingsOpenProperty().get()).isTrue();
    type(PieceField.END, "held");
    type(PieceField.END_LENGTH, "155");
    form.save();
    assertThat(form.askingProperty().get()).isTrue();
    assertThat(form.wholeProperty().get()).isNotEmpty();
    type(PieceField.DIAL_WIDTH, "3,5");
    assertThat(form.changeProperty().get()).contains("stitch width: 2.5 → 3,5");
    form.save();
    assertThat(saved).hasSize(1);
    assertThat(Objects.requireNonNull(saved.get(0).parent()).pieceId()).isEqualTo(parent.id());
    assertThat(Objects.requireNonNull(saved.get(0).parent()).changed()).isEqualTo("dial-width");
    assertThat(made.room.book.pieces().list(PieceFilter.ALL)).hasSize(2);
  }

  @Test
  void threePullsAreAskedForWhenThePlanSaysSo() {
    try (PlannedClass three = PlannedClass.in(folder.resolve("three.walebook"), 3)) {
      Session at = three.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE);
      LogFormViewModel thrice = new LogFormViewModel(at, Unit.MM, saved::add);
      thrice.begin(
          Objects.requireNonNull(
              new LoadForm(at)
                  .planned(three.room.schoolClass.id(), three.room.first.id(), three.planned(0))));
      PieceField[][] pulls = {
        {PieceField.END, PieceField.END_LENGTH},
        {PieceField.END_2, PieceField.END_LENGTH_2},
        {PieceField.END_3, PieceField.END_LENGTH_3}
      };
      String[] lengths = {"152", "149", "151"};
      for (int i = 0; i < pulls.length; i++) {
        assertThat(thrice.field(pulls[i][0]).askedProperty().get()).isTrue();
        thrice.field(pulls[i][0]).textProperty().set("gave");
        thrice.field(pulls[i][1]).textProperty().set(lengths[i]);
      }
      thrice.save();
      assertThat(saved).hasSize(1);
      assertThat(saved.get(0).measure().counting())
          .isEqualTo(new PullReading(2, SeamEnd.GAVE, 149));
    }
  }

  /** A save waits while something large is written; hands go on typing. */
  @Test
  void whatIsTypedWhileASaveIsUnderWayWaitsAsItsMending() {
    LastFirst work = new LastFirst();
    Session slow = made.sitting(work.worker(), PlannedClass.OneFile.NONE);
    LogFormViewModel typing = new LogFormViewModel(slow, Unit.MM, saved::add);
    typing.begin(planned(0));
    typing.field(PieceField.END).textProperty().set("held");
    typing.field(PieceField.END_LENGTH).textProperty().set("155");
    typing.save();
    typing.field(PieceField.REMARK).textProperty().set("thread shredded");
    work.workAll();
    assertThat(saved).hasSize(1);
    FormStart mend = Objects.requireNonNull(new LoadForm(session).mend(saved.get(0).id()));
    assertThat(mend.entry().at(PieceField.REMARK)).isEqualTo("thread shredded");
    assertThat(mend.entry().at(PieceField.END_LENGTH)).contains("155");
  }

  @Test
  void aSaveThatEndsLateLeavesTheFormThatWasBegunSince() {
    LastFirst work = new LastFirst();
    Session slow = made.sitting(work.worker(), PlannedClass.OneFile.NONE);
    LogFormViewModel typing = new LogFormViewModel(slow, Unit.MM, saved::add);
    typing.begin(planned(0));
    typing.field(PieceField.END).textProperty().set("held");
    typing.field(PieceField.END_LENGTH).textProperty().set("155");
    typing.save();
    typing.begin(planned(1));
    typing.field(PieceField.REMARK).textProperty().set("of the second");
    work.workAll();
    assertThat(saved).hasSize(1);
    typing.rest();
    assertThat(planned(1).entry().at(PieceField.REMARK)).isEqualTo("of the second");
  }

  @Test
  void whatALateSaveAsksIsNotAskedOfTheFormThatWasBegunSince() {
    LastFirst work = new LastFirst();
    Session slow = made.sitting(work.worker(), PlannedClass.OneFile.NONE);
    LogFormViewModel typing = new LogFormViewModel(slow, Unit.MM, saved::add);
    typing.begin(planned(0));
    typing.field(PieceField.END).textProperty().set("held");
    typing.field(PieceField.END_LENGTH).textProperty().set("900");
    typing.save();
    typing.begin(planned(1));
    work.workAll();
    assertThat(saved).isEmpty();
    assertThat(typing.askingProperty().get()).isFalse();
    assertThat(planned(0).entry().at(PieceField.END_LENGTH)).isEqualTo("900");
  }

  /** An eighth and a sixteenth of an inch, of 25.4 mm by definition, have four places. */
  @ParameterizedTest
  @EnumSource(names = {"MM", "CM", "INCH"})
  void aPieceMendedInNothingStaysAsItWasInEveryUnit(Unit unit) {
    BookInfo was = session.book().info();
    session
        .book()
        .keep(
            new BookInfo(
                was.id(),
                was.name(),
                was.invented(),
                unit,
                was.stamp().next(session.clock().instant())));
    LogFormViewModel typing = new LogFormViewModel(session, unit, saved::add);
    typing.begin(planned(0));
    typing.field(PieceField.GAUGE).textProperty().set("4 1/8 in");
    typing.field(PieceField.EDGE_BEFORE).textProperty().set("3 1/16 in");
    typing.field(PieceField.END).textProperty().set("held");
    typing.field(PieceField.END_LENGTH).textProperty().set("155 mm");
    typing.save();
    typing.begin(Objects.requireNonNull(new LoadForm(session).mend(saved.get(0).id())));
    typing.save();
    TestPiece after = Objects.requireNonNull(session.book().pieces().find(saved.get(0).id()));
    assertThat(after.measure().gaugeMm()).isEqualTo(104.775);
    assertThat(after.measure().edgeBeforeMm()).isEqualTo(77.7875);
  }
}
