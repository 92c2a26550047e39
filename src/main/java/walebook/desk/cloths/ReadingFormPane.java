package walebook.desk.cloths;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import walebook.act.cloth.StartReading;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.Fold;
import walebook.desk.common.PickedField;
import walebook.desk.common.Texts;
import walebook.desk.common.TypedField;
import walebook.quantity.Unit;
import walebook.record.CutEdge;
import walebook.record.Grain;
import walebook.record.Keyed;
import walebook.record.Pull;
import walebook.record.ReadingLine;
import walebook.words.Words;

/** The fields of a reading, in the order of the hands; how it was done is folded below. */
final class ReadingFormPane extends VBox {
  private final Words words;
  private final ReadingFormViewModel model;

  ReadingFormPane(Words words, ReadingFormViewModel model, Unit unit) {
    super(16);
    this.words = words;
    this.model = model;
    TypedField stretched = typed("stretched", unit);
    // All before it is filled in: the length is what is read next, each time.
    model.askedProperty().addListener((from, old, now) -> toType(stretched));
    model.noticeProperty().addListener((from, old, now) -> toType(stretched));
    sceneProperty().addListener((from, old, now) -> toType(stretched));
    FieldGroup lengths =
        new FieldGroup(words.say("desk.cloths.reading.lengths"))
            .add(picked("grain", Grain.values()), 18)
            .add(typed("gauge", unit), 11)
            .add(stretched, 11)
            .add(typed("released", unit), 11)
            .add(typed("rest", unit), 11);
    lengths.below(Texts.caption(words.say("desk.cloths.reading.note")));
    FieldGroup how =
        new FieldGroup(words.say("desk.cloths.reading.how"))
            .add(picked("pull", Pull.values()), 15)
            .add(typed("load", unit), 9)
            .add(typed("hold", unit), 11)
            .add(picked("fold", walebook.record.Fold.values()), 11)
            .add(picked("edge", CutEdge.values()), 12)
            .add(typed("cycle", unit), 11)
            .add(typed("measured-on", unit), 11)
            .add(typed("remark", unit), 24);
    getChildren().setAll(asked(), lengths, new Fold(words.say("desk.cloths.reading.more"), how));
  }

  private void toType(TypedField field) {
    if (getScene() != null) {
      Platform.runLater(field.field()::requestFocus);
    }
  }

  /** Whose plan asks for it and how far that is. */
  private VBox asked() {
    Label says = Texts.text("", "strong");
    says.textProperty().bind(model.askedProperty().map(this::says).orElse(""));
    VBox box = new VBox(4, says, Texts.caption(words.say("desk.cloths.reading.as-lesson")));
    box.visibleProperty().bind(model.askedProperty().isNotNull());
    box.managedProperty().bind(box.visibleProperty());
    return box;
  }

  private String says(StartReading.Asked asked) {
    ReadingLine line = asked.line();
    String who = model.isNamesHidden() ? asked.student().alias() : asked.student().name();
    String grain = words.say("common.choice." + line.planned().grain().key());
    int of = line.planned().repeats();
    return line.isDone()
        ? words.say("desk.cloths.reading.asked-done", who, asked.lesson().title(), grain, of)
        : words.say(
            "desk.cloths.reading.asked", who, asked.lesson().title(), grain, line.done(), of);
  }

  private TypedField typed(String field, Unit unit) {
    return new TypedField(
        words,
        words.say("desk.cloths.field." + field, unit.sign()),
        "",
        model.fields().field(field));
  }

  private PickedField picked(String field, Keyed... choices) {
    List<String> keys = new ArrayList<>(Arrays.stream(choices).map(Keyed::key).toList());
    return new PickedField(
        words,
        words.say("desk.cloths.field." + field),
        keys,
        key -> key.isEmpty() ? "" : words.say("common.choice." + key),
        model.fields().field(field));
  }
}
