package walebook.desk.classroom;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.desk.RoomBook;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.drawing.DotRow;
import walebook.drawing.HkPlot;
import walebook.record.Grain;
import walebook.record.Lesson;

class AlikeViewModelTest {
  @TempDir Path folder;

  private static void read(Classroom room, UUID by, double stretchedMm) {
    read(room, null, by, stretchedMm);
  }

  private static void read(
      Classroom room, @Nullable UUID lessonId, @Nullable UUID by, double stretchedMm) {
    room.book.clothLog().add(room.reading(room.cloth, lessonId, by, Grain.COURSE, stretchedMm));
  }

  private static AlikeViewModel model(Session session) {
    AlikeViewModel model = new AlikeViewModel(new FiltersViewModel(session));
    model.asking().shown(true);
    return model;
  }

  private static AlikeViewModel.Found found(AlikeViewModel model) {
    return requireNonNull(model.foundProperty().get());
  }

  @Test
  void eachReadersBiasStandsWithItsIntervalAndNamesFollowTheSession() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      read(room, room.first.id(), 150);
      read(room, room.first.id(), 152);
      read(room, room.second.id(), 160);
      read(room, room.second.id(), 162);
      Session session = Sessions.of(room);
      AlikeViewModel model = model(session);
      AlikeViewModel.Study study = found(model).studies().get(0);
      // Means 51 and 61, the room's 56: biases of -5 and +5 by definition.
      assertThat(study.bias().rows()).extracting(DotRow::median).containsExactly(-5.0, 5.0);
      assertThat(study.bias().rows().get(0).low()).isLessThan(-5.0);
      assertThat(study.says()).isNotEmpty();
      assertThat(study.table()).hasSize(3);
      assertThat(new CopiedTable(study.table()).text()).contains("\nAda Pier\t2\t51.0\t-5.0\t");
      assertThat(study.hk().rows())
          .extracting(HkPlot.Row::name)
          .containsExactly("Ada Pier", "Bo Quay");
      session.namesHiddenProperty().set(true);
      assertThat(found(model).studies().get(0).hk().rows())
          .extracting(HkPlot.Row::name)
          .containsExactly("S01", "S02");
    }
  }

  /** 24 and 25 among 90 to 97 are strips turned by the way: drawn open, and in no number. */
  @Test
  void plotAndTableAreWithoutTheOddReadingsAsTheSentencesAre() {
    try (Classroom room = Classroom.in(folder.resolve("odd.walebook"))) {
      for (double mm : List.of(194, 195, 193, 196, 124)) {
        read(room, room.first.id(), mm);
      }
      for (double mm : List.of(190, 191, 192, 193)) {
        read(room, room.second.id(), mm);
      }
      AlikeViewModel model = model(Sessions.of(room));
      AlikeViewModel.Study study = found(model).studies().get(0);
      // Without the 24: means 94.5 and 91.5, the room's 93.
      assertThat(study.bias().rows()).extracting(DotRow::median).containsExactly(1.5, -1.5);
      assertThat(study.bias().rows().get(0).dots())
          .extracting(DotRow.Dot::apart)
          .containsExactly(false, false, false, false, true);
      assertThat(study.biasNote()).endsWith("in none of the means: Ada Pier 24.0 %.");
      assertThat(study.hkNote()).contains("Ada Pier 24.0 %");
      assertThat(new CopiedTable(study.table()).text()).contains("\nAda Pier\t4\t94.5\t1.5\t");
    }
  }

  @Test
  void aLimitOfHAndKIsSpokenOfOnlyWhereThereIsOne() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      read(room, room.first.id(), 150);
      read(room, room.second.id(), 160);
      AlikeViewModel model = model(Sessions.of(room));
      assertThat(found(model).studies().get(0).hkNote()).doesNotContain("broken line");
      // Two who both read twice: each one's k has the other's repeats to be judged by.
      read(room, room.first.id(), 152);
      read(room, room.second.id(), 161);
      model.session().changed();
      assertThat(found(model).studies().get(0).hkNote()).contains("broken line");
    }
  }

  @Test
  void theBoardNeverShowsNames() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      read(room, room.first.id(), 150);
      read(room, room.first.id(), 152);
      read(room, room.second.id(), 190);
      read(room, room.second.id(), 192);
      AlikeViewModel model = model(Sessions.of(room));
      List<AlikeViewModel.Found> large = new ArrayList<>();
      model.asking().forBoard(large::add);
      assertThat(large.toString()).contains("S01").doesNotContain("Ada").doesNotContain("Bo Quay");
    }
  }

  @Test
  void aReadingByOneAloneIsCountedAndNoMore() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      AlikeViewModel model = model(Sessions.of(room));
      assertThat(found(model).studies()).isEmpty();
      assertThat(found(model).alone()).isZero();
      read(room, room.first.id(), 150);
      model.asking().session().changed();
      assertThat(found(model).studies()).isEmpty();
      assertThat(found(model).alone()).isEqualTo(1);
      assertThat(found(model).nameless()).isZero();
      read(room, null, null, 150);
      model.session().changed();
      assertThat(found(model).nameless()).isEqualTo(1);
    }
  }

  @Test
  void whereNobodyMeasuredTheLatestLessonWithSharedReadingsIsOnePressAway() {
    try (Classroom room = RoomBook.in(folder.resolve("d.walebook"))) {
      Lesson sewn = room.book.lessons().of(room.schoolClass.id()).get(0);
      Lesson early = lesson(room, sewn, "Early", sewn.taughtOn().minusDays(21));
      Lesson late = lesson(room, sewn, "Late", sewn.taughtOn().minusDays(14));
      Lesson alone = lesson(room, sewn, "Alone", sewn.taughtOn().minusDays(7));
      for (Lesson each : List.of(early, late)) {
        read(room, each.id(), room.first.id(), 150);
        read(room, each.id(), room.second.id(), 160);
      }
      read(room, alone.id(), room.first.id(), 150);
      FiltersViewModel filters = new FiltersViewModel(Sessions.of(room));
      filters.lookAt(sewn.id());
      AlikeViewModel model = new AlikeViewModel(filters);
      model.asking().shown(true);
      assertThat(found(model).studies()).isEmpty();
      assertThat(requireNonNull(found(model).elsewhere()).name()).endsWith("Late");
      model.lookElsewhere();
      assertThat(filters.lessonProperty().get().id()).isEqualTo(late.id());
      assertThat(found(model).studies()).hasSize(1);
      assertThat(found(model).elsewhere()).isNull();
    }
  }

  private static Lesson lesson(Classroom room, Lesson like, String title, LocalDate on) {
    Lesson made = new Lesson(Ids.next(), like.classId(), like.packId(), title, on, Classroom.FRESH);
    room.book.lessons().add(made);
    return made;
  }
}
