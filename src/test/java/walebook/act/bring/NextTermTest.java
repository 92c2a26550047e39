package walebook.act.bring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.MakeDemoBook;
import walebook.act.bring.match.BringWhat;
import walebook.act.classroom.ExportTerm;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;
import walebook.problem.Problem;
import walebook.record.By;
import walebook.record.Cloth;
import walebook.record.SchoolClass;
import walebook.record.Student;
import walebook.sheet.ExportProgress;
import walebook.sheet.TermChoice;
import walebook.sheet.in.MadeWorkbook;
import walebook.tables.SharedTables;
import walebook.words.Words;

/** Next term's book begins with what the workbook of the last one holds: people and cloths. */
class NextTermTest {
  private static final Words WORDS = Words.english();

  @TempDir Path folder;

  @Test
  void theCardsOfOurOwnWorkbookComeBackOnce() {
    Path file = folder.resolve("term.xlsx");
    try (Book demo =
            new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK)
                .make(folder.resolve("demo.walebook"), MakeDemoBook.SEED)
                .value();
        Classroom next = Classroom.in(folder.resolve("next.walebook"))) {
      SchoolClass of = demo.classes().all().get(0);
      new ExportTerm(demo, WORDS, SharedTables.read(), Classroom.CLOCK)
          .export(file, of.id(), TermChoice.CODES, false, ExportProgress.UNHEARD)
          .value();
      Trial trial = bringIn(next, file);
      assertThat(trial.count(RowFate.Fate.NEW)).isEqualTo(demo.cloths().all().size());
      assertThat(trial.count(RowFate.Fate.THERE))
          .as("a row along the other grain is about the same cloth")
          .isEqualTo(trial.fates().size() - demo.cloths().all().size())
          .isPositive();
      assertThat(cards(next.book, next.cloth)).isEqualTo(cards(demo, null)).hasSizeGreaterThan(3);
      assertThat(bringIn(next, file).fates())
          .as("a second time nothing is added")
          .allMatch(each -> each.fate() == RowFate.Fate.THERE);
      new UndoBringIn(next.book).undo(Objects.requireNonNull(trial.stepId()), By.NOBODY).value();
      assertThat(next.book.cloths().all()).containsExactly(next.cloth);
    }
  }

  /** Everything but key and stamp, and whether it is used up, which the sheet does not say. */
  private static List<List<?>> cards(Book book, @Nullable Cloth without) {
    return book.cloths().all().stream()
        .filter(each -> !each.equals(without))
        .<List<?>>map(
            each ->
                Arrays.asList(
                    each.name(),
                    each.kind(),
                    each.fibre(),
                    each.elastanePercent(),
                    each.massGm2(),
                    each.widthMm(),
                    each.thicknessMm(),
                    each.edge(),
                    each.remark()))
        .sorted(Comparator.comparing(Object::toString))
        .toList();
  }

  @Test
  void thePeopleOfOurOwnWorkbookComeBackFromTheSheetOfProgress() {
    Path file = folder.resolve("people.xlsx");
    try (Book demo =
            new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK)
                .make(folder.resolve("old.walebook"), MakeDemoBook.SEED)
                .value();
        Classroom next = Classroom.in(folder.resolve("new.walebook"))) {
      SchoolClass of = demo.classes().all().get(0);
      new ExportTerm(demo, WORDS, SharedTables.read(), Classroom.CLOCK)
          .export(file, of.id(), TermChoice.CODES.withNames(true), false, ExportProgress.UNHEARD)
          .value();
      BringPlan plan =
          GuessedPlan.of(next.book, next.schoolClass.id(), file, BringWhat.ROSTER, true, false);
      assertThat(plan.sheet().name()).isEqualTo("Progress");
      new BringInRoster(next.book, SharedTables.read(), WORDS, Classroom.CLOCK, new Random(5))
          .bring(plan, By.NOBODY)
          .value();
      assertThat(next.book.enrolments().studentsOf(next.schoolClass.id()))
          .extracting(Student::name)
          .containsAll(demo.enrolments().studentsOf(of.id()).stream().map(Student::name).toList())
          .hasSize(14);
    }
  }

  /** 60 in are 1524 mm. */
  @Test
  void somebodysOwnListComesInByTheFormsChecks() {
    try (Classroom room = Classroom.in(folder.resolve("own.walebook"))) {
      String list =
          """
          Fabric;Knit;Composition;Elastane (%);Weight;Width (in);Curls;Notes
          Sea rib;rib 1x1;95 % cotton;5;230;60;yes;from the market
          GREY  jersey;;;;;;;
          Odd one;brocade;;140;;;perhaps;
          """;
      Path file = MadeWorkbook.file(folder, "own.csv", list.getBytes(StandardCharsets.UTF_8));
      Trial trial = bringIn(room, file);
      assertThat(trial.fates())
          .extracting(RowFate::fate)
          .containsExactly(RowFate.Fate.NEW, RowFate.Fate.THERE, RowFate.Fate.REFUSED);
      assertThat(trial.fates().get(2).problems())
          .extracting(Problem::code)
          .containsExactlyInAnyOrder("choice.unknown", "number.outside", "choice.unknown");
      Cloth rib =
          room.book.cloths().all().stream()
              .filter(each -> each.name().equals("Sea rib"))
              .findFirst()
              .orElseThrow();
      assertThat(rib.kind()).isEqualTo("rib-1x1");
      assertThat(rib.widthMm()).isEqualTo(1524.0);
      assertThat(rib.massGm2()).isEqualTo(230.0);
      assertThat(rib.edge().curls()).isTrue();
      assertThat(rib.edge().frays()).isNull();
      assertThat(rib.remark()).isEqualTo("from the market");
    }
  }

  private static Trial bringIn(Classroom room, Path file) {
    BringPlan plan =
        GuessedPlan.of(room.book, room.schoolClass.id(), file, BringWhat.CLOTHS, true, false);
    return new BringInLog(room.book, SharedTables.read(), WORDS, Classroom.CLOCK, new Random(5))
        .bring(plan, By.NOBODY)
        .value();
  }
}
