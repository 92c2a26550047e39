package walebook.desk.classroom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.act.book.MakeDemoBook;
import walebook.act.piece.AddPhoto;
import walebook.book.Book;
import walebook.book.Classroom;
import walebook.book.open.SqliteFiles;
import walebook.desk.Sessions;
import walebook.desk.common.InTurn;
import walebook.desk.common.Session;
import walebook.drawing.Picture;
import walebook.drawing.Shape;
import walebook.record.PieceCode;
import walebook.record.Student;
import walebook.words.Words;

/** Every part of the place stands on the projector with its title, what was found, and no name. */
@SuppressWarnings("NullAway.Init")
@ExtendWith(ApplicationExtension.class)
class ShowLargeTest {
  private static final double WIDE = 700;

  private final Map<String, PartView> parts = new LinkedHashMap<>();
  private Book demo;
  private GrowthViewModel growth;
  private FairViewModel fair;

  @Start
  void start(Stage stage) throws Exception {
    Path folder = Files.createTempDirectory("large");
    demo =
        new MakeDemoBook(new SqliteFiles(), Classroom.CLOCK)
            .make(folder.resolve("demo.walebook"), MakeDemoBook.SEED)
            .value();
    Session session = Sessions.of(demo, demo.classes().all().get(0), null);
    FiltersViewModel asked = new FiltersViewModel(session);
    asked.widen();
    Around around = new Around(notice -> {}, new InTurn());
    growth = new GrowthViewModel(asked);
    parts.put("Progress", new ProgressView(new ProgressViewModel(session), around));
    parts.put("Overview", new ComparisonView(new ComparisonViewModel(asked), around));
    fair = new FairViewModel(asked);
    parts.put("seam’s share", new FairView(fair, around));
    parts.put("From own control", new ControlView(new ControlViewModel(asked), around));
    parts.put("Measure alike", new AlikeView(new AlikeViewModel(asked), around));
    parts.put("Odd readings", new OddView(new OddViewModel(asked), around));
    parts.put("Over terms", new TermsView(new TermsViewModel(asked, new SqliteFiles()), around));
    parts.put("One student", new GrowthView(growth, around));
    stage.show();
  }

  @AfterEach
  void close() {
    demo.close();
  }

  @Test
  void everyPartHasItsTitleWhatWasFoundAndNoName(FxRobot robot) throws Exception {
    List<Student> students = demo.enrolments().everyoneOf(demo.classes().all().get(0).id());
    assertThat(students).hasSizeGreaterThan(5);
    robot.interact(() -> growth.studentProperty().set(new Choice(students.get(0).id(), "anybody")));
    for (Map.Entry<String, PartView> part : parts.entrySet()) {
      List<ClassBoard.Shown> shown = new ArrayList<>();
      robot.interact(() -> part.getValue().shown(true));
      robot.interact(() -> part.getValue().showLarge(shown::add));
      WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> !shown.isEmpty());
      ClassBoard.Shown board = shown.get(0);
      assertThat(board.title()).contains(part.getKey()).endsWith("names hidden");
      assertThat(board.findings()).as(part.getKey()).isNotEmpty();
      assertThat(board.findings().get(0).says()).as(part.getKey()).isNotEmpty();
      String all = told(board);
      for (Student each : students) {
        assertThat(all).as(part.getKey()).doesNotContain(each.name());
      }
    }
  }

  @Test
  void theBestPieceWithAPhotoIsSeenOnTheBoard(FxRobot robot) throws Exception {
    PartView part = Objects.requireNonNull(parts.get("seam’s share"));
    robot.interact(() -> part.shown(true));
    WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> fair.foundProperty().get() != null);
    FairFound found = Objects.requireNonNull(fair.foundProperty().get());
    FairFound.Standout best = found.best().get(0);
    Path png = Files.createTempDirectory("photo").resolve("seam.png");
    ImageIO.write(new BufferedImage(320, 240, BufferedImage.TYPE_INT_RGB), "png", png.toFile());
    AddPhoto photos = new AddPhoto(demo, Classroom.CLOCK);
    photos.save(best.dot().pieceId(), AddPhoto.read(png).value());
    List<ClassBoard.Shown> shown = new ArrayList<>();
    robot.interact(() -> part.showLarge(shown::add));
    WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> !shown.isEmpty());
    List<Finding> last = shown.get(0).findings();
    Finding seen = last.get(last.size() - 1);
    assertThat(seen.says()).containsExactly(Words.english().say("desk.class.best"));
    assertThat(seen.photos()).hasSize(1);
    Finding.Photo photo = seen.photos().get(0);
    assertThat(photo.says()).contains(PieceCode.spoken(best.dot().code()));
    assertThat(photo.image().getWidth() / photo.image().getHeight())
        .isCloseTo(4 / 3.0, within(0.01));
    List<BoardPages.Page> pages = BoardPages.of(last, 8);
    assertThat(pages.get(pages.size() - 1).photos()).containsExactly(photo);
  }

  /** All that can be read on it. */
  private static String told(ClassBoard.Shown board) {
    List<String> all = new ArrayList<>(List.of(board.title(), board.foot()));
    for (Finding each : board.findings()) {
      all.addAll(each.says());
      if (each.plot() != null) {
        Picture picture = each.plot().at(WIDE, Words.english());
        picture.shapes().stream()
            .filter(Shape.Text.class::isInstance)
            .forEach(text -> all.add(((Shape.Text) text).says()));
      }
    }
    return String.join("\n", all);
  }
}
