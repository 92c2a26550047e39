package walebook.act.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.book.Classroom;
import walebook.lesson.BrokenPacks;
import walebook.lesson.LessonPack;
import walebook.lesson.PackBytes;
import walebook.lesson.ReadPack;
import walebook.problem.Answer;
import walebook.problem.Problem;
import walebook.record.Lesson;

/** A pack from outside comes into a book, stays with it, is taken up from there, and goes out. */
class PackShelfTest {
  private static final ReadPack READ = new ReadPack();
  @TempDir Path folder;

  private static LessonPack pack(String title) {
    try {
      Map<String, byte[]> files = BrokenPacks.base("flat-on-rib");
      String yaml =
          new String(files.getOrDefault("pack.yaml", new byte[0]), StandardCharsets.UTF_8);
      files.put(
          "pack.yaml",
          yaml.replace("title: Flat on rib", "title: " + title).getBytes(StandardCharsets.UTF_8));
      return READ.read(new PackBytes("flat-on-rib", files)).value();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void aPackIsTakenUpFromTheShelfAndStaysReadableWithoutIt() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      ReadPacks packs = new ReadPacks(room.book, READ);
      int ofProgram = packs.all().found().size();
      LessonPack pack = pack("Flat on rib");
      assertThat(new AddPack(room.book, Classroom.CLOCK).add(pack)).isEqualTo(AddPack.Came.NEW);
      assertThat(new AddPack(room.book, Classroom.CLOCK).add(pack)).isEqualTo(AddPack.Came.KNOWN);
      List<ReadPacks.Found> found = packs.all().found();
      assertThat(found).hasSize(ofProgram + 1);
      ReadPacks.Found mine = found.get(ofProgram);
      assertThat(mine.pack()).isEqualTo(pack);
      assertThat(mine.since()).isEqualTo(Classroom.NOW);
      Lesson lesson =
          new TakeUpLesson(room.book, Classroom.CLOCK)
              .takeUp(
                  mine.pack(),
                  room.schoolClass.id(),
                  java.time.LocalDate.of(2026, 10, 5),
                  Map.of("a", room.cloth.id()),
                  1)
              .value();
      assertThat(lesson.packId()).isEqualTo(mine.shelfId());
      UUID shelved = Objects.requireNonNull(mine.shelfId());
      RemoveFromShelf remove = new RemoveFromShelf(room.book);
      assertThat(remove.remove(shelved)).isTrue();
      assertThat(remove.remove(shelved)).isFalse();
      assertThat(packs.all().found()).hasSize(ofProgram);
      assertThat(new ReadTaught(room.book, READ).pack(lesson.packId()).value()).isEqualTo(pack);
      remove.undo(shelved);
      assertThat(packs.all().found()).hasSize(ofProgram + 1);
    }
  }

  @Test
  void aChangedPackStandsBesideTheOneOfTheSameName() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      AddPack add = new AddPack(room.book, Classroom.CLOCK);
      add.add(pack("Flat on rib"));
      assertThat(add.add(pack("Flat on a rib"))).isEqualTo(AddPack.Came.OTHER_VERSION);
      List<ReadPacks.Found> mine =
          new ReadPacks(room.book, READ)
              .all().found().stream().filter(each -> !each.ofProgram()).toList();
      assertThat(mine).hasSize(2).allMatch(each -> each.versions() == 2);
      assertThat(mine).extracting(ReadPacks.Found::content).doesNotHaveDuplicates();
      assertThat(add.add(ReadLessons.packs().get(0))).isEqualTo(AddPack.Came.KNOWN);
    }
  }

  @Test
  void aPackThatCantBeReadAnyMoreIsToldAndHidesNoOther() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      new AddPack(room.book, Classroom.CLOCK).add(pack("Flat on rib"));
      UUID id = walebook.book.Ids.next();
      room.book
          .lessons()
          .keepPack(
              new walebook.record.TaughtPack(
                  id, "old", "1", "Old", "0".repeat(64), "format: 0\n", "x", Classroom.FRESH),
              Map.of());
      room.book.packShelf().put(id);
      ReadPacks.Packs packs = new ReadPacks(room.book, READ).all();
      assertThat(packs.unread()).singleElement().matches(each -> !each.problems().isEmpty());
      assertThat(packs.found()).anyMatch(each -> !each.ofProgram());
    }
  }

  @Test
  void aZipGoesOutAndComesBackIntoAnotherBook() {
    LessonPack pack = pack("Flat on rib");
    Path zip = ExportPack.zip(pack, folder.resolve("rib.zip"), false).value();
    assertThat(OpenPack.at(zip, READ).value()).isEqualTo(pack);
    Answer<Path> again = ExportPack.zip(pack, zip, false);
    assertThat(again.problems()).extracting(Problem::code).containsExactly("pack.exists");
    assertThat(ExportPack.zip(pack, zip, true).isGood()).isTrue();
  }

  @Test
  void aFolderIsWrittenWholeAndNeverOverAnother() throws IOException {
    LessonPack pack = pack("Flat on rib");
    Path written = ExportPack.folder(pack, folder).value();
    assertThat(OpenPack.at(written, READ).value()).isEqualTo(pack);
    assertThat(OpenPack.at(written.resolve("pack.yaml"), READ).value()).isEqualTo(pack);
    Files.writeString(written.resolve("lesson.md"), "mine");
    assertThat(ExportPack.folder(pack, folder).problems())
        .extracting(Problem::code)
        .containsExactly("pack.exists");
    assertThat(Files.readString(written.resolve("lesson.md"))).isEqualTo("mine");
    try (var all = Files.list(folder)) {
      assertThat(all).containsExactly(written);
    }
  }

  @Test
  void whatIsInTheWayIsSaid() throws IOException {
    LessonPack pack = pack("Flat on rib");
    assertThat(ExportPack.zip(pack, folder.resolve("rib.txt"), false).problems())
        .extracting(Problem::code)
        .containsExactly("pack.no-zip-name");
    assertThat(ExportPack.zip(pack, folder.resolve("none/rib.zip"), false).problems())
        .extracting(Problem::code)
        .containsExactly("pack.no-place");
    Files.createDirectory(folder.resolve("dir.zip"));
    assertThat(ExportPack.zip(pack, folder.resolve("dir.zip"), true).problems())
        .extracting(Problem::code)
        .containsExactly("pack.exists");
    assertThat(ExportPack.folder(pack, folder.resolve("none")).problems())
        .extracting(Problem::code)
        .containsExactly("pack.no-place");
  }
}
