package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.record.ClothReading;
import walebook.record.CutEdge;
import walebook.record.Grain;
import walebook.record.How;

class AlikeViewModelTest {
  @TempDir Path folder;

  private static void read(Classroom room, UUID by, double stretchedMm) {
    room.book
        .clothLog()
        .add(
            new ClothReading(
                Ids.next(),
                room.cloth.id(),
                room.schoolClass.id(),
                null,
                by,
                Grain.COURSE,
                100,
                stretchedMm,
                null,
                How.UNKNOWN,
                CutEdge.INSIDE,
                1,
                LocalDate.of(2026, 10, 5),
                "",
                Classroom.FRESH));
  }

  @Test
  void eachReadersBiasStandsWithItsIntervalAndNamesFollowTheSession() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      read(room, room.first.id(), 150);
      read(room, room.first.id(), 152);
      read(room, room.second.id(), 160);
      read(room, room.second.id(), 162);
      Session session = Sessions.of(room);
      AlikeViewModel model = new AlikeViewModel(session, new Narrowing(session));
      model.shown(true);
      AlikeViewModel.Study study = model.studies().get(0);
      // Means 51 and 61, the room's 56: biases of -5 and +5 by definition.
      assertThat(study.readers()).extracting(each -> each.bar().value()).containsExactly(-5.0, 5.0);
      assertThat(study.readers().get(0).bar().low()).isLessThan(-5.0);
      assertThat(study.says()).isNotEmpty();
      assertThat(model.table(study)).hasSize(3);
      assertThat(CopyTable.text(model.table(study))).contains("\nAda Pier\t2\t51.0\t-5.0\t");
      session.namesHiddenProperty().set(true);
      assertThat(model.studies().get(0).readers())
          .extracting(each -> each.person().who())
          .containsExactly("S01", "S02");
    }
  }

  @Test
  void aClassWithoutReadingsSaysSo() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Session session = Sessions.of(room);
      AlikeViewModel model = new AlikeViewModel(session, new Narrowing(session));
      model.shown(true);
      assertThat(model.loadedProperty().get()).isTrue();
      assertThat(model.studies()).isEmpty();
    }
  }
}
