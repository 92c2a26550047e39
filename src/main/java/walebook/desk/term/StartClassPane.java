package walebook.desk.term;

import javafx.scene.layout.VBox;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.LinesField;
import walebook.desk.common.Texts;
import walebook.desk.common.TypedField;
import walebook.words.Words;

/** The fields that begin a class. */
final class StartClassPane extends VBox {
  private static final int NAMES = 8;

  private final Words words;
  private final StartClassViewModel model;

  StartClassPane(Words words, StartClassViewModel model) {
    super(16);
    this.words = words;
    this.model = model;
    FieldGroup what =
        new FieldGroup(words.say("desk.term.start.title"))
            .add(typed("class-name"), 20)
            .add(typed("meets"), 20)
            .add(typed("tutor"), 16);
    FieldGroup when =
        new FieldGroup(words.say("desk.term.start.term"))
            .add(typed("term-name"), 14)
            .add(typed("term-starts"), 11)
            .add(typed("term-ends"), 11);
    FieldGroup who =
        new FieldGroup(words.say("desk.term.students"))
            .add(
                new LinesField(
                    words,
                    words.say("desk.term.field.students"),
                    "",
                    NAMES,
                    model.fields().field("students")),
                30);
    getChildren().setAll(Texts.text(words.say("desk.term.start.says")), what, when, who);
  }

  private TypedField typed(String field) {
    return new TypedField(
        words,
        words.say("desk.term.field." + field),
        words.say("desk.term.prompt." + field),
        model.fields().field(field));
  }
}
