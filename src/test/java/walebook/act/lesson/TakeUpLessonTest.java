package walebook.act.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

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
import walebook.lesson.ReadingsPlan;
import walebook.problem.Answer;
import walebook.problem.Place;
import walebook.problem.Problem;
import walebook.record.Lesson;
import walebook.record.PlannedPiece;
import walebook.record.PlannedReading;
import walebook.record.ReadingLine;

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

  /** Four of the twelve packs measure cloth; every student's share is on the disk. */
  @Test
  void aPlanOfReadingsIsHandedOutAndKept() {
    List<LessonPack> packs =
        ReadLessons.packs().stream().filter(each -> each.plan() instanceof ReadingsPlan).toList();
    assertThat(packs).hasSize(4);
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      for (LessonPack pack : packs) {
        ReadingsPlan asked = (ReadingsPlan) pack.plan();
        Lesson lesson = takeUp(room, pack).value();
        Map<UUID, List<PlannedReading>> plan =
            room.book.readingPlans().of(lesson.id()).stream()
                .map(ReadingLine::planned)
                .collect(Collectors.groupingBy(PlannedReading::studentId));
        assertThat(plan.keySet()).containsExactlyInAnyOrder(room.first.id(), room.second.id());
        int controls = asked.control() == null ? 0 : 1;
        for (List<PlannedReading> mine : plan.values()) {
          assertThat(mine).hasSize(asked.tiers().standard().cells() + controls);
          assertThat(mine.stream().filter(PlannedReading::control)).hasSize(controls);
          assertThat(mine.get(0).control()).isEqualTo(controls == 1);
          assertThat(mine).extracting(PlannedReading::place).isSorted().doesNotHaveDuplicates();
          assertThat(mine).allMatch(each -> each.repeats() == asked.repeats());
          assertThat(mine).allMatch(each -> room.cloth.id().equals(each.clothId()));
          assertThat(mine).extracting(each -> each.slot() + each.grain()).doesNotHaveDuplicates();
        }
        assertThat(room.book.lessons().planOf(lesson.id())).isEmpty();
        assertThat(PlannedCloths.of(room.book, lesson, pack).values())
            .isNotEmpty()
            .containsOnly(room.cloth.id());
      }
    }
  }

  @Test
  void theClothsOfAPlanOfReadingsAreAskedForAndComparedOnesToo() {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      TakeUpLesson act = new TakeUpLesson(room.book, Classroom.CLOCK);
      LessonPack pack = pack("measuring-stretch");
      UUID of = room.schoolClass.id();
      LocalDate on = LocalDate.of(2026, 10, 5);
      UUID cloth = room.cloth.id();
      assertThat(act.takeUp(pack, of, on, Map.of("a", cloth), 1).problems())
          .extracting(Problem::code, each -> ((Place.Field) each.place()).name())
          .containsExactly(
              tuple("lesson.cloth-missing", "cloth-b"), tuple("lesson.cloth-missing", "cloth-c"));
      Map<String, UUID> same = Map.of("a", cloth, "b", cloth);
      ReadLimits.Typed noC = new ReadLimits.Typed(List.of(), List.of("cloth c"), List.of());
      assertThat(act.takeUp(pack, of, on, same, noC, 1, false).problems())
          .extracting(Problem::code)
          .containsExactly("lesson.cloths-same");
      assertThat(room.book.lessons().of(of)).isEmpty();
      Lesson lesson = act.takeUp(pack, of, on, same, noC, 1, true).value();
      assertThat(room.book.readingPlans().of(lesson.id()))
          .isNotEmpty()
          .noneMatch(each -> each.planned().slot().equals("c"));
    }
  }

  @Test
  void limitsOfAPlanOfReadingsAreReadOrRefused() {
    try (Classroom room = Classroom.in(folder.resolve("g.walebook"))) {
      ReadLimits.Typed typed =
          new ReadLimits.Typed(List.of("grain=wale"), List.of("S01=cloth b"), List.of("S02=1"));
      PlanLimits limits =
          ReadLimits.of(typed, pack("measuring-stretch").plan(), List.of(room.first, room.second))
              .value();
      assertThat(limits.leftOut()).containsExactly("grain=wale");
      assertThat(limits.cloths()).containsEntry(room.first.id(), java.util.Set.of("b"));
      assertThat(limits.shares()).containsEntry(room.second.id(), 1);
      ReadLimits.Typed wrong =
          new ReadLimits.Typed(List.of("width=3"), List.of("overlocker"), List.of());
      assertThat(codes(room, wrong))
          .containsExactly("lesson.left-out-unknown", "lesson.without-no-cloth");
      assertThat(codes(room, new ReadLimits.Typed(List.of(), List.of(), List.of("9"))))
          .containsExactly("lesson.share-too-large-to-measure");
      assertThat(
              codes(
                  room,
                  new ReadLimits.Typed(
                      List.of("grain=wale", "grain=course"), List.of(), List.of())))
          .containsExactly("lesson.nothing-to-measure-at-all");
    }
  }

  private static List<String> codes(Classroom room, ReadLimits.Typed typed) {
    return ReadLimits.of(typed, pack("measuring-stretch").plan(), List.of(room.first, room.second))
        .problems()
        .stream()
        .map(Problem::code)
        .toList();
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
