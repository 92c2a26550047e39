package walebook.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import walebook.problem.Answer;
import walebook.quantity.Show;

class BuiltInPacksTest {
  private static final Path FOLDER = Path.of("lesson-packs");

  @Test
  void theIndexIsTheFolder() throws IOException {
    List<Path> packs;
    try (Stream<Path> all = Files.list(FOLDER)) {
      packs = all.filter(Files::isDirectory).sorted().toList();
    }
    assertThat(BuiltInPacks.all().stream().map(PackSource::name))
        .containsExactlyInAnyOrderElementsOf(
            packs.stream().map(each -> String.valueOf(each.getFileName())).toList());
    for (PackSource each : BuiltInPacks.all()) {
      assertThat(each.files()).isEqualTo(new PackFolder(FOLDER.resolve(each.name())).files());
    }
  }

  @Test
  void everyBuiltInPackReadsWithoutARemark() {
    ReadPack read = new ReadPack();
    for (PackSource each : BuiltInPacks.all()) {
      assertThat(read.read(each).problems()).as(each.name()).isEmpty();
      Answer<LessonPack> onDisk = read.read(new PackFolder(FOLDER.resolve(each.name())));
      assertThat(onDisk).isEqualTo(read.read(each));
    }
  }

  @Test
  void picturesAreSmallAndTheirWordsAreThere() {
    for (PackSource each : BuiltInPacks.all()) {
      LessonPack pack = new ReadPack().read(each).value();
      assertThat(pack.text().pictures()).hasSizeGreaterThanOrEqualTo(3);
      assertThat(pack.files().pictures())
          .filteredOn(picture -> picture.fileName().endsWith(".png"))
          .allSatisfy(picture -> assertThat(picture.content().length).isLessThan(60 * 1024));
      assertThat(pack.text().pictures())
          .allSatisfy(picture -> assertThat(picture.alt().length()).isGreaterThan(40));
    }
  }

  @Test
  void theSeamLessonIsReadAsWritten() {
    LessonPack pack = Packs.named("seam-that-stretches");
    assertThat(pack.about().minutes()).isEqualTo(150);
    assertThat(pack.measure().gaugeMm()).isEqualTo(100);
    PiecesPlan plan = (PiecesPlan) pack.plan();
    assertThat(plan.cellCount()).isEqualTo(12);
    assertThat(plan.cells()).hasSize(12);
    assertThat(plan.cells().get(1).label()).isEqualTo("cloth=a width=1 length=2.5");
    assertThat(plan.controlSettings().asked(1).stitchType()).isEqualTo("301");
    assertThat(plan.cells().get(0).settings().asked(1).needPercent()).isNull();
    assertThat(pack.text().steps()).hasSize(9);
  }

  /** A gauge of 10 cm reaching 15 is 50 %, reaching 13 is 30 %: common practice. */
  @Test
  void theMeasuringLessonWorksItsExampleRight() {
    String lesson = Packs.named("measuring-stretch").files().lessonMd();
    double gauge = 100;
    double stretched = 150;
    double after = 104;
    String stretch = Show.upTo(100 * (stretched - gauge) / gauge, 2);
    String growth = Show.upTo(100 * (after - gauge) / gauge, 2);
    String recovery = Show.upTo(100 * (stretched - after) / (stretched - gauge), 2);
    assertThat(lesson)
        .contains("| " + stretch + " % |", "| " + growth + " % |", "| " + recovery + " % |")
        .contains("reaches 130 mm. That is " + Show.upTo(100 * (130 - gauge) / gauge, 2) + " %");
  }

  /** Path of a zigzag stitch over its length, Pythagoras; figures in the drawing are rounded. */
  @Test
  void theDrawingOfZigzagsIsToItsNumbers() {
    LessonPack pack = Packs.named("seam-that-stretches");
    String drawing = GoodPack.text("zigzag-to-scale.svg");
    PiecesPlan plan = (PiecesPlan) pack.plan();
    for (String width : plan.factors().get(1).levels()) {
      for (String length : plan.factors().get(2).levels()) {
        double path = Math.hypot(Double.parseDouble(width), Double.parseDouble(length));
        double straightens = 100 * (path / Double.parseDouble(length) - 1);
        assertThat(drawing).contains(">" + Show.fixed(straightens, 0) + " %<");
      }
    }
  }
}
