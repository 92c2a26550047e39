package walebook.act.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.DemoBook;
import walebook.book.Book;
import walebook.book.ResultFilter;
import walebook.compare.Dot;
import walebook.compare.Factor;
import walebook.compare.FairComparison;
import walebook.compare.FairQuestion;
import walebook.compare.Outcome;
import walebook.compare.odd.OddReading;
import walebook.record.Cloth;
import walebook.record.Lesson;
import walebook.record.MarkedValue;
import walebook.record.ResultLine;
import walebook.record.SchoolClass;

/** Whether a value is odd hangs on its like, never on what is asked about. */
class AskOddTest {
  @TempDir static Path folder;
  private static Book book;
  private static SchoolClass in;

  @BeforeAll
  static void make() {
    book = DemoBook.open(folder.resolve("odd.walebook"));
    in = book.classes().all().get(0);
  }

  @AfterAll
  static void close() {
    book.close();
  }

  private static CompareFair.Which which(@Nullable UUID lesson, @Nullable UUID cloth) {
    return new CompareFair.Which(List.of(in.id()), lesson, cloth, false);
  }

  /** A value with all that is said of it. */
  private static Set<OddReading> odd(@Nullable UUID lesson, @Nullable UUID cloth) {
    return new HashSet<>(new AskOdd(book).ask(which(lesson, cloth)));
  }

  @Test
  void lessonByLessonTheSameValuesAreOddAsInAllOfThem() {
    Set<OddReading> all = odd(null, null);
    Set<OddReading> together = new HashSet<>();
    for (Lesson each : book.lessons().of(in.id())) {
      Set<OddReading> some = odd(each.id(), null);
      assertThat(all).as(each.title()).containsAll(some);
      together.addAll(some);
    }
    Set<UUID> outside =
        book.results().list(ResultFilter.ALL.ofClass(in.id())).stream()
            .map(ResultLine::pieceId)
            .collect(Collectors.toSet());
    book.lessons()
        .of(in.id())
        .forEach(
            each ->
                book.results().list(which(each.id(), null).filter()).stream()
                    .map(ResultLine::pieceId)
                    .forEach(outside::remove));
    assertThat(together).isNotEmpty();
    assertThat(all)
        .filteredOn(each -> !together.contains(each) && !each.value().isOfCloth())
        .allMatch(each -> outside.contains(each.targetId()));
  }

  @Test
  void clothByClothTheSameValuesAreOddAsInAllOfThem() {
    Set<OddReading> together = new HashSet<>();
    for (Cloth each : book.cloths().all()) {
      together.addAll(odd(null, each.id()));
    }
    assertThat(together).isEqualTo(odd(null, null));
  }

  /** The demo's numbers were read at the far end of the rule twice: 100 mm at a gauge of 100. */
  @Test
  void bothSlipsOfThePenAreTheOddestSeamsAndNoGoodSettingIs() {
    List<Double> off =
        new AskOdd(book)
            .ask(which(null, null)).stream()
                .filter(each -> each.value() == MarkedValue.SEAM_STRETCH)
                .map(each -> each.number() - (each.median() == null ? 0 : each.median()))
                .toList();
    assertThat(off).hasSize(2).allMatch(each -> each > 80 && each < 110);
  }

  /** Every one that stands in the table, whether or not it would be among the best or worst. */
  @Test
  void aComparisonNamesEveryOddPieceThatCountsInIt() {
    int named = 0;
    for (Lesson lesson : book.lessons().of(in.id())) {
      for (Outcome outcome : List.of(Outcome.SEAM_SHARE, Outcome.EDGE_CHANGE, Outcome.GRADE)) {
        CompareFair.Which asked = which(lesson.id(), null);
        FairComparison.Standouts found =
            new CompareFair(book)
                .compare(asked, FairQuestion.of(outcome, List.of(Factor.WIDTH)))
                .standouts();
        assertThat(found.unseen())
            .extracting(Dot::pieceId)
            .containsExactlyInAnyOrderElementsOf(
                new AskOdd(book)
                    .ask(asked).stream()
                        .filter(each -> each.value() == outcome.marked())
                        .map(OddReading::targetId)
                        .toList());
        named += found.unseen().size();
      }
    }
    assertThat(named).isPositive();
  }
}
