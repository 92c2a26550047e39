package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import walebook.act.lesson.ReadScraps;
import walebook.book.Classroom;
import walebook.desk.Sessions;
import walebook.desk.common.Session;
import walebook.kit.ScrapAnswer;
import walebook.lesson.Packs;

/** The seam lesson cuts 8 strips of 20 by 10 cm from cloth a and 4 from b for each student. */
class ScrapsViewModelTest {
  @TempDir Path folder;

  private static void type(ScrapsViewModel model, int row, String... texts) {
    ReadScraps.Row names = ReadScraps.Row.fields(row);
    model.field(names.across()).text().set(texts[0]);
    model.field(names.along()).text().set(texts[1]);
    model.field(names.count()).text().set(texts[2]);
  }

  private static KitViewModel kit(Session session) {
    KitViewModel kit = new KitViewModel(session, Packs.seam(), null);
    kit.field(KitViewModel.STUDENTS).text().set("1");
    kit.field(KitViewModel.SPARE).text().set("");
    return kit;
  }

  @Test
  void piecesComeOutOfScrapsOrWhatIsLeftOverIsSaid() {
    try (Classroom room = Classroom.in(folder.resolve("a.walebook"))) {
      KitViewModel kit = kit(Sessions.of(room));
      ScrapsViewModel model = new ScrapsViewModel(Sessions.of(room), kit);
      model.ask();
      assertThat(model.answerProperty().get()).as("no kit yet").isNull();
      kit.workOut();
      assertThat(model.cuts()).hasSize(2);
      // Two across, two along: four strips on each.
      type(model, 0, "40 cm", "20 cm", "2");
      model.ask();
      assertThat(model.saysProperty().get()).isEqualTo("Yes: all 8 pieces come out.");
      assertThat(model.missing()).isEmpty();
      assertThat(model.drawn()).hasSize(1);
      assertThat(model.title(model.drawn().get(0))).startsWith("2 scraps of").contains("×");
      type(model, 0, "40 cm", "20 cm", "");
      assertThat(model.answerProperty().get()).as("other scraps").isNull();
      assertThat(model.saysProperty().get()).isEmpty();
      model.ask();
      assertThat(Objects.requireNonNull(model.answerProperty().get()).outcome())
          .isEqualTo(ScrapAnswer.Outcome.CANNOT);
      assertThat(model.missing()).singleElement().asString().startsWith("Left over: 4 × Strips");
      assertThat(model.title(model.drawn().get(0))).startsWith("A scrap of");
      model.cut().text().set("1");
      model.ask();
      assertThat(model.saysProperty().get()).isEqualTo("Yes: all 4 pieces come out.");
      kit.field(KitViewModel.STUDENTS).text().set("2");
      kit.workOut();
      assertThat(model.cut().text().get()).isEqualTo("0");
      assertThat(model.answerProperty().get()).isNull();
    }
  }

  @Test
  void whatIsWrongStandsAtItsCell() {
    try (Classroom room = Classroom.in(folder.resolve("b.walebook"))) {
      KitViewModel kit = kit(Sessions.of(room));
      ScrapsViewModel model = new ScrapsViewModel(Sessions.of(room), kit);
      kit.workOut();
      model.ask();
      assertThat(model.saysProperty().get()).contains("no scrap to cut from");
      type(model, 0, "wide", "20 cm", "1");
      type(model, 1, "", "20 cm", "0");
      type(model, 2, "30 cm", "-2", "101");
      model.ask();
      ReadScraps.Row first = ReadScraps.Row.fields(0);
      ReadScraps.Row second = ReadScraps.Row.fields(1);
      ReadScraps.Row third = ReadScraps.Row.fields(2);
      for (String wrong :
          new String[] {
            first.across(), second.across(), second.count(), third.along(), third.count()
          }) {
        assertThat(model.field(wrong).problem().get()).as(wrong).isNotNull();
      }
      assertThat(model.field(first.along()).problem().get()).isNull();
      assertThat(model.saysProperty().get()).isEmpty();
      assertThat(model.field(first.across()).text().get()).isEqualTo("wide");
      assertThat(model.answerProperty().get()).isNull();
    }
  }

  @Test
  void thePiecesKeepTheMarginOfTheKit() {
    try (Classroom room = Classroom.in(folder.resolve("c.walebook"))) {
      KitViewModel kit = kit(Sessions.of(room));
      kit.field(KitViewModel.MARGIN).text().set("1 cm");
      ScrapsViewModel model = new ScrapsViewModel(Sessions.of(room), kit);
      kit.workOut();
      type(model, 0, "40 cm", "20 cm", "2");
      model.ask();
      assertThat(model.saysProperty().get()).doesNotContain("Yes");
      type(model, 0, "41 cm", "21 cm", "2");
      model.ask();
      assertThat(model.saysProperty().get()).contains("Yes");
    }
  }
}
