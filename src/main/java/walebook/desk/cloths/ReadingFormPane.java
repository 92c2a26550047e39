package walebook.desk.cloths;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.scene.layout.VBox;
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
import walebook.words.Words;

/** The fields of a reading, in the order of the hands; how it was done is folded below. */
final class ReadingFormPane extends VBox {
  private final Words words;
  private final ReadingFormViewModel model;

  ReadingFormPane(Words words, ReadingFormViewModel model, Unit unit) {
    super(16);
    this.words = words;
    this.model = model;
    FieldGroup lengths =
        new FieldGroup(words.say("desk.cloths.reading.lengths"))
            .add(picked("grain", Grain.values()), 12)
            .add(typed("gauge", unit), 11)
            .add(typed("stretched", unit), 11)
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
    getChildren().setAll(lengths, new Fold(words.say("desk.cloths.reading.more"), how));
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
