package walebook.desk.term;

import java.util.Arrays;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanExpression;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.scene.control.Button;
import javafx.scene.control.TableColumn;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.Fold;
import walebook.desk.common.LinesField;
import walebook.desk.common.NotesPane;
import walebook.desk.common.PickedField;
import walebook.desk.common.Texts;
import walebook.desk.common.TutorOnly;
import walebook.desk.common.TypedField;
import walebook.record.Student;
import walebook.record.Tier;
import walebook.words.Words;

/** The students of the class, the card of one, and the field that adds more. */
final class RosterPane extends VBox {
  private static final int ROWS = 20;
  private static final int NAMES = 4;

  private final Words words;
  private final RosterViewModel model;
  private final VBox card = new VBox(12);
  private final NotesPane notes;
  private final BooleanExpression locked;
  private final ReadOnlyBooleanProperty namesHidden;

  RosterPane(Words words, RosterViewModel model, ReadOnlyBooleanProperty namesHidden) {
    super(16);
    this.words = words;
    this.model = model;
    this.namesHidden = namesHidden;
    this.notes = new NotesPane(words, model.notes());
    this.locked = model.lockedProperty();
    ColumnTable<Student> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.term.students"));
    table.setPlaceholder(Texts.text(words.say("desk.term.roster.none"), "soft"));
    table.wrapped(words.say("desk.term.col.code"), 6, Student::alias);
    TableColumn<Student, String> name =
        table.words(words.say("desk.term.col.name"), 20, Student::name);
    name.visibleProperty().bind(namesHidden.not());
    table.words(
        words.say("desk.term.col.tier"),
        16,
        each -> words.say("common.choice." + each.tier().key()));
    table.takesRest(name, 16);
    table.setItems(model.students());
    table.asHighAs(ROWS);
    table.opens(model::open);
    Button add = new Button(words.say("desk.term.roster.add"));
    add.setOnAction(pressed -> model.add());
    FieldGroup more =
        new FieldGroup(words.say("desk.term.roster.more"))
            .below(
                new LinesField(
                    words,
                    words.say("desk.term.field.students"),
                    "",
                    NAMES,
                    model.names().field("students")))
            .below(add);
    model.openProperty().addListener((from, old, now) -> show(now));
    show(model.openProperty().get());
    getChildren()
        .setAll(
            PrivacyPane.copies(words, model.privacy()),
            card,
            table,
            Texts.caption(words.say("desk.term.roster.note")),
            more);
  }

  private void show(@Nullable Student student) {
    card.getChildren().clear();
    card.setManaged(student != null);
    if (student == null) {
      return;
    }
    Button save = new Button(words.say("desk.common.save"));
    save.getStyleClass().add("primary");
    save.setOnAction(pressed -> model.save());
    Button close = new Button(words.say("desk.term.roster.close"));
    close.setOnAction(pressed -> model.open(null));
    Button leave = new Button();
    leave.getStyleClass().add("quiet");
    leave
        .textProperty()
        .bind(
            model
                .leavingProperty()
                .map(
                    asked ->
                        words.say(
                            asked ? "desk.term.roster.leave-sure" : "desk.term.roster.leave")));
    leave.setOnAction(pressed -> model.leave());
    FlowPane buttons = new FlowPane(8, 8, save, close, leave);
    // The card opens under the hand: the second press of a double click is not meant for it.
    buttons.addEventFilter(
        MouseEvent.MOUSE_PRESSED,
        press -> {
          if (press.getClickCount() > 1) {
            press.consume();
          }
        });
    FieldGroup fields =
        new FieldGroup(words.say("desk.term.roster.card"))
            .add(typed("student-name"), 20)
            .add(typed("student-alias"), 8)
            .add(
                new PickedField(
                    words,
                    words.say("desk.term.field.student-tier"),
                    Arrays.stream(Tier.values()).map(Tier::key).toList(),
                    key -> key.isEmpty() ? "" : words.say("common.choice." + key),
                    model.card().field("student-tier")),
                18)
            .below(buttons);
    Fold takeOut =
        new Fold(
            Bindings.createStringBinding(
                () -> words.say("desk.term.privacy.title", model.privacy().who()), namesHidden),
            new PrivacyPane(words, model.privacy()));
    takeOut.openProperty().bindBidirectional(model.privacy().shownProperty());
    TutorOnly tutorOnly =
        new TutorOnly(
            words, words.say("desk.term.roster.notes-locked"), locked, model::tutorIsHere);
    card.getChildren().setAll(fields, notes, tutorOnly, takeOut);
  }

  private TypedField typed(String field) {
    return new TypedField(
        words, words.say("desk.term.field." + field), "", model.card().field(field));
  }
}
