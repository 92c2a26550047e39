package walebook.desk.decide;

import java.util.Set;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.Board;
import walebook.desk.common.BoardLine;
import walebook.desk.common.PicturePane;
import walebook.desk.common.Texts;
import walebook.desk.common.VerdictBadge;
import walebook.desk.look.Look;
import walebook.drawing.Drawing;
import walebook.words.Words;
import walebook.working.Verdict;
import walebook.working.Working;

/** Shows a working for the projector, line by line; the drawing stands with the first line. */
final class WorkingBoard extends VBox {
  /** A clicker for slides sends the page keys. */
  private static final Set<KeyCode> NEXT =
      Set.of(KeyCode.SPACE, KeyCode.ENTER, KeyCode.RIGHT, KeyCode.PAGE_DOWN);

  private static final Set<KeyCode> BACK =
      Set.of(KeyCode.LEFT, KeyCode.BACK_SPACE, KeyCode.PAGE_UP);

  private final Words words;
  private final WorkingBoardViewModel model;
  private final @Nullable Drawing drawing;

  WorkingBoard(Words words, WorkingBoardViewModel model, @Nullable Drawing drawing) {
    this.words = words;
    this.model = model;
    this.drawing = drawing;
    getStyleClass().add("working-board");
    model.placeProperty().addListener((from, old, now) -> show());
    show();
  }

  /** Shows a working over the whole screen of a window. */
  static Stage show(
      Words words, Look look, @Nullable Window over, Working working, @Nullable Drawing drawing) {
    WorkingBoard board =
        new WorkingBoard(words, new WorkingBoardViewModel(working, words), drawing);
    Stage stage = new Board(words, look).show(over, board);
    stage.setTitle(words.say(working.title()));
    stage.getScene().addEventFilter(KeyEvent.KEY_PRESSED, board::pressed);
    return stage;
  }

  private void pressed(KeyEvent key) {
    if (NEXT.contains(key.getCode())) {
      key.consume();
      model.next();
    } else if (BACK.contains(key.getCode())) {
      key.consume();
      model.back();
    }
  }

  private void show() {
    BoardLine line = model.line();
    getChildren().clear();
    boolean first = model.placeProperty().get() == 0;
    Verdict verdict = line.verdict();
    if (verdict != null) {
      getChildren().add(new VerdictBadge(words, verdict));
    }
    getChildren().add(Texts.text(line.says(), first ? "board-title" : "board-says"));
    add(line.formula(), "board-formula");
    add(line.numbers(), "board-numbers");
    // Above the drawing, which may fill the board: how to go on must be seen.
    getChildren().add(foot());
    Drawing picture = drawing;
    if (first && picture != null) {
      getChildren().add(new PicturePane(words, picture));
    }
  }

  private void add(String says, String style) {
    if (!says.isEmpty()) {
      getChildren().add(Texts.text(says, style));
    }
  }

  private Node foot() {
    String place = Integer.toString(model.placeProperty().get() + 1);
    String all = Integer.toString(model.lines().size());
    return Texts.text(words.say("desk.decide.board.foot", place, all), "board-close");
  }
}
