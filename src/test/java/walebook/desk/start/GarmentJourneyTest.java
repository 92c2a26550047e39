package walebook.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import walebook.desk.PlannedClass;
import walebook.desk.common.Session;
import walebook.desk.common.Worker;
import walebook.record.GarmentSheet;
import walebook.record.Grain;

/**
 * Garments as a student decides on them, in the whole window: what would go wrong is found, and
 * mended. The cloth stretches by some 62 % along the courses and by 15 % along the wales.
 */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class GarmentJourneyTest {
  @TempDir Path folder;

  private PlannedClass made;
  private OpenedWindow window;
  private Path picture;

  @Start
  void start(Stage stage) {
    picture = folder.resolve("picture.png");
    made = PlannedClass.in(folder.resolve("class.walebook"), 1);
    for (int i = 0; i < 3; i++) {
      made.room.book.clothLog().add(made.room.reading(Grain.WALE, 115));
    }
    Session session = made.sitting(Worker.sameThread(), new PlannedClass.OneFile(picture));
    window = new OpenedWindow(stage, session);
  }

  @AfterEach
  void close() {
    window.close();
    made.close();
  }

  private void begin(FxRobot robot, String name) {
    robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT4).release(KeyCode.CONTROL);
    WaitForAsyncUtils.waitForFxEvents();
    robot.clickOn("Begin a garment sheet");
    type(robot, "name of the garment", 0, name);
    pick(robot, "cloth", made.room.cloth.id().toString());
  }

  /** Into the nth field whose label begins so. */
  private static void type(FxRobot robot, String label, int nth, String text) {
    TextField field =
        robot
            .lookup((Node node) -> node instanceof TextField && isCalled(node, label))
            .queryAll()
            .stream()
            .map(TextField.class::cast)
            .toList()
            .get(nth);
    robot.interact(
        () -> {
          field.requestFocus();
          field.selectAll();
        });
    robot.write(text);
    WaitForAsyncUtils.waitForFxEvents();
  }

  @SuppressWarnings("unchecked")
  private static void pick(FxRobot robot, String label, String key) {
    ComboBox<String> box =
        (ComboBox<String>)
            robot
                .lookup((Node node) -> node instanceof ComboBox && isCalled(node, label))
                .queryAll()
                .iterator()
                .next();
    robot.interact(() -> box.setValue(key));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private static boolean isCalled(Node node, String label) {
    String text = node.getAccessibleText();
    return text != null && text.startsWith(label) && isShown(node);
  }

  /** Nothing is typed into what is folded away. */
  private static boolean isShown(Node node) {
    for (Node each = node; each != null; each = each.getParent()) {
      if (!each.isVisible()) {
        return false;
      }
    }
    return true;
  }

  private static void tick(FxRobot robot, String name) {
    CheckBox box =
        (CheckBox)
            robot
                .lookup((Node node) -> node instanceof CheckBox && isCalled(node, name))
                .queryAll()
                .iterator()
                .next();
    robot.interact(box::fire);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private String shown(FxRobot robot) {
    return robot.lookup(".place-side .label").queryAll().stream()
        .map(node -> ((Labeled) node).getText())
        .collect(Collectors.joining("\n"));
  }

  private static void save(FxRobot robot) {
    robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  void aTopLaidTheWrongWayRoundIsFoundAndTurned(FxRobot robot) {
    begin(robot, "Grey top");
    pick(robot, "what goes round the body", "wale");
    type(robot, "its gauge before stretching", 0, "100");
    type(robot, "must reach", 0, "130");
    type(robot, "chest or bust", 0, "800");
    type(robot, "chest or bust", 1, "900");
    assertThat(shown(robot))
        .contains("not met", "Turn the pieces: lay them so that the courses go round")
        .contains("Not met: the pattern asks for 30.0 %, the cloth stretches by 15.0 %");
    pick(robot, "what goes round the body", "course");
    assertThat(shown(robot))
        .contains("Met: the pattern asks for 30.0 %")
        .doesNotContain("Turn the pieces");
    save(robot);
    List<GarmentSheet> saved = made.room.book.garments().all();
    assertThat(saved).hasSize(1);
    assertThat(saved.get(0).grainRound()).isEqualTo(Grain.COURSE);
    assertThat(made.room.book.garments().bodyOf(saved.get(0).id())).isEmpty();
  }

  /** The key is pressed beside the form, with the focus on a place's button. */
  @Test
  void fromAnywhereTheSheetIsSavedOrSaysWhatIsMissing(FxRobot robot) {
    begin(robot, " ");
    focusPlaces(robot);
    save(robot);
    assertThat(made.room.book.garments().all()).isEmpty();
    assertThat(robot.lookup(".label").queryAll())
        .anySatisfy(
            label ->
                assertThat(((Labeled) label).getText())
                    .startsWith("Not saved yet")
                    .contains("name of the garment"));
    assertThat(window.scene.getFocusOwner().getAccessibleText()).startsWith("name of the garment");
    robot.write("Grey top");
    focusPlaces(robot);
    save(robot);
    assertThat(made.room.book.garments().all()).hasSize(1);
  }

  @Test
  void typingBeginsWithTheName(FxRobot robot) {
    robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT4).release(KeyCode.CONTROL);
    WaitForAsyncUtils.waitForFxEvents();
    robot.clickOn("Begin a garment sheet");
    WaitForAsyncUtils.waitForFxEvents();
    robot.write("Grey top");
    save(robot);
    assertThat(made.room.book.garments().all())
        .extracting(GarmentSheet::name)
        .containsExactly("Grey top");
  }

  private static void focusPlaces(FxRobot robot) {
    robot.interact(robot.lookup(".place-button").nth(3).query()::requestFocus);
  }

  @Test
  void aNeckbandThatWouldNotPassOverTheHeadIsFoundAndCutLonger(FxRobot robot) throws IOException {
    begin(robot, "Top with a neckband");
    type(robot, "neckline", 0, "520");
    type(robot, "head", 0, "575");
    tick(robot, "neckline: band");
    type(robot, "band's ratio", 0, "0.6");
    type(robot, "finished width", 0, "20");
    // 0.6 of 520 is 312 mm; at 62 % it reaches some 505 mm.
    assertThat(shown(robot)).contains("Cut the band longer (neckline): from 312 mm");
    // 0.8 of 520 is 416 mm, which reaches 674 mm; 1 − 20 × 6 ÷ 520 = 0.77 would lie flat.
    type(robot, "band's ratio", 0, "0.8");
    assertThat(shown(robot)).doesNotContain("Cut the band longer", "The band pulls too hard");
    robot.clickOn("To scale");
    robot.interact(
        () ->
            robot.lookup(".picture-kinds .toggle-button").queryAll().stream()
                .map(ToggleButton.class::cast)
                .filter(button -> button.getText().equals("band"))
                .forEach(ToggleButton::fire));
    WaitForAsyncUtils.waitForFxEvents();
    robot.clickOn("Save picture");
    WaitForAsyncUtils.waitForFxEvents();
    BufferedImage saved = ImageIO.read(picture.toFile());
    assertThat(saved.getWidth()).isGreaterThan(500);
    assertThat(robot.lookup("The picture is saved as picture.png.").tryQuery()).isPresent();
    save(robot);
    assertThat(robot.lookup("Top with a neckband is saved.").tryQuery()).isPresent();
    assertThat(made.room.book.garments().all().get(0).openings().get(0).bandRatio()).isEqualTo(0.8);
  }

  @Test
  void anOverlockedSleeveWithAnUntrimmedAllowanceIsFoundInMillimetres(FxRobot robot) {
    begin(robot, "Overlocked top");
    pick(robot, "machine", "overlocker");
    pick(robot, "stitch of the seams", "514");
    type(robot, "pattern's allowance", 0, "15");
    type(robot, "allowance as sewn", 0, "6");
    pick(robot, "has a set-in sleeve", "yes");
    // Both curves together turn by 270°: 9 mm × 270 × π ÷ 180 = 42.4 mm.
    assertThat(shown(robot))
        .contains("The cap becomes 42.4 mm too long for its armhole. Trim 9 mm from each edge")
        .contains("pins and fingers away from the knife");
    pick(robot, "trim the rest off", "yes");
    assertThat(shown(robot)).doesNotContain("42.4 mm", "Trim 9 mm");
  }

  @Test
  void twoChoicesStandSideBySideAndTheBetterOneIsTaken(FxRobot robot) {
    begin(robot, "Grey top");
    pick(robot, "what goes round the body", "wale");
    type(robot, "its gauge before stretching", 0, "100");
    type(robot, "must reach", 0, "130");
    robot.clickOn("Compare with another choice");
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(
        () ->
            robot
                .lookup(
                    (Node node) ->
                        node instanceof ComboBox && isCalled(node, "what goes round the body"))
                .queryAll()
                .stream()
                .skip(1)
                .map(node -> (ComboBox<?>) node)
                .forEach(box -> box.getSelectionModel().select(0)));
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(robot.lookup("▲ the other choice is better").tryQuery()).isPresent();
    robot.clickOn("Take the other choice");
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(shown(robot)).contains("Met: the pattern asks for 30.0 %");
  }

  @Test
  void aGirthInAnotherUnitIsAskedAboutAtItsField(FxRobot robot) {
    begin(robot, "Grey top");
    type(robot, "chest or bust", 1, "90");
    assertThat(
            robot.lookup(".field-problem").queryAll().stream()
                .map(node -> ((Labeled) node).getText())
                .filter(says -> !says.isEmpty()))
        .containsExactly("90 mm is very small for a girth. Was 90 cm meant?");
  }
}
