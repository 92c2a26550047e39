package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.Board;
import walebook.desk.common.PicturePane;
import walebook.desk.common.Texts;
import walebook.desk.look.Look;
import walebook.drawing.Drawing;
import walebook.words.Words;

/**
 * A comparison over the whole screen: what it is of, the first sentence and the plot at once, the
 * further sentences by the keys or by a presenter's clicker.
 */
final class FairBoard extends BorderPane {
  private static final Set<KeyCode> NEXT =
      Set.of(KeyCode.SPACE, KeyCode.RIGHT, KeyCode.PAGE_DOWN, KeyCode.DOWN);
  private static final Set<KeyCode> BACK =
      Set.of(KeyCode.LEFT, KeyCode.BACK_SPACE, KeyCode.PAGE_UP, KeyCode.UP);
  private static final int SENTENCES = 4;

  private final Words words;
  private final List<Node> pages = new ArrayList<>();
  private final Label keys = Texts.text("", "caption");
  private int at;

  /**
   * What stands on the board.
   *
   * @param title of which lesson, which cloth, what is compared
   * @param says the sentences, most important first
   * @param plot null when no piece has a value
   * @param foot on how much it rests
   */
  record Shown(String title, List<String> says, @Nullable Drawing plot, String foot) {}

  FairBoard(Words words, Shown shown) {
    this.words = words;
    getStyleClass().add("board-window");
    Label title = Texts.text(shown.title(), "board-title");
    VBox head = new VBox(title);
    head.getStyleClass().add("fair-board-head");
    setTop(head);
    VBox foot = new VBox(Texts.text(shown.foot()), keys);
    foot.getStyleClass().add("fair-board-head");
    setBottom(foot);
    fill(shown);
    setFocusTraversable(true);
    setAccessibleText(shown.title() + ". " + String.join(" ", shown.says()) + " " + shown.foot());
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    turn(0);
  }

  /** Shows it over the whole screen of a window. */
  static void show(Words words, Look look, @Nullable Window over, Shown shown) {
    FairBoard board = new FairBoard(words, shown);
    Stage stage = new Board(words, look).open(over, board);
    stage.setTitle(shown.title());
    board.requestFocus();
  }

  private void fill(Shown shown) {
    List<String> says = shown.says();
    VBox first = page(says.subList(0, Math.min(1, says.size())));
    if (shown.plot() != null) {
      FittedPicture picture = new FittedPicture(new PicturePane(words, shown.plot()));
      VBox.setVgrow(picture, Priority.ALWAYS);
      first.getChildren().add(picture);
    }
    pages.add(first);
    for (int from = 1; from < says.size(); from += SENTENCES) {
      ScrollPane page =
          new ScrollPane(page(says.subList(from, Math.min(from + SENTENCES, says.size()))));
      page.setFitToWidth(true);
      page.getStyleClass().add("board-window");
      pages.add(page);
    }
  }

  private static VBox page(List<String> says) {
    VBox page = new VBox();
    page.getStyleClass().add("fair-board-page");
    says.forEach(each -> page.getChildren().add(Texts.text(each, "strong")));
    return page;
  }

  private void pressed(KeyEvent key) {
    if (key.getCode() == KeyCode.ESCAPE) {
      key.consume();
      getScene().getWindow().hide();
    } else if (NEXT.contains(key.getCode())) {
      key.consume();
      turn(at + 1);
    } else if (BACK.contains(key.getCode())) {
      key.consume();
      turn(at - 1);
    }
  }

  private void turn(int to) {
    at = Math.max(0, Math.min(pages.size() - 1, to));
    setCenter(pages.get(at));
    keys.setText(
        pages.size() == 1
            ? words.say("desk.common.board-close")
            : words.say("desk.class.board.keys", at + 1, pages.size()));
  }
}
