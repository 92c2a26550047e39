package walebook.desk.lessons;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.application.Platform;
import javafx.beans.Observable;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import walebook.desk.common.BoardLine;
import walebook.desk.common.CheckField;
import walebook.desk.common.CheckInput;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.ChoiceWords;
import walebook.desk.common.FieldBox;
import walebook.desk.common.Texts;
import walebook.desk.common.VerdictBadge;
import walebook.words.Words;
import walebook.working.Calculation;

/** Numbers that the room calls out, typed large; the working comes below, line by line. */
final class CalledOutPane extends BorderPane {
  private final Words words;
  private final ChoiceWords names;
  private final CalledOutViewModel model;
  private final FlowPane fields = new FlowPane();
  private final VBox lines = new VBox();
  private final VBox called = new VBox();
  private final ScrollPane scroll = new ScrollPane(lines);
  private final Map<CheckInput, FieldBox> boxes = new HashMap<>();

  CalledOutPane(Words words, ChoiceWords names, CalledOutViewModel model) {
    this.words = words;
    this.names = names;
    this.model = model;
    getStyleClass().add("called-out");
    fields.getStyleClass().add("called-fields");
    lines.getStyleClass().add("called-lines");
    called.getStyleClass().add("called-answers");
    ChoiceField<Calculation> choice =
        new ChoiceField<>(
            words,
            words.say("desk.lessons.teach.calculation"),
            FXCollections.observableArrayList(model.all()),
            model.chosenProperty(),
            model::name);
    choice.getStyleClass().add("called-choice");
    VBox top = new VBox(choice, fields, actions());
    top.getStyleClass().add("called-top");
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    // What has come last is what the room looks at.
    lines.heightProperty().addListener((from, old, now) -> scroll.setVvalue(1));
    setTop(top);
    setCenter(scroll);
    setRight(called);
    model.chosenProperty().addListener((from, old, now) -> chosen());
    model.shownProperty().addListener((from, old, now) -> show());
    model.workingProperty().addListener((from, old, now) -> show());
    model.hintProperty().addListener((from, old, now) -> show());
    model.called().addListener((Observable change) -> showCalled());
    chosen();
  }

  /** Takes the keys that belong to the working; others are left to the fields. */
  void pressed(KeyEvent key) {
    boolean together = key.isShortcutDown();
    if (key.getCode() == KeyCode.PAGE_DOWN) {
      key.consume();
      model.nextLine();
    } else if (key.getCode() == KeyCode.PAGE_UP) {
      key.consume();
      model.lineBack();
    } else if (together && key.getCode() == KeyCode.ENTER) {
      key.consume();
      keep();
    } else if (together && key.getCode() == KeyCode.BACK_SPACE) {
      key.consume();
      model.takeBack();
    } else if (key.getCode() == KeyCode.ENTER && isLastField(key)) {
      key.consume();
      model.nextLine();
    }
  }

  /** Puts the cursor into the first number that is wanted. */
  void begin() {
    model.inputs().stream()
        .filter(each -> each.input().required())
        .findFirst()
        .ifPresent(this::focus);
  }

  private boolean isLastField(KeyEvent key) {
    List<CheckInput> inputs = model.inputs();
    CheckInput last = inputs.get(0);
    for (CheckInput each : inputs) {
      last = each.input().required() ? each : last;
    }
    FieldBox box = boxes.get(last);
    return box != null && key.getTarget() instanceof Node at && isWithin(at, box);
  }

  private static boolean isWithin(Node node, Node box) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (at.equals(box)) {
        return true;
      }
    }
    return false;
  }

  private HBox actions() {
    Button next = button("desk.lessons.teach.next-line", model::nextLine);
    Button keep = button("desk.lessons.teach.keep", this::keep);
    Button back = button("desk.lessons.teach.take-back", model::takeBack);
    HBox actions = new HBox(next, keep, back);
    actions.getStyleClass().add("called-actions");
    return actions;
  }

  private Button button(String key, Runnable does) {
    Button button = new Button(words.say(key));
    button.getStyleClass().add("quiet");
    button.setOnAction(pressed -> does.run());
    return button;
  }

  private void keep() {
    CheckInput next = model.keep();
    if (next != null) {
      focus(next);
    }
  }

  private void focus(CheckInput input) {
    FieldBox box = boxes.get(input);
    Node field = box == null ? null : box.lookup(".text-field");
    if (field != null) {
      Platform.runLater(field::requestFocus);
    }
  }

  private void chosen() {
    boxes.clear();
    fields.getChildren().clear();
    for (CheckInput each : model.inputs()) {
      FieldBox box = CheckField.of(words, names, each);
      box.getStyleClass().add(each.input().required() ? "called-number" : "called-usual");
      boxes.put(each, box);
      fields.getChildren().add(box);
    }
    show();
    showCalled();
  }

  private void show() {
    lines.getChildren().clear();
    if (!model.hintProperty().get().isEmpty()) {
      lines.getChildren().add(Texts.text(model.hintProperty().get(), "called-says", "soft"));
    }
    model.lines().forEach(each -> lines.getChildren().add(line(each)));
  }

  private Node line(BoardLine line) {
    VBox box = new VBox();
    box.getStyleClass().add("called-line");
    if (line.verdict() != null) {
      box.getChildren().add(new VerdictBadge(words, line.verdict()));
    }
    box.getChildren().add(Texts.text(line.says(), "called-says"));
    if (!line.formula().isEmpty()) {
      box.getChildren().add(Texts.text(line.formula(), "board-formula"));
    }
    if (!line.numbers().isEmpty()) {
      box.getChildren().add(Texts.text(line.numbers(), "called-numbers"));
    }
    return box;
  }

  private void showCalled() {
    called.getChildren().clear();
    called.setVisible(!model.called().isEmpty());
    called.setManaged(called.isVisible());
    if (model.called().isEmpty()) {
      return;
    }
    called
        .getChildren()
        .setAll(
            Texts.text(words.say("desk.lessons.teach.called"), "soft"),
            Texts.text(String.join("   ", model.called()), "called-numbers"));
    List<BoardLine> spread = model.spreadLines();
    if (!spread.isEmpty()) {
      called.getChildren().add(Texts.text(spread.get(spread.size() - 1).says()));
    }
  }
}
