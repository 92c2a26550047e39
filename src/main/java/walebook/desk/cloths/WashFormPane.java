package walebook.desk.cloths;

import javafx.scene.layout.VBox;
import walebook.act.cloth.LogWash;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.Texts;
import walebook.desk.common.TypedField;
import walebook.quantity.Unit;
import walebook.record.Grain;
import walebook.words.Words;

/** The fields of a wash: before and after along each grain, how it was washed and when. */
final class WashFormPane extends VBox {
  private final Words words;
  private final WashFormViewModel model;
  private final TypedField first;

  WashFormPane(Words words, WashFormViewModel model, Unit unit) {
    super(16);
    this.words = words;
    this.model = model;
    FieldGroup lengths = new FieldGroup(words.say("desk.cloths.wash.lengths"));
    this.first = typed(LogWash.field(Grain.WALE, true), unit, "");
    lengths
        .add(typed(LogWash.field(Grain.WALE, false), unit, ""), 10)
        .add(first, 10)
        .add(typed(LogWash.field(Grain.COURSE, false), unit, ""), 10)
        .add(typed(LogWash.field(Grain.COURSE, true), unit, ""), 10);
    lengths.below(Texts.caption(words.say("desk.cloths.wash.note")));
    FieldGroup how =
        new FieldGroup(words.say("desk.cloths.wash.how"))
            .add(typed("wash", unit, words.say("desk.cloths.prompt.wash")), 24)
            .add(typed("washed-on", unit, ""), 11);
    getChildren().setAll(lengths, how);
  }

  /** The first length that is not filled in. */
  TypedField first() {
    return first;
  }

  private TypedField typed(String field, Unit unit, String prompt) {
    return new TypedField(
        words,
        words.say("desk.cloths.field." + field, unit.sign()),
        prompt,
        model.fields().field(field));
  }
}
