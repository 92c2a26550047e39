package walebook.act.book;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.decide.AnswerGarment;
import walebook.act.lesson.ReadLimits;
import walebook.act.lesson.ReadTaught;
import walebook.act.lesson.ReplanLesson;
import walebook.act.piece.JudgePiece;
import walebook.act.piece.LoadPieceRoom;
import walebook.act.piece.PieceRoom;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.PieceFilter;
import walebook.book.open.SqliteFiles;
import walebook.compare.ClassProgress;
import walebook.compare.ClothStretch;
import walebook.garment.Advice;
import walebook.garment.Check;
import walebook.lesson.LessonPack;
import walebook.lesson.ReadPack;
import walebook.record.GarmentSheet;
import walebook.record.Grain;
import walebook.record.Lesson;
import walebook.record.SeamEnd;
import walebook.record.Step;
import walebook.record.TaughtPack;
import walebook.record.TestPiece;
import walebook.statistics.Proportion;
import walebook.tables.SharedTables;
import walebook.working.Verdict;

/** The invented class: its size, that it can be made again, and that there is something to find. */
class MakeDemoBookTest {
  @TempDir static Path folder;
  private static Book book;
  private static List<TestPiece> pieces;

  @BeforeAll
  static void make() {
    MakeDemoBook demo = new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK);
    book = demo.make(folder.resolve(MakeDemoBook.FILE), MakeDemoBook.SEED).value();
    pieces = book.pieces().list(PieceFilter.ALL);
  }

  @AfterAll
  static void close() {
    book.close();
  }

  @Test
  void saysThatItIsInvented() {
    assertThat(book.info().invented()).isTrue();
    assertThat(book.info().name()).contains("invented");
  }

  @Test
  void hasTheWholeClass() {
    assertThat(book.students().all()).hasSize(12);
    assertThat(book.tutors().all()).hasSize(1);
    assertThat(book.cloths().all()).hasSize(5);
    assertThat(book.machines().all()).hasSize(7);
    assertThat(book.classes().all()).hasSize(1);
    assertThat(book.lessons().of(book.classes().all().get(0).id())).hasSize(6);
    assertThat(pieces).hasSizeBetween(270, 330);
    assertThat(pieces).filteredOn(each -> each.parent() != null).hasSizeBetween(20, 80);
    assertThat(pieces)
        .filteredOn(each -> each.measure().pulls().size() == 3)
        .hasSizeGreaterThan(30);
  }

  /** As any class's lessons are: planned again for the same students, nothing is dealt anew. */
  @Test
  void itsLessonsAreTakenUpAndDealtAsTheWindowDoesIt() {
    ReadTaught taught = new ReadTaught(book, new ReadPack());
    for (Lesson lesson : book.lessons().of(book.classes().all().get(0).id())) {
      LessonPack pack = taught.pack(lesson.packId()).value();
      assertThat(book.lessons().planOf(lesson.id()))
          .allMatch(each -> each.asked().readings() == pack.measure().readings());
      ReplanLesson.Replanned change =
          new ReplanLesson(book, Classroom.CLOCK)
              .replan(lesson, ReadLimits.Typed.NOTHING, 1)
              .value();
      assertThat(change.handedOut()).as(lesson.title()).isZero();
      assertThat(change.takenBack()).as(lesson.title()).isZero();
    }
    assertThat(book.packShelf().all())
        .extracting(TaughtPack::name)
        .containsExactly("seam-that-stretches-pulled-more");
  }

  @Test
  void everyClothIsReadBothWaysBySeveralStudents() {
    var stretches = ClothStretch.of(book.clothLog().allReadings());
    book.cloths()
        .all()
        .forEach(
            cloth -> {
              Map<Grain, ClothStretch> known = requireNonNull(stretches.get(cloth.id()));
              assertThat(known).containsKeys(Grain.WALE, Grain.COURSE);
              assertThat(requireNonNull(known.get(Grain.COURSE)).percent())
                  .isGreaterThan(requireNonNull(known.get(Grain.WALE)).percent());
              assertThat(
                      book.clothLog().readingsOf(cloth.id()).stream()
                          .map(each -> each.measuredBy())
                          .distinct())
                  .hasSizeGreaterThan(3);
            });
  }

  @Test
  void wideZigzagsHoldMoreOftenThanStraightSeams() {
    Proportion straight = held(each -> each.setting().stitchType().equals("301"));
    Proportion wide =
        held(
            each ->
                each.setting().stitchType().equals("304")
                    && each.setting().dialWidth() != null
                    && each.setting().dialWidth() >= 3);
    assertThat(wide.wilson(0.95).low()).isGreaterThan(straight.wilson(0.95).high());
  }

  @Test
  void aHeavyFootMakesWaves() {
    assertThat(meanEdge(Step.HIGHER)).isGreaterThan(meanEdge(Step.NORMAL) + 1);
    assertThat(meanEdge(Step.NORMAL)).isGreaterThan(meanEdge(Step.LOWER));
  }

  @Test
  void oneGarmentLiesTheWrongWayAndOneNeckbandDoesNotPass() {
    AnswerGarment act = new AnswerGarment(book, SharedTables.read());
    List<GarmentSheet> sheets = book.garments().all();
    assertThat(sheets).hasSize(2);
    GarmentSheet top = sheet(sheets, "fitted-top");
    assertThat(act.answer(top, book.garments().bodyOf(top.id())).advice().get(0).action())
        .isEqualTo(Advice.Action.TURN_PIECES);
    GarmentSheet sweatshirt = sheet(sheets, "loose-top");
    assertThat(
            act.answer(sweatshirt, book.garments().bodyOf(sweatshirt.id())).checks().stream()
                .filter(each -> each.kind() == Check.Kind.BAND_OVER)
                .map(Check::verdict))
        .containsExactly(Verdict.NOT_MET);
  }

  private static GarmentSheet sheet(List<GarmentSheet> sheets, String kind) {
    return sheets.stream().filter(each -> each.kind().equals(kind)).findFirst().orElseThrow();
  }

  @Test
  void studentsGrow() {
    double early =
        grade(pieces.stream().filter(each -> each.whose().sewnOn().getMonthValue() < 10));
    double late =
        grade(pieces.stream().filter(each -> each.whose().sewnOn().getMonthValue() == 10));
    assertThat(late).isGreaterThan(early);
  }

  @Test
  void everyStudentHasSomethingLeftToSew() {
    ClassProgress progress = ClassProgress.of(book, book.classes().all().get(0).id());
    assertThat(progress.rows()).hasSize(12);
    assertThat(progress.rows()).allMatch(each -> each.logged() > 5);
    assertThat(progress.rows()).allMatch(each -> each.logged() < each.planned());
  }

  /** What was asked of the two evenings of measuring is all measured, by the plans dealt then. */
  @Test
  void everyReadingAskedForIsMade() {
    ClassProgress progress = ClassProgress.of(book, book.classes().all().get(0).id());
    assertThat(progress.rows())
        .allSatisfy(
            row -> {
              int asked = row.perLesson().stream().mapToInt(each -> each.toMeasure()).sum();
              int measured = row.perLesson().stream().mapToInt(each -> each.measured()).sum();
              assertThat(asked).isIn(12, 24);
              assertThat(measured).isEqualTo(asked).isEqualTo(row.readings());
            });
  }

  @Test
  void everyPieceCanBeJudged() {
    PieceRoom room = LoadPieceRoom.of(book, SharedTables.read(), book.classes().all().get(0).id());
    assertThat(pieces)
        .allSatisfy(each -> assertThat(JudgePiece.of(each, room).working().verdict()).isNotNull());
  }

  @Test
  void theSameSeedMakesTheSameClass() {
    MakeDemoBook demo = new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK);
    Path file = folder.resolve("again.walebook");
    try (Book again = demo.make(file, MakeDemoBook.SEED).value()) {
      assertThat(again.pieces().list(PieceFilter.ALL).stream().map(MakeDemoBookTest::numbers))
          .containsExactlyElementsOf(pieces.stream().map(MakeDemoBookTest::numbers).toList());
    }
  }

  @Test
  void anotherSeedMakesAnother() {
    MakeDemoBook demo = new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK);
    try (Book other = demo.make(folder.resolve("other.walebook"), 5).value()) {
      assertThat(other.pieces().list(PieceFilter.ALL).stream().map(MakeDemoBookTest::numbers))
          .isNotEqualTo(pieces.stream().map(MakeDemoBookTest::numbers).toList());
    }
  }

  private static String numbers(TestPiece piece) {
    return piece.code()
        + piece.whose().sewnOn()
        + piece.measure().pulls()
        + piece.measure().edgePressedMm()
        + piece.seen();
  }

  private static Proportion held(Predicate<TestPiece> which) {
    List<TestPiece> those = pieces.stream().filter(which).toList();
    long held =
        those.stream()
            .filter(
                each -> {
                  var pull = each.measure().counting();
                  return pull != null && pull.end() == SeamEnd.HELD;
                })
            .count();
    return new Proportion((int) held, those.size());
  }

  private static double meanEdge(Step pressure) {
    return pieces.stream()
        .filter(each -> each.setting().pressure() == pressure)
        .mapToDouble(
            each -> {
              Double edge = each.measure().edgeChangePercent();
              return edge == null ? 0 : edge;
            })
        .average()
        .orElseThrow();
  }

  private static double grade(java.util.stream.Stream<TestPiece> which) {
    return which
        .mapToInt(each -> each.seen().grade() == null ? 0 : each.seen().grade())
        .average()
        .orElseThrow();
  }
}
