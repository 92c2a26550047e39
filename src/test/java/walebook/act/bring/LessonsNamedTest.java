package walebook.act.bring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.bring.match.BringWhat;
import walebook.act.classroom.ExportTerm;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.book.PieceFilter;
import walebook.desk.PlannedClass;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.By;
import walebook.record.ClothReading;
import walebook.record.Grain;
import walebook.record.Lesson;
import walebook.record.Note;
import walebook.record.Stamp;
import walebook.record.TestPiece;
import walebook.sheet.ExportProgress;
import walebook.sheet.LessonTitles;
import walebook.sheet.TermChoice;
import walebook.sheet.in.MadeWorkbook;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** A lesson that was taught twice is two lessons of one title. */
class LessonsNamedTest {
  private static final Words WORDS = Words.english();
  private static final LocalDate FIRST = LocalDate.of(2026, 10, 5);
  private static final Problem NONE =
      Problem.ask("bring.no-lesson", Place.field("lesson"), "Hems", "");

  @TempDir Path folder;

  private static Lesson lesson(String title, LocalDate day) {
    return new Lesson(Ids.next(), Ids.next(), Ids.next(), title, day, Classroom.FRESH);
  }

  @Test
  void theDayStandsBehindATitleThatTwoHave() {
    Lesson once = lesson("Hems", FIRST);
    Lesson seams = lesson("Seams", FIRST);
    Lesson again = lesson("seams ", FIRST.plusDays(7));
    Lesson third = lesson("Seams", FIRST.plusDays(7));
    assertThat(LessonTitles.of(List.of(once, seams))).containsValues("Hems", "Seams");
    assertThat(LessonTitles.of(List.of(once, seams, again)))
        .containsEntry(once.id(), "Hems")
        .containsEntry(seams.id(), "Seams (2026-10-05)");
    assertThat(LessonTitles.of(List.of(seams, third, lesson("Seams", FIRST.plusDays(7)))).values())
        .containsExactlyInAnyOrder(
            "Seams (2026-10-05)", "Seams (2026-10-12, 1)", "Seams (2026-10-12, 2)");
  }

  @Test
  void aTitleOfTwoIsToldByItsDayOrRefusedNamingBoth() {
    Lesson first = lesson("Seams", FIRST);
    Lesson again = lesson("Seams", FIRST.plusDays(7));
    LessonsNamed named = new LessonsNamed(List.of(first, again));
    assertThat(named.find("seams (2026-10-12)", "")).isEqualTo(again.id());
    assertThat(named.find("Seams", "2026-10-05")).isEqualTo(first.id());
    assertThat(named.find("Seams", "2026-10-06")).isNull();
    Problem problem = named.notFound("Seams", Place.field("lesson"), NONE);
    assertThat(problem.refuses()).isTrue();
    assertThat(WORDS.say(problem))
        .contains("more than one lesson called Seams", "Seams (2026-10-05); Seams (2026-10-12)");
    assertThat(named.find("Hems", "2026-10-05")).isNull();
    assertThat(named.notFound("Hems", Place.field("lesson"), NONE)).isEqualTo(NONE);
  }

  /** What belongs to the second lesson is found there already, and nothing doubles. */
  @Test
  void ourOwnWorkbookTellsTheTwoApart() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("a.walebook"), 1)) {
      Classroom room = made.room;
      Lesson again = again(made, 7);
      room.book
          .clothLog()
          .add(room.reading(room.cloth, again.id(), room.first.id(), Grain.WALE, 130));
      Stamp stamp = Stamp.fresh(Classroom.NOW.minus(Duration.ofDays(2)));
      room.book
          .notes()
          .add(new Note(Ids.next(), Note.About.LESSON, again.id(), "", "Went well.", stamp));
      Path file = folder.resolve("term.xlsx");
      new ExportTerm(room.book, WORDS, SharedTables.read(), Classroom.CLOCK)
          .export(file, room.schoolClass.id(), TermChoice.CODES, false, ExportProgress.UNHEARD)
          .value();
      assertThat(bringIn(room, file, BringWhat.READINGS))
          .hasSize(4)
          .allMatch(each -> each.fate() == RowFate.Fate.THERE);
      assertThat(bringIn(room, file, BringWhat.NOTES))
          .hasSize(1)
          .allMatch(each -> each.fate() == RowFate.Fate.THERE);
      assertThat(room.book.clothLog().allReadings())
          .filteredOn(each -> again.id().equals(each.lessonId()))
          .extracting(ClothReading::stretchedMm)
          .containsExactly(130.0);
    }
  }

  /** Rows of somebody's own table name the lesson by its title alone. */
  @Test
  void aRowOfATitleThatTwoHaveGoesToTheLessonOfItsDay() {
    try (PlannedClass made = PlannedClass.in(folder.resolve("b.walebook"), 1)) {
      Classroom room = made.room;
      Lesson again = again(made, -7);
      String head = "Who;Date;Fabric;Grain;Stitch;Gauge;Result;Stretched to;Lesson\n";
      String rest = ";Grey jersey;course;304;100;gave;142;A seam that stretches\n";
      String day = again.taughtOn().toString();
      Path file =
          MadeWorkbook.file(
              folder,
              "own.csv",
              (head + "Ada Pier;" + day + rest + "Bo Quay;2026-09-30" + rest)
                  .getBytes(StandardCharsets.UTF_8));
      List<RowFate> fates = bringIn(room, file, BringWhat.PIECES);
      assertThat(fates.get(1).fate()).isEqualTo(RowFate.Fate.REFUSED);
      assertThat(fates.get(1).problems()).extracting(Problem::code).contains("bring.lesson-twice");
      assertThat(fates.get(0).problems()).isEmpty();
      assertThat(room.book.pieces().list(PieceFilter.ALL))
          .extracting(TestPiece::whose)
          .extracting(whose -> whose.lessonId())
          .containsExactly(again.id());
    }
  }

  /** The class's lesson once more, so many days later. */
  private static Lesson again(PlannedClass made, int days) {
    Lesson again =
        new Lesson(
            Ids.next(),
            made.lesson.classId(),
            made.lesson.packId(),
            made.lesson.title(),
            made.lesson.taughtOn().plusDays(days),
            Classroom.FRESH);
    made.room.book.lessons().add(again);
    return again;
  }

  private static List<RowFate> bringIn(Classroom room, Path file, BringWhat what) {
    BringPlan plan = GuessedPlan.of(room.book, room.schoolClass.id(), file, what, true, true);
    BringIn bring =
        new BringIn(room.book, SharedTables.read(), WORDS, Classroom.CLOCK, new Random(5));
    return bring.run(plan, /* dry= */ false, By.NOBODY).value().fates();
  }
}
