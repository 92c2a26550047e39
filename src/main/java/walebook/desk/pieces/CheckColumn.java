package walebook.desk.pieces;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.act.assess.CheckPiece;
import walebook.act.assess.LookOver;
import walebook.compare.assessed.MarkWords;
import walebook.desk.common.DayWords;
import walebook.desk.common.FormFields;
import walebook.desk.common.IntoView;
import walebook.desk.common.NextField;
import walebook.desk.common.PickedField;
import walebook.desk.common.Texts;
import walebook.record.CheckedBy;
import walebook.record.Help;
import walebook.record.Keyed;
import walebook.record.Marking;
import walebook.record.PieceCheck;
import walebook.words.Words;

/** One of the two checks of a piece; a mark is picked, or its figure typed. */
final class CheckColumn extends VBox {
  private static final List<String> MARKS = List.of("", "0", "1", "2", "3");
  private static final KeyCombination SAVE =
      new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN);

  private final Words words;
  private final LookOverViewModel model;
  private final CheckedBy by;
  private final Map<Marking, PickedField> marks = new EnumMap<>(Marking.class);

  CheckColumn(Words words, LookOverViewModel model, CheckedBy by) {
    super(8);
    this.words = words;
    this.model = model;
    this.by = by;
    boolean self = by == CheckedBy.SELF;
    setStyle("-fx-pref-width: 17em; -fx-min-width: 14em;");
    getChildren()
        .add(
            Texts.text(
                words.say(self ? "desk.pieces.look.self" : "desk.pieces.look.tutor"), "strong"));
    FormFields fields = model.check(by);
    for (Marking each : Marking.values()) {
      PickedField field =
          new PickedField(
              words,
              words.say(
                  "desk.pieces.look.mark-of",
                  words.say(MarkWords.of(each)),
                  words.say(MarkWords.of(by))),
              MARKS,
              this::mark,
              fields.field(CheckPiece.field(each)));
      byFigure(field, fields.field(CheckPiece.field(each)));
      marks.put(each, field);
      getChildren().add(field);
    }
    getChildren()
        .add(
            new PickedField(
                words,
                words.say("desk.pieces.look.help", words.say(MarkWords.of(by))),
                List.of("", Help.NONE.key(), Help.PROMPTED.key(), Help.HANDS_ON.key()),
                this::help,
                fields.field(CheckPiece.HELP)));
    Button save =
        new Button(words.say(self ? "desk.pieces.look.save-self" : "desk.pieces.look.save-tutor"));
    save.setOnAction(pressed -> model.save(by));
    Label when = Texts.text("", "caption");
    model.shownProperty().addListener((from, old, now) -> when.setText(when(now)));
    model.editsProperty().addListener((from, old, now) -> when.setText(when()));
    when.setText(when());
    getChildren().addAll(save, when);
    if (!self) {
      readOnly();
    }
    addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (SAVE.match(event)) {
            event.consume();
            model.save(by);
          }
        });
    model.shownProperty().addListener((from, old, now) -> differs());
    model.editsProperty().addListener((from, old, now) -> differs());
  }

  /** While it is locked the marks stand as words, which are read better than greyed fields. */
  private void readOnly() {
    for (Node each : getChildren().subList(1, getChildren().size())) {
      each.visibleProperty().bind(model.lockedProperty().not());
      each.managedProperty().bind(each.visibleProperty());
    }
    VBox read = new VBox(8);
    read.visibleProperty().bind(model.lockedProperty());
    read.managedProperty().bind(read.visibleProperty());
    getChildren().add(read);
    model.shownProperty().addListener((from, old, now) -> read(read, now));
    read(read, model.shownProperty().get());
  }

  private void read(VBox into, @Nullable LookOver now) {
    into.getChildren().clear();
    PieceCheck check = now == null ? null : now.tutor();
    if (check == null) {
      into.getChildren().add(Texts.text(words.say("desk.pieces.look.tutor-not-yet"), "soft"));
      return;
    }
    Map<String, String> saved = CheckPiece.typed(check);
    for (Marking each : Marking.values()) {
      String mark = mark(saved.getOrDefault(CheckPiece.field(each), ""));
      into.getChildren()
          .add(
              new VBox(Texts.text(words.say(MarkWords.of(each)), "field-label"), Texts.text(mark)));
    }
    into.getChildren()
        .add(
            new VBox(
                Texts.text(
                    words.say("desk.pieces.look.help", words.say(MarkWords.of(by))), "field-label"),
                Texts.text(help(saved.getOrDefault(CheckPiece.HELP, "")))));
    into.getChildren()
        .add(Texts.caption(words.say("desk.pieces.look.checked", DayWords.of(check.checkedOn()))));
  }

  /** Goes to the first mark. */
  void focusFirst() {
    PickedField first = marks.get(Marking.CHOICE);
    if (first != null) {
      first.getChildren().stream()
          .filter(ComboBox.class::isInstance)
          .findFirst()
          .ifPresent(IntoView::focus);
    }
  }

  /** A figure typed on a closed list is the mark, and goes on to the next. */
  private static void byFigure(PickedField field, FormFields.Field of) {
    for (Node each : field.getChildren()) {
      if (each instanceof ComboBox<?> box) {
        box.addEventFilter(
            KeyEvent.KEY_PRESSED,
            event -> {
              String typed = event.getText();
              boolean clears =
                  event.getCode() == KeyCode.DELETE || event.getCode() == KeyCode.BACK_SPACE;
              if (clears) {
                event.consume();
                of.text().set("");
              } else if (typed.length() == 1 && MARKS.contains(typed) && !event.isShortcutDown()) {
                event.consume();
                of.text().set(typed);
                NextField.after(box);
              }
            });
      }
    }
  }

  /** Where the two differ both fields say so, so that they still stand side by side. */
  private void differs() {
    CheckedBy other = by == CheckedBy.SELF ? CheckedBy.TUTOR : CheckedBy.SELF;
    marks.forEach(
        (marking, shown) -> {
          String field = CheckPiece.field(marking);
          String here = model.check(by).text(field);
          String there = model.check(other).text(field);
          boolean differ = !here.isEmpty() && !there.isEmpty() && !here.equals(there);
          shown.showChanged(
              differ
                  ? words.say("desk.pieces.look.differs", words.say(MarkWords.of(other)), there)
                  : "");
        });
  }

  private String when() {
    return when(model.shownProperty().get());
  }

  private String when(@Nullable LookOver now) {
    if (model.isUnsaved(by)) {
      return words.say("desk.pieces.look.unsaved");
    }
    PieceCheck check = now == null ? null : by == CheckedBy.SELF ? now.self() : now.tutor();
    return check == null
        ? ""
        : words.say("desk.pieces.look.checked", DayWords.of(check.checkedOn()));
  }

  private String mark(String key) {
    return words.say(
        switch (key) {
          case "0" -> "desk.pieces.look.mark-0";
          case "1" -> "desk.pieces.look.mark-1";
          case "2" -> "desk.pieces.look.mark-2";
          case "3" -> "desk.pieces.look.mark-3";
          default -> "desk.pieces.look.no-mark";
        });
  }

  private String help(String key) {
    Help help = Keyed.find(Help.class, key);
    return words.say(help == null ? "desk.pieces.look.no-help" : MarkWords.of(help));
  }
}
