package walebook.act.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import walebook.book.Classroom;
import walebook.book.Ids;
import walebook.compare.ClothStretch;
import walebook.compare.Names;
import walebook.compare.alike.MeasureAlike;
import walebook.compare.alike.Repeatability;
import walebook.record.Cloth;
import walebook.record.ClothReading;
import walebook.record.CutEdge;
import walebook.record.Fold;
import walebook.record.Grain;
import walebook.record.How;
import walebook.record.Lesson;
import walebook.record.Pull;
import walebook.record.Stamp;
import walebook.record.StretchReading;
import walebook.record.TaughtPack;

/** The narrow reading of stretches finds, to the last digit, what the whole readings say. */
class StretchesTest {
  private static final double CONFIDENCE = 0.95;

  @TempDir Path folder;

  private static UUID other(Classroom room) {
    Cloth like = room.cloth;
    UUID id = Ids.next();
    room.book
        .cloths()
        .add(
            new Cloth(
                id,
                "Rib",
                like.kind(),
                like.fibre(),
                null,
                null,
                null,
                null,
                like.edge(),
                "",
                false,
                Classroom.FRESH));
    return id;
  }

  private static UUID lesson(Classroom room) {
    TaughtPack pack =
        new TaughtPack(Ids.next(), "ribs", "1", "Ribs", "a".repeat(64), "", "", Classroom.FRESH);
    room.book.lessons().keepPack(pack, Map.of());
    Lesson lesson =
        new Lesson(
            Ids.next(),
            room.schoolClass.id(),
            pack.id(),
            "Ribs",
            LocalDate.of(2026, 10, 5),
            Classroom.FRESH);
    room.book.lessons().add(lesson);
    return lesson.id();
  }

  private static <T> T any(Random random, List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  private static ClothReading reading(
      Random random, Classroom room, UUID cloth, @Nullable UUID lesson) {
    Pull pull = any(random, List.of(Pull.values()));
    @Nullable UUID by =
        random.nextInt(9) == 0 ? null : any(random, List.of(room.first.id(), room.second.id()));
    Double load = pull == Pull.LOAD ? Double.valueOf(any(random, List.of(200.0, 500.5))) : null;
    return new ClothReading(
        Ids.next(),
        cloth,
        room.schoolClass.id(),
        lesson,
        by,
        any(random, List.of(Grain.values())),
        any(random, List.of(100.0, 150.0)),
        150 + random.nextInt(90) + random.nextDouble(),
        random.nextBoolean() ? null : Double.valueOf(101.0),
        new How(any(random, List.of(Fold.values())), pull, load, null, 30.0),
        any(random, List.of(CutEdge.values())),
        1 + random.nextInt(2),
        LocalDate.of(2026, 10, 1 + random.nextInt(9)),
        "",
        Stamp.fresh(Instant.parse("2026-10-05T18:30:00Z")));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void sayWhatTheWholeReadingsSay(long seed) {
    Random random = new Random(seed);
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      List<UUID> cloths = List.of(room.cloth.id(), other(room), other(room));
      UUID lesson = lesson(room);
      for (int i = 0; i < 300; i++) {
        room.book
            .clothLog()
            .add(reading(random, room, any(random, cloths), random.nextBoolean() ? lesson : null));
      }
      List<ClothReading> whole = new ArrayList<>();
      cloths.forEach(each -> whole.addAll(room.book.clothLog().readingsOf(each)));
      List<StretchReading> narrow = room.book.clothLog().stretchesOf(new HashSet<>(cloths));
      assertThat(narrow)
          .containsExactlyInAnyOrderElementsOf(whole.stream().map(StretchReading::of).toList());
      Set<UUID> aside = new HashSet<>();
      whole.stream().filter(each -> random.nextInt(10) == 0).forEach(r -> aside.add(r.id()));
      assertThat(Stretches.ofReadings(narrow, aside))
          .isEqualTo(ClothStretch.of(whole.stream().filter(r -> !aside.contains(r.id())).toList()));
      Names names = Names.of(room.book, false);
      Double sd = Repeatability.sd(narrow, aside);
      assertThat(sd).isNotNull().isPositive();
      assertThat(sd).isEqualTo(MeasureAlike.of(whole, names, aside, CONFIDENCE).repeatabilitySd());
    }
  }

  @Test
  void onlyTheClothsAskedForAreRead() {
    Random random = new Random(7);
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      UUID cloth = room.book.cloths().all().get(0).id();
      room.book.clothLog().add(reading(random, room, cloth, null));
      assertThat(room.book.clothLog().stretchesOf(Set.of())).isEmpty();
      assertThat(room.book.clothLog().stretchesOf(Set.of(Ids.next()))).isEmpty();
      assertThat(room.book.clothLog().stretchesOf(Set.of(cloth, Ids.next()))).hasSize(1);
    }
  }

  @Test
  void nobodyWhoReadTwiceLeavesNothingToTell() {
    assertThat(Repeatability.sd(List.of(), Set.of())).isNull();
  }
}
