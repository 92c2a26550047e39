package walebook.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import walebook.act.lesson.ReadLessons;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.desk.look.Theme;
import walebook.lesson.Block;
import walebook.lesson.LessonPack;

/** The tables of every lesson as wide as they stand on the board beside a picture. */
@ExtendWith(ApplicationExtension.class)
@SuppressWarnings("NullAway.Init")
class WordsTableTest {
  private static final double BESIDE_A_PICTURE = 645;

  private final List<WordsTable> tables = new ArrayList<>();
  private VBox all;

  @Start
  void start(Stage stage) {
    for (LessonPack pack : ReadLessons.packs()) {
      for (var step : pack.text().steps()) {
        for (Block block : step.blocks()) {
          if (block instanceof Block.Table table) {
            tables.add(new WordsTable(table));
          }
        }
      }
    }
    all = new VBox(10);
    all.getChildren().setAll(tables);
    all.setStyle("-fx-font-size: 38px;");
    Scene scene = new Scene(all, BESIDE_A_PICTURE, 800);
    new Look(Theme.LIGHT, TextSize.USUAL).dress(scene);
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void noWordIsBroken(FxRobot robot) {
    robot.interact(() -> all.layout());
    assertThat(tables).isNotEmpty();
    for (WordsTable table : tables) {
      assertThat(table.getWidth()).isLessThanOrEqualTo(BESIDE_A_PICTURE);
      table.getChildrenUnmodifiable().stream().map(Label.class::cast).forEach(this::isWhole);
    }
  }

  private void isWhole(Label cell) {
    for (String word : cell.getText().split("\\s+")) {
      Text measured = new Text(word);
      measured.setFont(cell.getFont());
      assertThat(cell.getWidth())
          .as("%s in %s", word, cell.getText())
          .isGreaterThanOrEqualTo(measured.getLayoutBounds().getWidth());
    }
    assertThat(cell.localToScene(cell.getLayoutBounds()).getMaxX())
        .as(cell.getText())
        .isLessThanOrEqualTo(BESIDE_A_PICTURE + 1);
  }
}
