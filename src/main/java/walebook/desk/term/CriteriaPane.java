package walebook.desk.term;

import java.util.List;
import java.util.stream.Collectors;
import javafx.beans.binding.BooleanExpression;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.act.assess.KeepCriteria;
import walebook.compare.assessed.MarkWords;
import walebook.desk.common.AfterPause;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.LinesField;
import walebook.desk.common.Texts;
import walebook.desk.common.TutorOnly;
import walebook.desk.common.TypedField;
import walebook.record.Criterion;
import walebook.record.Lesson;
import walebook.words.Words;

/** The list of criteria, the card of one, and the field that a whole list is pasted into. */
final class CriteriaPane extends VBox {
  private static final int ROWS = 10;
  private static final int LINES = 5;
  private static final KeyCombination SAVE =
      new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN);

  private final Words words;
  private final CriteriaViewModel model;
  private final VBox card = new VBox();
  private final VBox lessons = new VBox(4);
  private final TypedField code;
  private final BooleanExpression locked;

  CriteriaPane(Words words, CriteriaViewModel model) {
    super(16);
    this.words = words;
    this.model = model;
    this.code = typed(KeepCriteria.CODE);
    this.locked = model.lockedProperty();
    ColumnTable<Criterion> table = table();
    Button add = new Button(words.say("desk.term.criteria.add-list"));
    add.setOnAction(pressed -> model.addList());
    FieldGroup paste =
        new FieldGroup(words.say("desk.term.criteria.paste"))
            .below(
                new LinesField(
                    words,
                    words.say("desk.term.field.criteria-list"),
                    words.say("desk.term.prompt.criteria-list"),
                    LINES,
                    model.list().field(KeepCriteria.LIST)))
            .below(add);
    paste.visibleProperty().bind(locked.not());
    paste.managedProperty().bind(paste.visibleProperty());
    locked.addListener((from, old, now) -> showCard(model.openProperty().get()));
    model.openProperty().addListener((from, old, now) -> showCard(now));
    model.taggedProperty().addListener((from, old, now) -> showLessons());
    model
        .criteria()
        .addListener(
            (ListChangeListener<Criterion>)
                change -> {
                  // One is saved, and the hands go on to the next.
                  if (card.isFocusWithin() && model.openProperty().get() == null) {
                    code.field().requestFocus();
                  }
                });
    showCard(model.openProperty().get());
    AfterPause.of(model.editsProperty(), model::keepDraft);
    card.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (SAVE.match(event)) {
            event.consume();
            model.save();
          }
        });
    getChildren().setAll(new TutorOnly(words, locked, model::tutorIsHere), table, card, paste);
  }

  private ColumnTable<Criterion> table() {
    ColumnTable<Criterion> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.term.assess.criteria"));
    table.setPlaceholder(Texts.text(words.say("desk.term.criteria.none"), "soft"));
    table.words(words.say("desk.term.assess.code"), 10, Criterion::code);
    table.wrapped(words.say("desk.term.assess.asks"), 33, Criterion::says);
    table.wrapped(words.say("desk.term.criteria.looks-at"), 16, this::marks);
    table.figures(
        words.say("desk.term.criteria.lessons"),
        7,
        each -> (double) model.lessonsOf(each),
        each -> String.valueOf(model.lessonsOf(each)));
    table.setItems(model.criteria());
    table.getColumns().forEach(column -> column.setSortable(false));
    table.asHighAs(ROWS);
    table.opens(
        each -> {
          model.open(each);
          if (!locked.get()) {
            code.field().requestFocus();
          }
        });
    return table;
  }

  private void showCard(@Nullable Criterion open) {
    if (locked.get()) {
      card.getChildren().setAll(open == null ? List.of() : List.of(read(open)));
      return;
    }
    Button save =
        new Button(words.say(open == null ? "desk.term.criteria.add" : "desk.term.criteria.save"));
    save.getStyleClass().add("primary");
    save.setOnAction(pressed -> model.save());
    FlowPane buttons = new FlowPane(8, 8, save);
    String title =
        open == null
            ? words.say("desk.term.criteria.new")
            : words.say("desk.term.criteria.card", open.code());
    FieldGroup fields =
        new FieldGroup(title)
            .add(code, 16)
            .below(typed(KeepCriteria.SAYS))
            .below(new CriterionMarks(words, model))
            .below(buttons);
    if (open != null) {
      buttons
          .getChildren()
          .addAll(
              button("desk.term.criteria.up", () -> model.move(-1)),
              button("desk.term.criteria.down", () -> model.move(1)),
              button("desk.term.criteria.remove", model::remove),
              button("desk.term.criteria.close", () -> model.open(null)));
      if (!model.lessons().isEmpty()) {
        fields
            .below(Texts.text(words.say("desk.term.criteria.tag-lessons"), "field-label"))
            .below(lessons);
      }
      showLessons();
    }
    card.getChildren().setAll(fields);
  }

  /** While it is locked a criterion stands as words, which are read better than greyed fields. */
  private Node read(Criterion open) {
    FieldGroup read =
        new FieldGroup(words.say("desk.term.criteria.card", open.code()))
            .below(Texts.text(open.says()))
            .below(Texts.text(words.say("desk.term.criteria.counts"), "field-label"))
            .below(Texts.text(marks(open)))
            .below(Texts.text(words.say("desk.term.criteria.tag-lessons"), "field-label"));
    List<Lesson> speaking =
        model.lessons().stream()
            .filter(each -> model.taggedProperty().get().contains(each.id()))
            .toList();
    if (speaking.isEmpty()) {
      read.below(Texts.text(words.say("desk.term.criteria.no-lesson"), "soft"));
    }
    for (Lesson each : speaking) {
      read.below(Texts.text(called(each)));
    }
    return read;
  }

  private String marks(Criterion of) {
    return MarkWords.of(of).stream().map(words::say).collect(Collectors.joining(", "));
  }

  private String called(Lesson lesson) {
    return words.say("desk.term.criteria.lesson", lesson.taughtOn(), lesson.title());
  }

  private Button button(String key, Runnable does) {
    Button button = new Button(words.say(key));
    button.setOnAction(pressed -> does.run());
    return button;
  }

  /** Boxes that are there stay, so that the focus does. */
  private void showLessons() {
    if (locked.get()) {
      showCard(model.openProperty().get());
      return;
    }
    if (lessons.getChildren().size() != model.lessons().size()) {
      lessons.getChildren().setAll(model.lessons().stream().map(this::box).toList());
    }
    for (Node each : lessons.getChildren()) {
      if (each instanceof CheckBox box && box.getUserData() instanceof Lesson lesson) {
        box.setSelected(model.taggedProperty().get().contains(lesson.id()));
      }
    }
  }

  private Node box(Lesson lesson) {
    CheckBox box = new CheckBox(called(lesson));
    box.setMnemonicParsing(false);
    box.setWrapText(true);
    box.setUserData(lesson);
    box.setOnAction(pressed -> model.tag(lesson, box.isSelected()));
    return box;
  }

  private TypedField typed(String field) {
    return new TypedField(
        words, words.say("desk.term.field." + field), "", model.card().field(field));
  }
}
