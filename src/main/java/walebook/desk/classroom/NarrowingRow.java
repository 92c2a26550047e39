package walebook.desk.classroom;

import javafx.scene.layout.FlowPane;
import walebook.desk.common.ChoiceField;
import walebook.words.Words;

/** The fields for lesson and cloth. */
final class NarrowingRow extends FlowPane {
  NarrowingRow(Words words, Narrowing narrowing) {
    ChoiceField<Choice> lesson =
        new ChoiceField<>(
            words,
            words.say("desk.class.lesson"),
            narrowing.lessons(),
            narrowing.lessonProperty(),
            Choice::name);
    ChoiceField<Choice> cloth =
        new ChoiceField<>(
            words,
            words.say("desk.class.cloth"),
            narrowing.cloths(),
            narrowing.clothProperty(),
            Choice::name);
    lesson.setStyle("-fx-pref-width: 20em;");
    cloth.setStyle("-fx-pref-width: 20em;");
    getStyleClass().add("field-row");
    getChildren().setAll(lesson, cloth);
  }
}
