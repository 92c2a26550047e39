package walebook.desk.term;

import java.util.Arrays;
import java.util.List;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.FlowPane;
import walebook.act.assess.KeepCriteria;
import walebook.compare.assessed.MarkWords;
import walebook.desk.common.FieldBox;
import walebook.desk.common.FormFields;
import walebook.record.Marking;
import walebook.words.Words;

/** A box for each mark: ticked when it counts for the criterion on the card. */
final class CriterionMarks extends FieldBox {
  private final CriteriaViewModel model;
  private final List<CheckBox> boxes;

  CriterionMarks(Words words, CriteriaViewModel model) {
    this(words, model, new FlowPane(16, 8));
  }

  private CriterionMarks(Words words, CriteriaViewModel model, FlowPane row) {
    super(words, words.say("desk.term.criteria.counts"), row);
    this.model = model;
    this.boxes = Arrays.stream(Marking.values()).map(each -> box(words, each)).toList();
    row.getChildren().setAll(boxes);
    FormFields.Field field = model.card().field(KeepCriteria.MARKS);
    field.text().addListener((from, old, now) -> show());
    field.problem().addListener((from, old, now) -> showProblem(now));
    showProblem(field.problem().get());
    show();
  }

  private CheckBox box(Words words, Marking marking) {
    CheckBox box = new CheckBox(words.say(MarkWords.of(marking)));
    box.setUserData(marking);
    box.setOnAction(pressed -> model.lookAt(marking, box.isSelected()));
    return box;
  }

  private void show() {
    for (CheckBox box : boxes) {
      if (box.getUserData() instanceof Marking marking) {
        box.setSelected(model.looksAt(marking));
      }
    }
  }
}
