package walebook.desk.classroom;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.desk.LastFirst;
import walebook.desk.PlannedClass;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.quantity.Unit;
import walebook.record.BookInfo;
import walebook.record.Mark;
import walebook.record.MarkedValue;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;

class OddViewModelTest {
  @TempDir Path folder;

  /** A gauge of 100 mm read 510 mm: 410 % is beyond any limit. */
  private static TestPiece odd(Classroom room) {
    TestPiece piece = room.piece(SeamEnd.GAVE, 510);
    room.book.pieces().add(piece);
    return piece;
  }

  private static OddViewModel model(Session session) {
    OddViewModel model = new OddViewModel(new FiltersViewModel(session));
    model.asking().shown(true);
    return model;
  }

  private static OddViewModel.Row seam(OddViewModel model) {
    return requireNonNull(model.foundProperty().get()).stream()
        .filter(each -> each.odd().value() == MarkedValue.SEAM_STRETCH)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void nothingIsAskedUntilThePartIsLookedAt() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      odd(room);
      Session session = Sessions.of(room);
      OddViewModel model = new OddViewModel(new FiltersViewModel(session));
      assertThat(model.foundProperty().get()).isNull();
      model.asking().shown(true);
      assertThat(model.foundProperty().get()).isNotEmpty();
    }
  }

  @Test
  void anOddPieceOpensInItsPlace() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      TestPiece piece = odd(room);
      Session session = Sessions.of(room);
      OddViewModel model = model(session);
      model.choose(seam(model));
      model.openChosen();
      assertThat(session.wishProperty().get())
          .isEqualTo(new Wish("pieces", Wish.What.OPEN, piece.id()));
    }
  }

  @Test
  void settingAsideNeedsAReasonAndIsTakenBack() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      odd(room);
      OddViewModel model = model(Sessions.of(room));
      model.choose(seam(model));
      model.setAside();
      assertThat(model.form().field(OddViewModel.REASON).problem().get()).isNotNull();
      model.form().field(OddViewModel.REASON).text().set("clamp slipped");
      model.setAside();
      assertThat(requireNonNull(seam(model).odd().mark()).mark()).isEqualTo(Mark.SET_ASIDE);
      requireNonNull(model.noticeProperty().get().undo()).run();
      assertThat(seam(model).odd().mark()).isNull();
    }
  }

  @Test
  void aMistypedValueIsPutRightAndIsOddNoMore() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      TestPiece piece = odd(room);
      OddViewModel model = model(Sessions.of(room));
      model.choose(seam(model));
      model.form().field(OddViewModel.RIGHT).text().set("long");
      model.mistyped();
      assertThat(model.form().field(OddViewModel.RIGHT).problem().get()).isNotNull();
      model.form().field(OddViewModel.RIGHT).text().set("151");
      model.mistyped();
      TestPiece now = requireNonNull(room.book.pieces().find(piece.id()));
      assertThat(requireNonNull(now.measure().counting()).endMm()).isEqualTo(151);
      assertThat(model.chosenProperty().get()).isNull();
    }
  }

  /** 960 mm at a gauge of 100 mm: the log form asks, so this does; it is still odd after a yes. */
  @Test
  void anUnlikelyRightNumberIsAskedAboutAndStaysOddOnceConfirmed() {
    try (Classroom room = Classroom.in(folder.resolve("asked.walebook"))) {
      TestPiece piece = odd(room);
      OddViewModel model = model(Sessions.of(room));
      model.choose(seam(model));
      model.form().field(OddViewModel.RIGHT).text().set("960");
      model.mistyped();
      assertThat(requireNonNull(model.form().field(OddViewModel.RIGHT).problem().get()).code())
          .isEqualTo("stretch.unlikely");
      assertThat(room.book.pieces().find(piece.id())).isEqualTo(piece);
      model.mistyped();
      assertThat(seam(model).number()).isEqualTo("860.0");
      assertThat(seam(model).odd().isLookedAt()).isFalse();
      assertThat(seam(model).marked()).isEqualTo("put right, and still odd");
    }
  }

  @Test
  void aYesForOneNumberIsNoneForAnother() {
    try (Classroom room = Classroom.in(folder.resolve("yes.walebook"))) {
      TestPiece piece = odd(room);
      OddViewModel model = model(Sessions.of(room));
      model.choose(seam(model));
      model.form().field(OddViewModel.RIGHT).text().set("600");
      model.mistyped();
      assertThat(model.form().isConfirmed()).isTrue();
      model.fieldProperty().set("gauge");
      assertThat(model.form().isConfirmed()).isFalse();
      model.mistyped();
      assertThat(room.book.pieces().find(piece.id())).isEqualTo(piece);
    }
  }

  /** The gauge is typed, and it is the length reached that is asked about beside it. */
  @Test
  void whatIsAskedOfAnotherLengthStandsWhereTheRightOneWasTyped() {
    try (Classroom room = Classroom.in(folder.resolve("beside.walebook"))) {
      odd(room);
      OddViewModel model = model(Sessions.of(room));
      model.choose(seam(model));
      model.fieldProperty().set("gauge");
      model.form().field(OddViewModel.RIGHT).text().set("600");
      model.mistyped();
      assertThat(requireNonNull(model.form().field(OddViewModel.RIGHT).problem().get()).code())
          .isEqualTo("length.below-gauge");
    }
  }

  @Test
  void aKeptValueStaysInTheListAsKept() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      odd(room);
      OddViewModel model = model(Sessions.of(room));
      model.choose(seam(model));
      model.keep();
      assertThat(requireNonNull(seam(model).odd().mark()).mark()).isEqualTo(Mark.KEPT);
    }
  }

  /** The piece reads 510 mm at a gauge of 100 mm; one inch is 25.4 mm: 510 / 25.4 = 20.08. */
  @Test
  void whatCanBePutRightIsAskedWithItsUnitAndWhatStandsThere() {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      odd(room);
      OddViewModel model = model(Sessions.of(room));
      model.choose(seam(model));
      assertThat(model.fields().stream().map(model::fieldName))
          .containsExactly("length reached, mm (now 510)", "gauge, mm (now 100)");
      assertThat(model.rightName()).isEqualTo("the right one, mm");
      BookInfo info = room.book.info();
      room.book.keep(
          new BookInfo(
              info.id(),
              info.name(),
              info.invented(),
              Unit.INCH,
              info.stamp().next(Classroom.NOW)));
      model.choose(seam(model));
      assertThat(model.fieldName("end-length")).isEqualTo("length reached, in (now 20.08)");
      assertThat(model.rightName()).isEqualTo("the right one, in");
    }
  }

  @Test
  void theValueThatWasChosenLastIsLookedAt() {
    try (Classroom room = Classroom.in(folder.resolve("late.walebook"))) {
      odd(room);
      odd(room);
      LastFirst work = new LastFirst();
      Session session = Sessions.bare(room.book, work.worker(), PlannedClass.OneFile.NONE);
      session.schoolClassProperty().set(room.schoolClass);
      OddViewModel model = model(session);
      work.workAll();
      List<OddViewModel.Row> rows = requireNonNull(model.foundProperty().get());
      model.choose(rows.get(0));
      model.choose(rows.get(1));
      work.workAll();
      assertThat(model.chosenProperty().get()).isEqualTo(rows.get(1));
      model.choose(rows.get(0));
      model.choose(null);
      work.workAll();
      assertThat(model.chosenProperty().get()).isNull();
    }
  }
}
