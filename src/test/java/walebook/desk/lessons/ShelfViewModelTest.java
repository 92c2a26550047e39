package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.lesson.TakeUpLesson;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.lesson.BrokenPacks;
import walebook.lesson.Packs;
import walebook.problem.Problem;
import walebook.record.Lesson;

class ShelfViewModelTest {
  @TempDir Path folder;

  private Path pack() throws IOException {
    Path pack = Files.createDirectory(folder.resolve("flat-on-rib"));
    for (Map.Entry<String, byte[]> each : BrokenPacks.base("flat-on-rib").entrySet()) {
      Files.write(pack.resolve(each.getKey()), each.getValue());
    }
    return pack;
  }

  @Test
  void aPackIsAddedExportedTakenAwayAndPutBack() throws IOException {
    Path yaml = pack().resolve("pack.yaml");
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      ShelfViewModel model = new ShelfViewModel(Sessions.of(room.book, room.schoolClass, yaml));
      model.add();
      assertThat(model.shelved()).hasSize(1);
      assertThat(model.checkedProperty().get()).isNull();
      assertThat(model.noticeProperty().get().says()).contains("Flat on rib");
      model.add();
      assertThat(model.noticeProperty().get().says()).contains("Nothing to add");
      assertThat(model.shelved()).hasSize(1);
      model.remove(model.shelved().get(0));
      assertThat(model.shelved()).isEmpty();
      Objects.requireNonNull(model.noticeProperty().get().undo()).run();
      assertThat(model.shelved()).hasSize(1);
    }
  }

  @Test
  void aZipIsWrittenAndReadBack() throws IOException {
    Path pack = pack();
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      // The chooser hands out this folder; what is saved goes into it.
      ShelfViewModel model = new ShelfViewModel(Sessions.of(room.book, room.schoolClass, folder));
      model.add(pack);
      model.export(model.shelved().get(0).pack());
      Path zip = folder.resolve("flat-on-rib.zip");
      assertThat(zip).exists();
      model.remove(model.shelved().get(0));
      model.add(zip);
      assertThat(model.shelved()).hasSize(1);
    }
  }

  @Test
  void aBrokenPackIsShownWithAllThatIsWrong() throws IOException {
    Path pack = pack();
    String yaml = Files.readString(pack.resolve("pack.yaml"));
    Files.writeString(
        pack.resolve("pack.yaml"),
        yaml.replace("mm: 100", "mm: ten").replace("- key: length", "- key: lenght"));
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      ShelfViewModel model = new ShelfViewModel(Sessions.of(room));
      model.add(pack);
      ShelfViewModel.Checked checked = Objects.requireNonNull(model.checkedProperty().get());
      assertThat(checked.problems())
          .extracting(Problem::code)
          .contains("pack.want-number", "pack.choice-near");
      assertThat(model.shelved()).isEmpty();
      model.back();
      assertThat(model.checkedProperty().get()).isNull();
    }
  }

  @Test
  void aLessonIsReadAsItWasTaught() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      var pack = Packs.seam();
      Lesson lesson =
          new TakeUpLesson(room.book, Classroom.CLOCK)
              .takeUp(
                  pack,
                  room.schoolClass.id(),
                  LocalDate.of(2026, 10, 5),
                  Map.of("a", room.cloth.id(), "b", room.cloth.id()),
                  3)
              .value();
      ShelfViewModel model = new ShelfViewModel(Sessions.of(room));
      model.readTaught(lesson);
      assertThat(model.taughtProperty().get()).isEqualTo(pack);
    }
  }

  @Test
  void aDraftIsThereAgainInTheNextSession() {
    Path file = folder.resolve("e.walebook");
    try (Classroom room = Classroom.in(file)) {
      ShelfViewModel model = new ShelfViewModel(Sessions.of(room));
      model.copy(Packs.seam(), null);
      WritePackViewModel form = Objects.requireNonNull(model.writingProperty().get());
      form.field("title").text().set("A seam of my own");
      form.keepDraft();
      // What follows is what a process finds that was killed here and started again.
      Session next = Sessions.of(room);
      ShelfViewModel again = new ShelfViewModel(next);
      assertThat(again.drafts()).hasSize(1);
      again.write(again.drafts().get(0));
      WritePackViewModel back = Objects.requireNonNull(again.writingProperty().get());
      assertThat(back.text("title")).isEqualTo("A seam of my own");
      assertThat(Objects.requireNonNull(back.checkedProperty().get()).told()).isEmpty();
    }
  }
}
