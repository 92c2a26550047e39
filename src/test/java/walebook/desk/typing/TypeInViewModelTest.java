package walebook.desk.typing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.card.Shorthand;
import walebook.act.lesson.TakeUpLesson;
import walebook.act.piece.PieceField;
import walebook.act.piece.PieceRoom;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.desk.PlannedClass;
import walebook.desk.RoomBook;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.desk.common.Worker;
import walebook.lesson.Packs;
import walebook.record.Broke;
import walebook.record.Lesson;
import walebook.record.PieceCode;
import walebook.record.SeamEnd;
import walebook.record.TestPiece;
import walebook.words.Words;

class TypeInViewModelTest {
  @TempDir Path folder;

  private static TypeInViewModel open(Session session, UUID lesson) {
    TypeInViewModel model = new TypeInViewModel(session);
    session.wish(new Wish(TypeInViewModel.PLACE, Wish.What.OPEN, lesson));
    return model;
  }

  private static CardCell cell(TypeInViewModel model, int row, String column) {
    return Objects.requireNonNull(model.rows().get(row).cell(column));
  }

  private static void type(TypeInViewModel model, int row, String column, String text) {
    cell(model, row, column).textProperty().set(text);
    cell(model, row, column).leave();
  }

  private PlannedClass made() {
    return PlannedClass.in(folder.resolve("a.walebook"), 1);
  }

  private static TypeInViewModel open(PlannedClass made) {
    Session session = made.session(Worker.sameThread(), PlannedClass.OneFile.NONE);
    session.schoolClassProperty().set(made.room.schoolClass);
    return open(session, made.lesson.id());
  }

  @Test
  void aClassOfTwelveWithFivePiecesEachIsTypedWithTheDayOfItsLesson() {
    try (Classroom room = RoomBook.in(folder.resolve("b.walebook"))) {
      UUID lesson = room.book.lessons().of(room.schoolClass.id()).get(0).id();
      TypeInViewModel model = open(Sessions.of(room), lesson);
      assertThat(model.rows()).hasSize(60);
      assertThat(model.on().text().get()).isEqualTo("2026-09-21");
      int typed = 0;
      for (int row = 0; row < 60; row++) {
        if (!model.rows().get(row).isLogged()) {
          type(model, row, "end", "g");
          type(model, row, "end-length", "140");
          typed++;
        }
      }
      int before = room.book.pieces().count(PieceFilter.ALL);
      model.save();
      assertThat(typed).isEqualTo(12);
      assertThat(room.book.pieces().count(PieceFilter.ALL)).isEqualTo(before + 12);
      assertThat(room.book.pieces().list(PieceFilter.ALL))
          .filteredOn(each -> each.measure().counting() != null)
          .filteredOn(each -> each.seen().grade() == null)
          .hasSize(12)
          .allMatch(each -> each.whose().sewnOn().equals(LocalDate.of(2026, 9, 21)));
      assertThat(model.rows()).allMatch(CardRow::isLogged);
    }
  }

  @Test
  void theLessonThatWasAskedForIsOpenedAndNoOther() {
    try (PlannedClass made = made()) {
      LocalDate before = made.lesson.taughtOn().minusDays(7);
      Lesson asked =
          new TakeUpLesson(made.room.book, Classroom.CLOCK)
              .takeUp(
                  Packs.seam(),
                  made.room.schoolClass.id(),
                  before,
                  Map.of("a", made.room.cloth.id(), "b", made.room.cloth.id()),
                  7)
              .value();
      for (boolean askedFirst : new boolean[] {true, false}) {
        Deque<Runnable> waiting = new ArrayDeque<>();
        Session session =
            made.session(new Worker(waiting::add, Runnable::run), PlannedClass.OneFile.NONE);
        session.schoolClassProperty().set(made.room.schoolClass);
        TypeInViewModel model = new TypeInViewModel(session);
        if (askedFirst) {
          model.open(asked.id());
          model.openLatest();
        } else {
          model.openLatest();
          model.open(asked.id());
        }
        while (!waiting.isEmpty()) {
          waiting.remove().run();
        }
        assertThat(Objects.requireNonNull(model.sheetProperty().get()).lesson()).isEqualTo(asked);
        assertThat(model.busyProperty().get()).isFalse();
      }
    }
  }

  @Test
  void whatIsInTheWayStaysWithItsReasonAndTheRestIsSaved() {
    try (PlannedClass made = made()) {
      TypeInViewModel model = open(made);
      type(model, 0, "end", "h");
      type(model, 0, "end-length", "150");
      type(model, 1, "end-length", "14o");
      assertThat(cell(model, 0, "end").text()).isEqualTo("held");
      assertThat(model.rows().get(1).state()).isEqualTo(CardRow.State.IN_THE_WAY);
      model.save();
      List<TestPiece> pieces = made.room.book.pieces().list(PieceFilter.ALL);
      assertThat(pieces).hasSize(1);
      assertThat(Objects.requireNonNull(pieces.get(0).measure().counting()).end())
          .isEqualTo(SeamEnd.HELD);
      assertThat(model.rows().get(0).state()).isEqualTo(CardRow.State.LOGGED);
      assertThat(cell(model, 1, "end-length").text()).isEqualTo("14o");
      assertThat(cell(model, 1, "end-length").problemProperty().get()).isNotNull();
      assertThat(model.rows().get(2).state()).isEqualTo(CardRow.State.OPEN);
      assertThat(model.noticeProperty().get().says()).contains("1");
    }
  }

  @Test
  void whatIsOnlyUnlikelyIsTakenOnASecondSave() {
    try (PlannedClass made = made()) {
      TypeInViewModel model = open(made);
      type(model, 0, "end", "h");
      type(model, 0, "end-length", "400");
      assertThat(model.rows().get(0).state()).isEqualTo(CardRow.State.ASKS);
      model.save();
      assertThat(made.room.book.pieces().count(PieceFilter.ALL)).isZero();
      model.save();
      assertThat(made.room.book.pieces().count(PieceFilter.ALL)).isEqualTo(1);
    }
  }

  @Test
  void aWholeColumnIsSetAtOnceButForWhatWasTypedAndCanBeTakenBack() {
    try (PlannedClass made = made()) {
      TypeInViewModel model = open(made);
      type(model, 2, "gauge", "60");
      type(model, 0, "gauge", "50");
      model.cursor().go(0, "gauge");
      model.setColumn();
      assertThat(cell(model, 1, "gauge").text()).isEqualTo("50");
      assertThat(cell(model, 2, "gauge").text()).isEqualTo("60");
      assertThat(model.rows().get(1).state()).isEqualTo(CardRow.State.OPEN);
      Objects.requireNonNull(model.noticeProperty().get().undo()).run();
      assertThat(cell(model, 1, "gauge").text()).isEqualTo("100");
      assertThat(cell(model, 0, "gauge").text()).isEqualTo("50");
    }
  }

  @Test
  void theValueAboveIsRepeatedAlsoFromALoggedCard() {
    try (PlannedClass made = made()) {
      TypeInViewModel model = open(made);
      type(model, 0, "end-length", "150");
      type(model, 0, "end", "g");
      model.save();
      model.cursor().go(1, "end-length");
      model.repeatAbove();
      assertThat(cell(model, 1, "end-length").text()).isEqualTo("150");
    }
  }

  @Test
  void enterGoesOnToWhatIsFilledByHandAlongOrDown() {
    try (PlannedClass made = made()) {
      TypeInViewModel model = open(made);
      GridCursor cursor = model.cursor();
      assertThat(cursor.atProperty().get()).isEqualTo(new GridCursor.Spot(0, "edge-sewn"));
      cursor.onward(false, 1);
      assertThat(cursor.atProperty().get()).isEqualTo(new GridCursor.Spot(0, "edge-pressed"));
      cursor.onward(true, 1);
      assertThat(cursor.atProperty().get()).isEqualTo(new GridCursor.Spot(1, "edge-pressed"));
      cursor.go(3, "edge-sewn");
      cursor.onward(true, 1);
      assertThat(cursor.atProperty().get()).isEqualTo(new GridCursor.Spot(0, "edge-pressed"));
      cursor.go(0, "remark");
      cursor.onward(false, 1);
      assertThat(cursor.atProperty().get()).isEqualTo(new GridCursor.Spot(1, "edge-sewn"));
      cursor.onward(false, -1);
      assertThat(cursor.atProperty().get()).isEqualTo(new GridCursor.Spot(0, "remark"));
      cursor.horizontal(1);
      assertThat(cursor.atProperty().get()).isEqualTo(new GridCursor.Spot(1, "gauge"));
    }
  }

  @Test
  void aCardThatSaysOtherwiseThanTheBookIsTold() {
    try (PlannedClass made = made()) {
      TypeInViewModel model = open(made);
      type(model, 0, "end", "g");
      type(model, 0, "end-length", "150");
      model.save();
      assertThat(cell(model, 0, "end-length").hint()).isEqualTo("150");
      type(model, 0, "end-length", "15 cm");
      assertThat(model.rows().get(0).state()).isEqualTo(CardRow.State.LOGGED);
      type(model, 0, "end-length", "155");
      assertThat(model.rows().get(0).state()).isEqualTo(CardRow.State.CLASH);
      assertThat(model.rowSays(model.rows().get(0))).contains("The book has 150");
      model.save();
      assertThat(made.room.book.pieces().count(PieceFilter.ALL)).isEqualTo(1);
      assertThat(model.noticeProperty().get().says())
          .contains("say otherwise than the book: 1")
          .doesNotContain("Nothing is typed");
      assertThat(model.cursor().atProperty().get())
          .as("at what differs")
          .isEqualTo(new GridCursor.Spot(0, "end-length"));
      type(model, 1, "end", "g");
      type(model, 1, "end-length", "140");
      model.save();
      assertThat(model.noticeProperty().get().says())
          .contains("Pieces saved: 1.", "say otherwise than the book: 1");
      type(model, 0, "end-length", "150");
      model.save();
      assertThat(model.noticeProperty().get().says()).isEqualTo("Nothing is typed yet.");
    }
  }

  @Test
  void nothingTypedIsLostWhenTheWindowCloses() {
    try (PlannedClass made = made()) {
      TypeInViewModel model = open(made);
      type(model, 1, "end-length", "14o");
      model.on().text().set("2026-09-28");
      model.addFree();
      type(model, 4, "student", "bo");
      type(model, 4, "remark", "beside");
      model.cursor().go(0, "gauge");
      type(model, 0, "gauge", "50");
      model.setColumn();
      model.rest();
      TypeInViewModel again = open(made);
      assertThat(cell(again, 1, "end-length").text()).isEqualTo("14o");
      assertThat(cell(again, 3, "gauge").text()).isEqualTo("50");
      assertThat(again.on().text().get()).isEqualTo("2026-09-28");
      assertThat(cell(again, 4, "remark").text()).isEqualTo("beside");
      assertThat(again.rows().get(4).name(false)).isEqualTo("Bo Quay");
      assertThat(again.noticeProperty().get().says()).isNotEmpty();
    }
  }

  @Test
  void aCardBesideThePlanIsLoggedForItsStudentUnderANewCode() {
    try (PlannedClass made = made()) {
      TypeInViewModel model = open(made);
      model.addFree();
      type(model, 4, "student", "S02");
      type(model, 4, "cloth", "grey");
      type(model, 4, "grain", "c");
      type(model, 4, "stitch", "304");
      type(model, 4, "end", "g");
      type(model, 4, "end-length", "140");
      assertThat(model.rows().get(4).problems()).isEmpty();
      model.save();
      TestPiece piece = made.room.book.pieces().list(PieceFilter.ALL).get(0);
      assertThat(piece.whose().studentId()).isEqualTo(made.room.second.id());
      assertThat(piece.whose().plannedId()).isNull();
      assertThat(piece.measure().measuredBy()).isEqualTo(made.room.second.id());
      assertThat(PieceCode.isCode(piece.code())).isTrue();
      // What was saved does not come back as a draft.
      assertThat(open(made).rows()).hasSize(4);
    }
  }

  @Test
  void theSameCodeOnTwoCardsShowsOnBoth() {
    try (PlannedClass made = made()) {
      TypeInViewModel model = open(made);
      model.addFree();
      model.addFree();
      type(model, 4, "remark", "one");
      type(model, 5, "remark", "two");
      String code = PieceCode.draw(new java.util.Random(9));
      type(model, 4, "code", code);
      type(model, 5, "code", PieceCode.spoken(code));
      for (int row = 4; row < 6; row++) {
        assertThat(Objects.requireNonNull(cell(model, row, "code").problemProperty().get()).code())
            .isEqualTo("card.code-twice");
      }
      type(model, 5, "code", made.plan.get(0).code());
      assertThat(cell(model, 5, "code").problemProperty().get()).isNotNull();
      assertThat(cell(model, 4, "code").problemProperty().get()).isNull();
    }
  }

  @Test
  void aDayThatIsNoneOrIsStillToComeIsSaidAtItsField() {
    try (PlannedClass made = made()) {
      TypeInViewModel model = open(made);
      type(model, 0, "remark", "x");
      for (String day : new String[] {"yesterday", "2026-12-24"}) {
        model.on().text().set(day);
        model.save();
        assertThat(model.on().problem().get()).as(day).isNotNull();
      }
      assertThat(made.room.book.pieces().count(PieceFilter.ALL)).isZero();
    }
  }

  @Test
  void namesAreHiddenWhereTheyAreHiddenElsewhere() {
    try (PlannedClass made = made()) {
      TypeInViewModel model = open(made);
      model.session().namesHiddenProperty().set(true);
      assertThat(model.rowSays(model.rows().get(0))).startsWith("S01");
    }
  }

  @Test
  void choicesStandInWordsAndAreTakenByWordKeyOrFirstLetters() {
    try (PlannedClass made = made()) {
      TypeInViewModel model = open(made);
      type(model, 0, "end", "g");
      type(model, 0, "end-length", "150");
      type(model, 0, "broke", "n");
      type(model, 0, "faults", "wavy; tunn,1,cross");
      assertThat(cell(model, 0, "broke").text()).isEqualTo("needle thread");
      assertThat(cell(model, 0, "faults").text())
          .isEqualTo("wavy seam; tunnelling, 1, at a crossing");
      type(model, 1, "end", "g");
      type(model, 1, "end-length", "150");
      type(model, 1, "broke", "under-thread");
      assertThat(cell(model, 1, "broke").text()).isEqualTo("bobbin or looper");
      model.save();
      assertThat(made.room.book.pieces().list(PieceFilter.ALL))
          .extracting(each -> each.measure().broke())
          .containsExactlyInAnyOrder(Broke.NEEDLE_THREAD, Broke.UNDER_THREAD);
      assertThat(cell(model, 0, "broke").hint()).isEqualTo("needle thread");
      assertThat(cell(model, 0, "faults").hint()).contains("wavy seam, all along, 2");
      type(model, 0, "faults", "tunnelling; wavy seam");
      assertThat(model.rows().get(0).state()).isEqualTo(CardRow.State.LOGGED);
      type(model, 0, "broke", "bobbin");
      assertThat(model.rowSays(model.rows().get(0))).contains("The book has needle thread here");
    }
  }

  @Test
  void whatIsNoChoiceIsAnsweredInWords() {
    try (PlannedClass made = made()) {
      TypeInViewModel model = open(made);
      type(model, 0, "broke", "zip");
      assertThat(HereSays.spot(model.session(), model.rows().get(0), "broke"))
          .contains("zip", "needle thread, bobbin or looper, cloth, opened")
          .doesNotContain("needle-thread");
      assertThat(HereSays.spot(model.session(), model.rows().get(1), "broke"))
          .contains("first letters are enough: needle thread");
      // A field goes by the name above its column.
      type(model, 0, "broke", "");
      type(model, 0, "end-length", "140");
      assertThat(model.rowSays(model.rows().get(0))).contains("pulled along the seam: say whether");
      type(model, 0, "grade", "9");
      assertThat(model.rowSays(model.rows().get(0))).contains("how it looks: 9");
      cell(model, 1, "faults").textProperty().set("wavy seam; pu");
      assertThat(HereSays.spot(model.session(), model.rows().get(1), "faults"))
          .endsWith("enough: puckering");
    }
  }

  @Test
  void everyChoiceHasWordsOfItsOwnAndComesBackFromThem() {
    try (PlannedClass made = made()) {
      PieceRoom room = Objects.requireNonNull(open(made).sheetProperty().get()).room();
      CardChoices choices = new CardChoices(Words.english(), room);
      int fields = 0;
      for (PieceField field : PieceField.values()) {
        List<String> keys = Shorthand.keys(field, room);
        fields += keys.isEmpty() ? 0 : 1;
        assertThat(choices.all(field)).doesNotHaveDuplicates().hasSameSizeAs(keys);
        for (String key : keys) {
          assertThat(choices.keys(field, choices.says(field, key))).isEqualTo(key);
          assertThat(choices.keys(field, key)).isEqualTo(key);
        }
      }
      assertThat(fields).isGreaterThan(10);
    }
  }
}
