package walebook.desk.today;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.cloth.StartReading;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.book.open.SqliteFiles;
import walebook.compare.ClassProgress;
import walebook.desk.LastFirst;
import walebook.desk.MeasuredClass;
import walebook.desk.PlannedClass;
import walebook.desk.Sessions;
import walebook.desk.cloths.ReadingFormViewModel;
import walebook.desk.common.Session;
import walebook.desk.common.Wish;
import walebook.desk.common.Worker;
import walebook.quantity.Unit;
import walebook.record.Grain;
import walebook.record.Lesson;
import walebook.record.MachineKind;
import walebook.record.Method;
import walebook.record.PieceAsked;
import walebook.record.PieceCode;
import walebook.record.PlannedPiece;
import walebook.record.ReadingLine;
import walebook.record.SchoolClass;
import walebook.record.SeamEnd;
import walebook.record.Student;
import walebook.record.TestPiece;
import walebook.record.Tier;
import walebook.record.Whose;

class TodayViewModelTest {
  @TempDir Path folder;

  @Test
  void theOnlyClassIsChosenAndNamesAreFoundByTyping() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("a.walebook"), 1)) {
      Session session = made.session(Worker.sameThread(), PlannedClass.OneFile.NONE);
      TodayViewModel today = new TodayViewModel(session);
      assertThat(today.schoolClassProperty().get()).isEqualTo(made.room.schoolClass);
      assertThat(today.found()).extracting(Student::name).containsExactly("Ada Pier", "Bo Quay");
      today.searchProperty().set("qu");
      assertThat(today.found()).extracting(Student::name).containsExactly("Bo Quay");
      today.chooseOnly();
      assertThat(today.studentProperty().get()).isEqualTo(made.room.second);
      assertThat(Objects.requireNonNull(today.dayProperty().get()).next()).isNull();
      today.leave();
      assertThat(today.dayProperty().get()).isNull();
    }
  }

  @Test
  void enterTakesNobodyWhileSeveralAreLeftAndAccentsNeedNotBeTyped() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("names.walebook"), 1)) {
      List<Student> others =
          Stream.of("Maxi Quill", "Maxine Håkonsen", "Çağla Łis")
              .map(
                  name ->
                      new Student(
                          Ids.next(), name, "X" + name.length(), Tier.STANDARD, Classroom.FRESH))
              .toList();
      for (Student each : others) {
        made.room.book.students().add(each);
        made.room
            .book
            .enrolments()
            .join(made.room.schoolClass.id(), each.id(), made.room.term.startsOn());
      }
      TodayViewModel today =
          new TodayViewModel(made.session(Worker.sameThread(), PlannedClass.OneFile.NONE));
      today.searchProperty().set("maxi");
      today.chooseOnly();
      assertThat(today.studentProperty().get()).isNull();
      assertThat(today.severalProperty().get()).startsWith("2 people");
      today.searchProperty().set("maxi q");
      assertThat(today.severalProperty().get()).isEmpty();
      today.chooseOnly();
      assertThat(today.studentProperty().get()).isEqualTo(others.get(0));
      today.leave();
      today.searchProperty().set("hakon");
      assertThat(today.found()).containsExactly(others.get(1));
      today.searchProperty().set("cagla l");
      today.chooseOnly();
      assertThat(today.studentProperty().get()).isEqualTo(others.get(2));
    }
  }

  @Test
  void myPlanShowsWhatIsDoneAndMyNextPiece() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("b.walebook"), 3)) {
      made.room.book.pieces().add(made.room.piece(SeamEnd.GAVE, 140));
      Session session = made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE);
      TodayViewModel today = new TodayViewModel(session);
      MyDay day = Objects.requireNonNull(today.dayProperty().get());
      assertThat(day.plan()).hasSize(4);
      assertThat(day.done()).isZero();
      NextPiece next = Objects.requireNonNull(day.next());
      assertThat(next.settings())
          .contains(
              "Grey jersey, 2 layers",
              "zigzag, width 2.5, length 2.5 on the dial",
              "pull it 3 times");
      assertThat(Objects.requireNonNull(next.stitch()).widthMm()).isEqualTo(2.5);
      assertThat(day.recent())
          .extracting(RecentPiece::says)
          .containsExactly("Grey jersey: gave at 140 mm");
      assertThat(today.lessonProperty().get()).contains("A seam that stretches");
      today.logNext();
      assertThat(session.wishProperty().get())
          .isEqualTo(new Wish("pieces", Wish.What.LOG_PLANNED, made.planned(0)));
    }
  }

  @Test
  void myNextReadingHasItsClothAndGrainAndHowManyAreDone() {
    try (Classroom room = Classroom.in(folder.resolve("r.walebook"))) {
      Lesson lesson = MeasuredClass.of(room);
      ReadingLine first = MeasuredClass.mine(room, lesson).get(0);
      Session session = Sessions.of(room);
      session.studentProperty().set(room.first);
      TodayViewModel today = new TodayViewModel(session);
      MyDay day = Objects.requireNonNull(today.dayProperty().get());
      assertThat(day.isReadingNext()).isTrue();
      assertThat(day.isMeasuredOnly()).isTrue();
      assertThat(day.readings().asked()).isEqualTo(12);
      MyReadings.Next next = Objects.requireNonNull(day.readings().next());
      String cloth =
          Objects.requireNonNull(
                  room.book.cloths().find(Objects.requireNonNull(first.planned().clothId())))
              .name();
      assertThat(next.says()).hasSize(3).startsWith(cloth).endsWith("reading 1 of 3");
      assertThat(next.says().get(1)).contains("-wise (");
      today.measureNext();
      assertThat(session.wishProperty().get())
          .isEqualTo(new Wish("cloths", Wish.What.LOG_PLANNED, first.planned().id()));
      ReadingFormViewModel form = new ReadingFormViewModel(session);
      form.begin(
          Objects.requireNonNull(new StartReading(room.book).of(first.planned().id())), Unit.MM);
      form.fields().field("stretched").text().set("150");
      form.save();
      MyReadings now = Objects.requireNonNull(today.dayProperty().get()).readings();
      assertThat(now.done()).isEqualTo(1);
      assertThat(now.lines().get(0).result()).isEqualTo("50.0 %");
      assertThat(Objects.requireNonNull(now.next()).says()).endsWith("reading 2 of 3");
    }
  }

  @Test
  void aReadingOfAnEarlierLessonSaysSoAndComesAfterThePiecesOfThisOne() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("s.walebook"), 1)) {
      MeasuredClass.of(made.room, "measuring-stretch", LocalDate.of(2026, 9, 28));
      TodayViewModel today =
          new TodayViewModel(made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE));
      MyDay day = Objects.requireNonNull(today.dayProperty().get());
      assertThat(day.isReadingNext()).isFalse();
      assertThat(day.isMeasuredOnly()).isFalse();
      assertThat(Objects.requireNonNull(day.readings().next()).says())
          .contains("left over from the lesson Measuring stretch and recovery, 28 Sep 2026");
    }
  }

  @Test
  void aPieceOfAnotherLessonSaysOfWhichAndComesAfterThoseOfTheLessonInHand() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("l.walebook"), 1)) {
      // The class clock stands on the day of the planned lesson, before the later one.
      Lesson later = lesson(made, "Hems that stretch", LocalDate.of(2026, 10, 12));
      Lesson earlier = lesson(made, "First seams", LocalDate.of(2026, 9, 28));
      PlannedPiece left = planned(made, earlier);
      PlannedPiece coming = planned(made, later);
      TodayViewModel today =
          new TodayViewModel(made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE));
      NextPiece inHand = next(today);
      assertThat(inHand.plannedId()).isEqualTo(made.planned(0));
      assertThat(inHand.ofLesson()).isEmpty();
      assertThat(Objects.requireNonNull(today.dayProperty().get()).plan())
          .filteredOn(row -> row.plannedId().equals(left.id()))
          .extracting(PlanRow::result)
          .containsExactly("left over from the lesson First seams, 28 Sep 2026");
      for (int i = 0; i < 4; i++) {
        logged(made, made.plan.get(i));
      }
      today = new TodayViewModel(made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE));
      assertThat(next(today).plannedId()).isEqualTo(left.id());
      assertThat(next(today).ofLesson())
          .isEqualTo("left over from the lesson First seams, 28 Sep 2026");
      logged(made, left);
      today = new TodayViewModel(made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE));
      assertThat(next(today).plannedId()).isEqualTo(coming.id());
      assertThat(next(today).ofLesson())
          .isEqualTo("for the lesson to come, Hems that stretch, 12 Oct 2026");
    }
  }

  @Test
  void aPieceForAGarmentSaysSoEverywhereAndIsNoPartOfItsLessonsPlan() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("g.walebook"), 1)) {
      PlannedPiece garment = planned(made, made.lesson, PlannedPiece.FOR_GARMENT);
      for (int i = 0; i < 4; i++) {
        logged(made, made.plan.get(i));
      }
      Session session = made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE);
      TodayViewModel today = new TodayViewModel(session);
      assertThat(next(today).plannedId()).isEqualTo(garment.id());
      assertThat(next(today).ofLesson()).isEqualTo("for your garment (Decide)");
      assertThat(Objects.requireNonNull(today.dayProperty().get()).plan())
          .extracting(PlanRow::asks)
          .filteredOn(says -> says.endsWith("for your garment (Decide)"))
          .hasSize(1);
      ClassProgress.Row row = progress(made);
      assertThat(row.perLesson().get(0).planned()).isEqualTo(4);
      assertThat(row.own()).isZero();
      logged(made, garment);
      row = progress(made);
      assertThat(row.perLesson().get(0).logged()).isEqualTo(4);
      assertThat(row.own()).isEqualTo(1);
    }
  }

  /** Packs write a width of 0 for the straight stitch of a plan. */
  @Test
  void aStraightStitchIsAskedForWithoutAWidth() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("w.walebook"), 1)) {
      Student bo = made.room.second;
      PlannedPiece like = made.plan.get(0);
      PieceAsked asked =
          new PieceAsked(
              Grain.COURSE,
              2,
              Method.SEAM,
              MachineKind.SEWING,
              "301",
              0.0,
              2.5,
              null,
              "",
              "",
              null,
              1);
      PlannedPiece straight =
          new PlannedPiece(
              Ids.next(),
              made.lesson.id(),
              bo.id(),
              PieceCode.draw(new Random(5)),
              1,
              false,
              false,
              "",
              like.clothId(),
              asked,
              Classroom.FRESH);
      made.room.book.lessons().plan(List.of(straight));
      Session session = made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE);
      session.studentProperty().set(bo);
      TodayViewModel today = new TodayViewModel(session);
      assertThat(next(today).settings()).contains("straight stitch, length 2.5 on the dial");
      assertThat(Objects.requireNonNull(today.dayProperty().get()).plan().get(0).asks())
          .endsWith("straight stitch, length 2.5");
    }
  }

  private static ClassProgress.Row progress(PlannedClass made) {
    return ClassProgress.of(made.room.book, made.room.schoolClass.id()).rows().stream()
        .filter(each -> each.student().equals(made.room.first))
        .findFirst()
        .orElseThrow();
  }

  private static Lesson lesson(PlannedClass made, String title, LocalDate on) {
    Lesson lesson =
        new Lesson(
            Ids.next(),
            made.room.schoolClass.id(),
            made.lesson.packId(),
            title,
            on,
            Classroom.FRESH);
    made.room.book.lessons().add(lesson);
    return lesson;
  }

  private static PlannedPiece planned(PlannedClass made, Lesson lesson) {
    return planned(made, lesson, "");
  }

  private static PlannedPiece planned(PlannedClass made, Lesson lesson, String cell) {
    PlannedPiece like = made.plan.get(0);
    PlannedPiece planned =
        new PlannedPiece(
            Ids.next(),
            lesson.id(),
            made.room.first.id(),
            PieceCode.draw(new Random(lesson.title().hashCode())),
            1,
            false,
            false,
            cell,
            like.clothId(),
            like.asked(),
            Classroom.FRESH);
    made.room.book.lessons().plan(List.of(planned));
    return planned;
  }

  private static void logged(PlannedClass made, PlannedPiece planned) {
    TestPiece sewn = made.room.piece(SeamEnd.GAVE, 140);
    made.room
        .book
        .pieces()
        .add(
            new TestPiece(
                sewn.id(),
                planned.code(),
                new Whose(
                    made.room.schoolClass.id(),
                    made.room.first.id(),
                    planned.lessonId(),
                    planned.id(),
                    LocalDate.of(2026, 10, 5)),
                sewn.cloth(),
                sewn.setting(),
                sewn.measure(),
                sewn.seen(),
                sewn.parent(),
                sewn.stamp()));
  }

  private static NextPiece next(TodayViewModel today) {
    return Objects.requireNonNull(Objects.requireNonNull(today.dayProperty().get()).next());
  }

  @Test
  void aBookWithoutClassesLeadsToTheTermRecord() {
    try (Book book =
        new SqliteFiles()
            .make(folder.resolve("c.walebook"), "Empty", false, Unit.MM, Classroom.CLOCK)
            .value()) {
      Session session = Sessions.bare(book, Worker.sameThread(), PlannedClass.OneFile.NONE);
      TodayViewModel today = new TodayViewModel(session);
      assertThat(today.loadedProperty().get()).isTrue();
      assertThat(today.classes()).isEmpty();
      today.toTerm();
      assertThat(session.wishProperty().get()).isEqualTo(Wish.show("term"));
    }
  }

  @Test
  void anotherClassAsksAnewWhoIsThere() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("d.walebook"), 1)) {
      Session session = made.sitting(Worker.sameThread(), PlannedClass.OneFile.NONE);
      TodayViewModel today = new TodayViewModel(session);
      today.schoolClassProperty().set(null);
      assertThat(today.studentProperty().get()).isNull();
    }
  }

  @Test
  void anAnswerThatComesLateOffersNobodyOfAnotherClass() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("late.walebook"), 1)) {
      SchoolClass other =
          new SchoolClass(Ids.next(), made.room.term.id(), null, "Tuesday", "", Classroom.FRESH);
      made.room.book.classes().add(other);
      LastFirst work = new LastFirst();
      Session session = made.sitting(work.worker(), PlannedClass.OneFile.NONE);
      TodayViewModel today = new TodayViewModel(session);
      session.schoolClassProperty().set(other);
      work.workAll();
      assertThat(today.found()).isEmpty();
      assertThat(today.dayProperty().get()).isNull();
    }
  }
}
