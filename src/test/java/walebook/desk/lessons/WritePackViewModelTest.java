package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.lesson.KeepPackDraft;
import walebook.act.lesson.OpenPack;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.lesson.LessonPack;
import walebook.lesson.PackDraft;
import walebook.lesson.Packs;
import walebook.lesson.PlanCounts;
import walebook.lesson.ReadPack;
import walebook.lesson.ReadingsPlan;

class WritePackViewModelTest {
  @TempDir Path folder;

  private static WritePackViewModel begin(ShelfViewModel shelf) {
    shelf.copy(Packs.seam(), null);
    return Objects.requireNonNull(shelf.writingProperty().get());
  }

  @Test
  void aCopyIsGoodAtOnceAndIsSavedOnTheShelf() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      ShelfViewModel shelf = new ShelfViewModel(Sessions.of(room));
      WritePackViewModel form = begin(shelf);
      assertThat(form.text("name")).isEqualTo("seam-that-stretches-own");
      assertThat(Objects.requireNonNull(form.checkedProperty().get()).told()).isEmpty();
      form.field("plan.factors[1].levels[0]").text().set("1,25");
      form.keepDraft();
      assertThat(new KeepPackDraft(room.book).all()).hasSize(1);
      form.save();
      assertThat(shelf.writingProperty().get()).isNull();
      assertThat(shelf.shelved()).hasSize(1);
      assertThat(shelf.drafts()).isEmpty();
      LessonPack saved = shelf.shelved().get(0).pack();
      assertThat(saved.about().name()).isEqualTo("seam-that-stretches-own");
      assertThat(saved.text()).isEqualTo(Packs.seam().text());
    }
  }

  @Test
  void savingIsRefusedWithAReasonAndTheFocusGoesThere() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      ShelfViewModel shelf = new ShelfViewModel(Sessions.of(room));
      WritePackViewModel form = begin(shelf);
      form.field("plan.factors[1].levels[0]").text().set("wide");
      form.save();
      assertThat(shelf.shelved()).isEmpty();
      assertThat(form.partProperty().get()).isEqualTo(WritePart.PLAN);
      assertThat(form.attentionProperty().get()).isEqualTo("plan.factors[1].levels[0]");
      assertThat(
              Objects.requireNonNull(form.field("plan.factors[1].levels[0]").problem().get())
                  .code())
          .isEqualTo("pack.want-number");
      assertThat(form.noticeProperty().get().says()).isNotEmpty();
      form.field("plan.factors[1].levels[0]").text().set("1");
      assertThat(form.field("plan.factors[1].levels[0]").problem().get()).isNull();
      form.save();
      assertThat(shelf.shelved()).hasSize(1);
    }
  }

  @Test
  void theCountsFollowTheTableEvenWhileSomethingElseIsWrong() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      WritePackViewModel form = begin(new ShelfViewModel(Sessions.of(room)));
      assertThat(form.students()).isEqualTo(2);
      assertThat(form.ofClass()).isTrue();
      form.field("title").text().set("");
      form.field("plan.factors[1].levels[3]").text().set("4");
      form.check();
      PlanCounts counts = Objects.requireNonNull(form.countsProperty().get());
      assertThat(counts.combinations()).isEqualTo(16);
      assertThat(Objects.requireNonNull(form.checkedProperty().get()).told())
          .extracting(PackDraft.Told::field)
          .contains("title");
    }
  }

  @Test
  void theControlOfReadingsIsWrittenInTheFormToo() {
    try (Classroom room = Classroom.in(folder.resolve("g.walebook"))) {
      ShelfViewModel shelf = new ShelfViewModel(Sessions.of(room));
      shelf.copy(Packs.named("do-we-measure-alike"), null);
      WritePackViewModel form = Objects.requireNonNull(shelf.writingProperty().get());
      assertThat(form.text(PackDraft.FIRST_CLOTH)).isEqualTo("a");
      assertThat(form.text(PackDraft.FIRST_GRAIN)).isEqualTo("course");
      assertThat(Objects.requireNonNull(form.countsProperty().get()).combinations()).isEqualTo(2);
      form.field(PackDraft.FIRST_CLOTH).text().set("x");
      form.save();
      assertThat(form.attentionProperty().get()).isEqualTo(PackDraft.FIRST_CLOTH);
      form.field(PackDraft.FIRST_CLOTH).text().set("");
      form.field(PackDraft.FIRST_GRAIN).text().set("");
      form.check();
      assertThat(Objects.requireNonNull(form.countsProperty().get()).combinations()).isEqualTo(3);
      form.save();
      assertThat(((ReadingsPlan) shelf.shelved().get(0).pack().plan()).control()).isNull();
    }
  }

  @Test
  void theMinutesStayWithTheirHeadings() {
    try (Classroom room = Classroom.in(folder.resolve("d.walebook"))) {
      WritePackViewModel form = begin(new ShelfViewModel(Sessions.of(room)));
      String first = form.text("steps[0].minutes");
      String second = form.text("steps[1].minutes");
      String lesson = form.text(PackDraft.LESSON);
      form.field(PackDraft.LESSON)
          .text()
          .set(lesson.replaceFirst("(?m)^## ", "## Come in\n\nWords.\n\n## "));
      assertThat(form.headings().get(0)).isEqualTo("Come in");
      assertThat(form.text("steps[0].minutes")).isEmpty();
      assertThat(form.text("steps[1].minutes")).isEqualTo(first);
      assertThat(form.text("steps[2].minutes")).isEqualTo(second);
      form.field(PackDraft.LESSON).text().set(lesson);
      assertThat(form.text("steps[0].minutes")).isEqualTo(first);
    }
  }

  @Test
  void aFolderIsWrittenAndTheDraftStays() {
    try (Classroom room = Classroom.in(folder.resolve("e.walebook"))) {
      ShelfViewModel shelf = new ShelfViewModel(Sessions.of(room.book, room.schoolClass, folder));
      WritePackViewModel form = begin(shelf);
      form.saveFolder();
      Path written = folder.resolve("seam-that-stretches-own");
      assertThat(OpenPack.at(written, new ReadPack()).isGood()).isTrue();
      assertThat(shelf.writingProperty().get()).isSameAs(form);
      form.saveFolder();
      assertThat(form.noticeProperty().get().says()).contains("there already");
    }
  }

  @Test
  void whatIsThrownAwayIsGoneAndWhatIsClosedIsKept() {
    try (Classroom room = Classroom.in(folder.resolve("f.walebook"))) {
      ShelfViewModel shelf = new ShelfViewModel(Sessions.of(room));
      WritePackViewModel form = begin(shelf);
      form.field("title").text().set("Kept");
      shelf.rest();
      assertThat(new KeepPackDraft(room.book).all()).hasSize(1);
      form.discard();
      form.field("title").text().set("Typed while it went");
      form.keepDraft();
      assertThat(new KeepPackDraft(room.book).all()).isEmpty();
      assertThat(shelf.writingProperty().get()).isNull();
    }
  }
}
