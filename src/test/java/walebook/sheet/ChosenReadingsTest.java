package walebook.sheet;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.book.DemoBook;
import walebook.act.classroom.AskOdd;
import walebook.act.classroom.CompareFair;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.compare.odd.OddReading;
import walebook.record.ClothReading;
import walebook.record.Lesson;
import walebook.record.MarkedValue;
import walebook.record.Student;

/** The odd readings of a cloth that a record speaks of are those that go out in it. */
class ChosenReadingsTest {
  @TempDir Path folder;

  @Test
  void oddReadingsAreCountedWhoseReadingsGoOut() {
    try (Book demo = DemoBook.open(folder.resolve("demo.walebook"))) {
      UUID classId = demo.classes().all().get(0).id();
      Map<UUID, ClothReading> all =
          demo.clothLog().allReadings().stream()
              .collect(Collectors.toMap(ClothReading::id, Function.identity()));
      List<ClothReading> odd =
          new AskOdd(demo)
              .ask(new CompareFair.Which(List.of(classId), null, null, false)).stream()
                  .filter(each -> each.value() == MarkedValue.CLOTH_STRETCH)
                  .filter(each -> each.mark() == null)
                  .map(OddReading::targetId)
                  .distinct()
                  .map(id -> requireNonNull(all.get(id)))
                  .toList();
      assertThat(odd).isNotEmpty();
      assertThat(unseen(demo, classId, TermChoice.CODES)).isEqualTo(odd.size());
      for (Student each : demo.enrolments().everyoneOf(classId)) {
        assertThat(unseen(demo, classId, TermChoice.CODES.ofStudents(Set.of(each.id()))))
            .as(each.name())
            .isEqualTo(odd.stream().filter(of -> each.id().equals(of.measuredBy())).count());
      }
      for (Lesson each : demo.lessons().of(classId)) {
        assertThat(unseen(demo, classId, TermChoice.CODES.ofLessons(Set.of(each.id()))))
            .as(each.title())
            .isEqualTo(odd.stream().filter(of -> each.id().equals(of.lessonId())).count());
      }
    }
  }

  private static long unseen(Book book, UUID classId, TermChoice choice) {
    TermFacts facts =
        new GatherTerm(book, Classroom.CLOCK, Map.of(), "the tutor")
            .of(classId, choice, () -> TermExtras.NONE);
    return requireNonNull(facts).findings().unseenReadings();
  }
}
