package walebook.desk.common;

import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextArea;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.act.note.KeepNote;
import walebook.act.note.ReadNotes;
import walebook.words.Words;

/** Notes about one thing, and a field to add one; Ctrl+Enter saves, Tab goes on. */
public final class NotesPane extends VBox {
  private static final int LINES = 2;
  private static final KeyCombination ADD =
      new KeyCodeCombination(KeyCode.ENTER, KeyCombination.SHORTCUT_DOWN);
  private static final KeyCombination SAVE =
      new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN);

  private final Words words;
  private final NotesViewModel model;
  private final VBox list = new VBox(12);

  /** A pane over notes; shown while they are about something. */
  // Newer compilers warn of what a node does here with itself; filling a node is what this is for.
  @SuppressWarnings("this-escape")
  public NotesPane(Words words, NotesViewModel model) {
    super(12);
    this.words = words;
    this.model = model;
    getStyleClass().addAll("card", "notes");
    setMinHeight(USE_PREF_SIZE);
    NoticeLine notice = new NoticeLine(words);
    notice.noticeProperty().bind(model.noticeProperty());
    notice.visibleProperty().bind(model.noticeProperty().map(now -> !now.says().isEmpty()));
    notice.managedProperty().bind(notice.visibleProperty());
    getChildren().setAll(Texts.section(words.say("desk.common.notes.title")), list, body(), notice);
    visibleProperty().bind(model.placeProperty().isNotNull());
    managedProperty().bind(visibleProperty());
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    AfterPause.of(model.editsProperty(), model::keepDraft);
    model.notes().addListener((ListChangeListener<ReadNotes.Line>) change -> show());
    show();
  }

  private void pressed(KeyEvent event) {
    if (ADD.match(event) || SAVE.match(event)) {
      event.consume();
      model.save();
    }
  }

  private Node body() {
    LinesField text =
        new LinesField(
            words,
            words.say("desk.common.notes.text"),
            words.say("desk.common.notes.prompt"),
            LINES,
            model.fields().field(KeepNote.BODY));
    TypedField from =
        new TypedField(
            words,
            words.say("desk.common.notes.from"),
            words.say("desk.common.notes.from-prompt"),
            model.fields().field(KeepNote.FROM));
    from.setStyle("-fx-max-width: 20em;");
    from.visibleProperty().bind(model.asksWho().and(model.changing().not()));
    from.managedProperty().bind(from.visibleProperty());
    Button save = new Button();
    save.textProperty()
        .bind(
            model
                .changing()
                .map(
                    is ->
                        words.say(is ? "desk.common.notes.save-change" : "desk.common.notes.add")));
    save.setTooltip(new Tooltip(ADD.getDisplayText()));
    save.setOnAction(pressed -> model.save());
    Button leave = new Button(words.say("desk.common.notes.leave"));
    leave.getStyleClass().add("quiet");
    leave.setOnAction(pressed -> model.leave());
    leave.visibleProperty().bind(model.changing());
    leave.managedProperty().bind(leave.visibleProperty());
    model.attentionProperty().addListener((at, old, now) -> IntoView.onceShown(text.area()));
    backAgain(text.area());
    FlowPane presses = new FlowPane(8, 8, save, leave);
    return new VBox(8, text, from, presses);
  }

  /** A place may be built anew around the pane; whoever was writing goes on writing. */
  private static void backAgain(TextArea area) {
    area.sceneProperty()
        .addListener(
            (from, old, now) -> {
              if (now == null && area.isFocused()) {
                IntoView.onceShown(area);
              }
            });
  }

  private void show() {
    list.getChildren().clear();
    model.notes().forEach(each -> list.getChildren().add(line(each)));
    if (model.notes().isEmpty()) {
      list.getChildren().add(Texts.text(words.say("desk.common.notes.none"), "soft"));
    }
  }

  private Node line(ReadNotes.Line line) {
    String day = model.day(line.note());
    String head =
        line.from().isEmpty()
            ? words.say("desk.common.notes.head-nobody", day)
            : words.say("desk.common.notes.head", day, line.from());
    Button change = quiet("desk.common.notes.change", "desk.common.notes.change-says", head);
    change.setOnAction(pressed -> model.change(line));
    Button bin = quiet("desk.common.bin.go", "desk.common.notes.bin-says", head);
    bin.setOnAction(pressed -> model.bin(line));
    return new VBox(
        2, Texts.caption(head), Texts.text(line.says()), new FlowPane(8, 4, change, bin));
  }

  private Button quiet(String key, String says, String head) {
    Button button = new Button(words.say(key));
    button.getStyleClass().add("quiet");
    button.setAccessibleText(words.say(says, head));
    return button;
  }
}
