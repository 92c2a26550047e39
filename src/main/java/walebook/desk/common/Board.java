package walebook.desk.common;

import javafx.event.EventHandler;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.StageStyle;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import org.jspecify.annotations.Nullable;
import walebook.desk.look.Look;
import walebook.words.Words;

/** A full window in large letters for the projector; Esc closes it. */
public final class Board {
  private final Words words;
  private final Look look;

  public Board(Words words, Look look) {
    this.words = words;
    this.look = look;
  }

  /** Shows content over the whole screen of a window. */
  public Stage show(@Nullable Window over, Node... content) {
    Stage stage = open(over, content(content));
    stage
        .getScene()
        .addEventFilter(
            KeyEvent.KEY_PRESSED,
            key -> {
              if (key.getCode() == KeyCode.ESCAPE) {
                key.consume();
                stage.close();
              }
            });
    return stage;
  }

  /** Puts a root of its own over the whole screen of a window; the root minds Esc. */
  public Stage open(@Nullable Window over, Parent root) {
    Stage stage = new Stage(StageStyle.UNDECORATED);
    Scene scene = new Scene(root, 1280, 800);
    look.dress(scene);
    if (over != null) {
      stage.initOwner(over);
      // The window under a full screen must not go first: drawing would wait for it for ever.
      EventHandler<WindowEvent> goes = going -> stage.close();
      over.addEventHandler(WindowEvent.WINDOW_HIDING, goes);
      stage.setOnHiding(hiding -> over.removeEventHandler(WindowEvent.WINDOW_HIDING, goes));
    }
    stage.setFullScreenExitKeyCombination(KeyCombination.NO_MATCH);
    stage.setFullScreenExitHint("");
    stage.setScene(scene);
    stage.setFullScreen(true);
    stage.show();
    return stage;
  }

  /** What stands on the board. */
  public BorderPane content(Node... content) {
    VBox lines = new VBox(content);
    lines.getStyleClass().add("board-lines");
    lines.setAlignment(Pos.TOP_LEFT);
    ScrollPane scroll = new ScrollPane(lines);
    scroll.getStyleClass().add("board-window");
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    // Outside what scrolls: how to leave must be seen from any part of it.
    VBox foot = new VBox(Texts.text(words.say("desk.common.board-close"), "board-close"));
    foot.getStyleClass().add("board-foot");
    BorderPane all = new BorderPane(scroll);
    all.setBottom(foot);
    all.getStyleClass().add("board-window");
    return all;
  }
}
