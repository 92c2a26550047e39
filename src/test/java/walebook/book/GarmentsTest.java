package walebook.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.open.SqliteFiles;
import walebook.record.GarmentEdge;
import walebook.record.GarmentGirth;
import walebook.record.GarmentOpening;
import walebook.record.GarmentSewing;
import walebook.record.GarmentSheet;
import walebook.record.Grain;
import walebook.record.MachineKind;
import walebook.record.PatternAsks;
import walebook.record.Stamp;
import walebook.record.StitchChoice;

class GarmentsTest {
  @TempDir Path folder;

  private static GarmentSheet sheet(Classroom room, @Nullable UUID student, String name) {
    return new GarmentSheet(
        Ids.next(),
        student,
        name,
        "fitted-top",
        room.cloth.id(),
        Grain.COURSE,
        "day",
        new PatternAsks(100.0, 130.0, 15.0),
        new GarmentSewing(
            new StitchChoice(MachineKind.OVERLOCKER, "514", 6.0, 2.5), 6.0, true, true),
        List.of(new GarmentGirth("chest", 800, 2), new GarmentGirth("waist", 700, 2)),
        List.of(
            new GarmentOpening(
                "neckline",
                "head",
                520.0,
                2,
                "crew",
                0.85,
                20.0,
                List.of(
                    new GarmentEdge("seam", null, null),
                    new GarmentEdge(
                        "hem", new StitchChoice(MachineKind.SEWING, "304", 4.0, null), null),
                    new GarmentEdge("elastic", null, 80.0))),
            new GarmentOpening("hem", "chest", null, 2, "straight", null, null, List.of())),
        "blue",
        Classroom.FRESH);
  }

  private static GarmentSheet changed(GarmentSheet old, String name, Stamp stamp) {
    return new GarmentSheet(
        old.id(),
        old.studentId(),
        name,
        old.kind(),
        null,
        Grain.WALE,
        old.wear(),
        PatternAsks.NOTHING,
        old.sewing(),
        List.of(new GarmentGirth("chest", 820, 2)),
        List.of(),
        "",
        stamp);
  }

  @Test
  void aSheetComesBackWholeAfterTheBookWasClosed() {
    Path file = folder.resolve("a.walebook");
    GarmentSheet mine;
    try (Classroom room = Classroom.in(file)) {
      mine = sheet(room, room.first.id(), "Blue top");
      room.book.garments().add(mine);
      room.book.garments().add(sheet(room, null, "The class's top"));
      assertThat(room.book.garments().of(room.second.id())).isEmpty();
      assertThat(room.book.garments().of(null)).hasSize(1);
    }
    try (Book book = new SqliteFiles().open(file, Classroom.CLOCK).value()) {
      assertThat(book.garments().find(mine.id())).isEqualTo(mine);
      assertThat(book.garments().all()).hasSize(2);
    }
  }

  @Test
  void aChangeReplacesThePartsAndAnOlderOneIsRefused() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      Garments garments = room.book.garments();
      GarmentSheet first = sheet(room, room.first.id(), "Blue top");
      garments.add(first);
      GarmentSheet next = changed(first, "Grey top", first.stamp().next(Classroom.NOW));
      garments.update(next);
      assertThat(garments.find(first.id())).isEqualTo(next);
      assertThatThrownBy(() -> garments.update(next)).isInstanceOf(StaleRow.class);
      assertThat(garments.find(first.id())).isEqualTo(next);
    }
  }

  @Test
  void privateGirthsAreKeptApartAndForgottenWhenAsked() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      Garments garments = room.book.garments();
      GarmentSheet sheet = sheet(room, room.first.id(), "Blue top");
      garments.add(sheet);
      assertThat(garments.bodyOf(sheet.id())).isEmpty();
      garments.keepBody(sheet.id(), Map.of("chest", 903.0, "head", 571.0));
      garments.update(changed(sheet, "Grey top", sheet.stamp().next(Classroom.NOW)));
      assertThat(garments.bodyOf(sheet.id()))
          .containsExactlyInAnyOrderEntriesOf(Map.of("chest", 903.0, "head", 571.0));
      garments.keepBody(sheet.id(), Map.of());
      assertThat(garments.bodyOf(sheet.id())).isEmpty();
    }
  }

  @Test
  void whatCannotBeIsRefusedByName() {
    assertThatThrownBy(() -> new GarmentGirth("chest", 0, 2)).hasMessageContaining("finishedMm");
    assertThatThrownBy(() -> new PatternAsks(100.0, null, null)).hasMessageContaining("gaugeTo");
    assertThatThrownBy(() -> new PatternAsks(100.0, 90.0, null)).hasMessageContaining("gaugeTo");
    assertThatThrownBy(
            () -> new GarmentOpening("hem", "chest", 1.0, 2, "crew", 0.8, null, List.of()))
        .hasMessageContaining("bandWidthMm");
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      GarmentSheet good = sheet(room, null, "x");
      assertThatThrownBy(
              () ->
                  new GarmentSheet(
                      good.id(),
                      null,
                      "x",
                      good.kind(),
                      null,
                      Grain.BIAS,
                      "day",
                      good.pattern(),
                      good.sewing(),
                      List.of(),
                      List.of(),
                      "",
                      good.stamp()))
          .hasMessageContaining("grainRound");
    }
  }
}
