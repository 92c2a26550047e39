package walebook.desk.lessons;

import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.Board;
import walebook.desk.common.ChoiceWords;
import walebook.desk.common.Texts;
import walebook.desk.look.Look;
import walebook.desk.look.TextSize;
import walebook.words.Words;

/** The lesson over the whole screen, led by the keys or by a presenter's clicker. */
final class TeachBoard extends BorderPane {
  /** A clicker for slides sends the page keys. */
  private static final Set<KeyCode> NEXT =
      Set.of(KeyCode.SPACE, KeyCode.RIGHT, KeyCode.PAGE_DOWN, KeyCode.DOWN);

  private static final Set<KeyCode> BACK =
      Set.of(KeyCode.LEFT, KeyCode.BACK_SPACE, KeyCode.PAGE_UP, KeyCode.UP);

  private final Words words;
  private final TeachViewModel model;
  private final TeachStepPane step;
  private final CalledOutPane calledOut;
  private boolean taken;
  private final Label place = Texts.text("", "teach-place");
  private final Label keys = Texts.text("", "teach-keys");

  TeachBoard(Words words, ChoiceWords names, TeachViewModel model) {
    this.words = words;
    this.model = model;
    this.step = new TeachStepPane(words, model);
    this.calledOut = new CalledOutPane(words, names, model.calledOut());
    getStyleClass().addAll("board-window", "teach");
    getStylesheets()
        .add(Objects.requireNonNull(TeachBoard.class.getResource("teach.css")).toExternalForm());
    Label timer = Texts.text("", "teach-timer");
    timer.textProperty().bind(model.timerProperty());
    Region space = new Region();
    HBox.setHgrow(space, Priority.ALWAYS);
    HBox head = new HBox(place, space, timer);
    head.getStyleClass().add("teach-head");
    setTop(head);
    setBottom(keys);
    model.placeProperty().addListener((from, old, now) -> show());
    model.workingProperty().addListener((from, old, now) -> show());
    setFocusTraversable(true);
    show();
  }

  /** Teaches a lesson over the whole screen of a window. */
  static Stage show(
      Words words, Look look, ChoiceWords names, @Nullable Window over, TeachViewModel model) {
    TeachBoard board = new TeachBoard(words, names, model);
    board.styleProperty().bind(look.textSizeProperty().map(TeachBoard::letters));
    Stage stage = new Board(words, look).open(over, board);
    stage.setTitle(model.pack().about().title());
    stage.getScene().addEventFilter(KeyEvent.KEY_PRESSED, key -> board.pressed(key, stage));
    // The letter of a key that led somewhere must not land in the field that it led to.
    stage.getScene().addEventFilter(KeyEvent.KEY_TYPED, board::typed);
    Timeline clock = new Timeline(new KeyFrame(Duration.millis(500), at -> model.tick()));
    clock.setCycleCount(Animation.INDEFINITE);
    clock.play();
    stage.setOnHidden(gone -> clock.stop());
    board.requestFocus();
    return stage;
  }

  // The board's letters are far above the usual ones; growing with them in full, a step would be
  // four lines and a working would have no room below its fields.
  private static String letters(TextSize size) {
    double px = TextSize.BODY_PX * (1 + (size.percent() - 100) / 200.0);
    return String.format(Locale.ROOT, "-fx-font-size: %.2fpx;", px);
  }

  private void pressed(KeyEvent key, Stage stage) {
    if (key.getCode() == KeyCode.ESCAPE) {
      key.consume();
      if (!model.uncover()) {
        stage.close();
      }
    } else if (model.workingProperty().get()) {
      calledOut.pressed(key);
    } else if (lead(key.getCode())) {
      key.consume();
    }
    taken = key.isConsumed();
  }

  private void typed(KeyEvent key) {
    if (taken) {
      key.consume();
    }
  }

  private boolean lead(KeyCode key) {
    boolean upOrDown = key == KeyCode.DOWN || key == KeyCode.UP;
    if (upOrDown && step.asideBy(key == KeyCode.DOWN ? 1 : -1)) {
      return true;
    }
    if (NEXT.contains(key)) {
      if (!step.pageOn()) {
        model.next();
      }
    } else if (BACK.contains(key)) {
      if (!step.pageBack()) {
        model.back();
      }
    } else {
      switch (key) {
        case HOME -> model.first();
        case END -> model.last();
        case T -> model.toggleTimer();
        case R -> model.resetTimer();
        case P -> model.nextPicture();
        case G -> model.asideProperty().set(!model.asideProperty().get());
        case C -> model.workingProperty().set(true);
        default -> {
          return false;
        }
      }
    }
    return true;
  }

  private void show() {
    boolean working = model.workingProperty().get();
    place.setText(model.placeSays());
    setCenter(working ? calledOut : step);
    keys.setText(words.say(working ? "desk.lessons.teach.keys-work" : "desk.lessons.teach.keys"));
    setAccessibleText(model.placeSays() + ". " + model.step().heading());
    if (working) {
      calledOut.begin();
    } else {
      requestFocus();
    }
  }
}
