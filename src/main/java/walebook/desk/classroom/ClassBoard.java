package walebook.desk.classroom;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.Board;
import walebook.desk.common.Texts;
import walebook.desk.look.Look;
import walebook.words.Words;

/**
 * What was found over the whole screen: what it is of, the first sentence and the plot at once, the
 * rest by the keys or by a presenter's clicker.
 */
final class ClassBoard extends BorderPane {
  private static final Set<KeyCode> NEXT =
      Set.of(KeyCode.SPACE, KeyCode.RIGHT, KeyCode.PAGE_DOWN, KeyCode.DOWN);
  private static final Set<KeyCode> BACK =
      Set.of(KeyCode.LEFT, KeyCode.BACK_SPACE, KeyCode.PAGE_UP, KeyCode.UP);

  /** Rows of a plot that can be read from the back in letters of the usual size. */
  private static final int ROWS = 8;

  private static final int USUAL = 100;

  private static final double AROUND = 0.6;

  private final Words words;
  private final List<BoardPage> pages;
  private final Label keys = Texts.text("", "caption");
  private int at;

  /**
   * What stands on the board.
   *
   * @param title of which lesson, which cloth, what is compared
   * @param foot on how much it rests; may be empty
   */
  record Shown(String title, List<Finding> findings, String foot) {}

  /**
   * A board.
   *
   * @param percent how large the letters are, 100 to 200
   */
  ClassBoard(Words words, Shown shown, int percent) {
    this.words = words;
    pages =
        BoardPages.of(shown.findings(), Math.max(1, ROWS * USUAL / percent)).stream()
            .map(each -> new BoardPage(each, words))
            .toList();
    getStyleClass().add("board-window");
    VBox head = new VBox(Texts.text(shown.title(), "board-title"));
    setTop(around(head, percent));
    VBox foot = new VBox();
    if (!shown.foot().isEmpty()) {
      foot.getChildren().add(Texts.text(shown.foot()));
    }
    foot.getChildren().add(keys);
    setBottom(around(foot, percent));
    setFocusTraversable(true);
    String says =
        shown.findings().stream()
            .flatMap(each -> each.says().stream())
            .collect(Collectors.joining(" "));
    setAccessibleText(shown.title() + ". " + says + " " + shown.foot());
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    turn(0);
  }

  /** Shows it over the whole screen of a window. */
  static void show(Words words, Look look, @Nullable Window over, Shown shown) {
    ClassBoard board = new ClassBoard(words, shown, look.textSizeProperty().get().percent());
    Stage stage = new Board(words, look).open(over, board);
    stage.setTitle(shown.title());
    board.requestFocus();
  }

  /** What is found needs the room: what stands around it grows, yet not as fast. */
  private static VBox around(VBox lines, int percent) {
    lines.getStyleClass().add("class-board-head");
    lines.setStyle("-fx-font-size: " + (AROUND + (double) USUAL / percent) + "em;");
    return lines;
  }

  private void pressed(KeyEvent key) {
    if (key.getCode() == KeyCode.ESCAPE) {
      key.consume();
      getScene().getWindow().hide();
    } else if (NEXT.contains(key.getCode())) {
      key.consume();
      go(true);
    } else if (BACK.contains(key.getCode())) {
      key.consume();
      go(false);
    }
  }

  /** What does not fit comes with the same key before the next page. */
  private void go(boolean on) {
    if (!pages.get(at).go(on)) {
      turn(at + (on ? 1 : -1));
    }
  }

  private void turn(int to) {
    int next = Math.max(0, Math.min(pages.size() - 1, to));
    BoardPage page = pages.get(next);
    if (next != at) {
      page.toTop();
    }
    at = next;
    setCenter(page);
    String more = words.say("desk.class.board.keys", at + 1, pages.size());
    String close = words.say("desk.common.board-close");
    keys.textProperty()
        .bind(
            Bindings.createStringBinding(
                () -> pages.size() > 1 || page.goesOn().get() ? more : close, page.goesOn()));
  }
}
