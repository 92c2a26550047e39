package walebook.desk.pieces;

import java.util.EnumMap;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import org.jspecify.annotations.Nullable;
import walebook.act.piece.PieceField;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.FieldBox;
import walebook.desk.common.IntoView;
import walebook.desk.common.NextField;
import walebook.words.Words;

/** Builds the control of each field of the log form, and knows where its focus goes. */
final class FieldViews {
  private final Words words;
  private final LogFormViewModel model;
  private final Map<PieceField, Node> targets = new EnumMap<>(PieceField.class);

  FieldViews(Words words, LogFormViewModel model) {
    this.words = words;
    this.model = model;
  }

  /** The field's label, control and problem, hidden while it is not asked for. */
  FieldBox of(PieceField which) {
    LogField field = model.field(which);
    return switch (which) {
      case END, END_2, END_3 -> toggles(field, "big");
      case GRADE, OUTCOME -> toggles(field, "plain");
      default -> field.field().kind() == PieceField.Kind.CHOICE ? choice(field) : typed(field);
    };
  }

  /** Puts the focus on a field. */
  void focus(@Nullable PieceField which) {
    Node target = which == null ? null : targets.get(which);
    if (target != null) {
      target.requestFocus();
      IntoView.showWhole(target);
    }
  }

  private FieldBox typed(LogField field) {
    TextField control = new TextField();
    control.setPromptText(prompt(field.field()));
    control.textProperty().bindBidirectional(field.textProperty());
    NextField.onEnter(
        control,
        () -> {
          field.leave();
          return true;
        });
    return bound(field, new FieldBox(words, field.label(), control), control);
  }

  private FieldBox choice(LogField field) {
    ChoiceField<Choice> box =
        new ChoiceField<>(
            words, field.label(), field.choices(), field.chosenProperty(), Choice::name);
    return bound(field, box, box.box());
  }

  private FieldBox toggles(LogField field, String style) {
    // The choices of these fields are the same in every room, so they are there from the start.
    ToggleRow row = new ToggleRow(field.label(), field.choices(), field.textProperty(), style);
    return bound(field, new FieldBox(words, field.label(), row), row.getChildren().get(0));
  }

  private FieldBox bound(LogField field, FieldBox box, Node target) {
    targets.put(field.field(), target);
    box.setId(field.field().key());
    box.visibleProperty().bind(field.askedProperty());
    box.managedProperty().bind(field.askedProperty());
    target
        .focusedProperty()
        .addListener(
            (from, was, now) -> {
              if (!now) {
                field.leave();
                model.keepDraft();
              }
            });
    field.problemProperty().addListener((from, old, now) -> box.showProblem(now));
    field.understoodProperty().addListener((from, old, now) -> box.showUnderstood(now));
    field.changedProperty().addListener((from, old, now) -> box.showChanged(now));
    box.showChanged(field.changedProperty().get());
    box.showProblem(field.problemProperty().get());
    box.showUnderstood(field.understoodProperty().get());
    return box;
  }

  private String prompt(PieceField field) {
    return field.kind() == PieceField.Kind.DATE ? words.say("desk.pieces.today") : "";
  }
}
