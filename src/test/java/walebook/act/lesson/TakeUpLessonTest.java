package walebook.act.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.lesson.BuiltInPacks;
import walebook.lesson.LessonPack;
import walebook.lesson.ReadPack;
import walebook.problem.Answer;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;

class TakeUpLessonTest {
  @TempDir Path folder;

  private static LessonPack pack(String name) {
    return BuiltInPacks.all().stream()
        .filter(each -> each.name().equals(name))
        .map(each -> new ReadPack().read(each).value())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void eachStudentIsHandedAControlAndTheirShare() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      LessonPack pack = pack("seam-that-stretches");
      Lesson lesson = takeUp(room, pack).value();
      Map<UUID, List<PlannedPiece>> plan =
          room.book.lessons().planOf(lesson.id()).stream()
              .collect(Collectors.groupingBy(PlannedPiece::studentId));
      assertThat(plan.keySet()).containsExactlyInAnyOrder(room.first.id(), room.second.id());
      for (List<PlannedPiece> mine : plan.values()) {
        assertThat(mine.get(0).control()).isTrue();
        assertThat(mine).extracting(PlannedPiece::place).isSorted();
        assertThat(mine).extracting(PlannedPiece::cell).doesNotHaveDuplicates();
        assertThat(mine).allMatch(each -> room.cloth.id().equals(each.clothId()));
      }
      assertThat(room.book.lessons().planOf(lesson.id()))
          .extracting(PlannedPiece::code)
          .doesNotHaveDuplicates();
    }
  }

  @Test
  void thePackIsKeptOnceAndReadsBackAsItWasTaught() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      LessonPack pack = pack("seam-that-stretches");
      Lesson first = takeUp(room, pack).value();
      Lesson second = takeUp(room, pack).value();
      assertThat(second.packId()).isEqualTo(first.packId());
      LessonPack back = new ReadTaught(room.book, new ReadPack()).pack(first.packId()).value();
      assertThat(back.files().contentHash()).isEqualTo(pack.files().contentHash());
      assertThat(back.plan()).isEqualTo(pack.plan());
    }
  }

  @Test
  void aClothOfThePlanThatNobodyNamedIsAskedFor() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      Answer<Lesson> answer =
          new TakeUpLesson(room.book, Classroom.CLOCK)
              .takeUp(
                  pack("seam-that-stretches"),
                  room.schoolClass.id(),
                  LocalDate.of(2026, 10, 5),
                  Map.of(),
                  1);
      assertThat(answer.isGood()).isFalse();
      assertThat(answer.problems()).allMatch(each -> each.code().equals("lesson.cloth-missing"));
      assertThat(room.book.lessons().of(room.schoolClass.id())).isEmpty();
    }
  }

  @Test
  void oneClothForTwoThatAreComparedIsAskedAbout() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      LessonPack pack = pack("seam-that-stretches");
      Map<String, UUID> same = Map.of("a", room.cloth.id(), "b", room.cloth.id());
      TakeUpLesson act = new TakeUpLesson(room.book, Classroom.CLOCK);
      LocalDate on = LocalDate.of(2026, 10, 5);
      Answer<Lesson> asked =
          act.takeUp(pack, room.schoolClass.id(), on, same, ReadLimits.Typed.NOTHING, 1, false);
      assertThat(asked.problems())
          .singleElement()
          .matches(each -> each.code().equals("lesson.cloths-same") && !each.refuses());
      assertThat(room.book.lessons().of(room.schoolClass.id())).isEmpty();
      assertThat(
              act.takeUp(pack, room.schoolClass.id(), on, same, ReadLimits.Typed.NOTHING, 1, true)
                  .isGood())
          .isTrue();
    }
  }

  private static Answer<Lesson> takeUp(Classroom room, LessonPack pack) {
    Map<String, UUID> cloths =
        pack.plan().cloths().stream()
            .collect(Collectors.toMap(each -> each.slot(), each -> room.cloth.id()));
    return new TakeUpLesson(room.book, Classroom.CLOCK)
        .takeUp(pack, room.schoolClass.id(), LocalDate.of(2026, 10, 5), cloths, 20261005);
  }
}
