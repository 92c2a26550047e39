package walebook.desk.classroom;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.beans.property.BooleanProperty;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.act.classroom.SettingWords;
import walebook.compare.Factor;
import walebook.compare.Outcome;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.Fold;
import walebook.desk.common.NumberField;
import walebook.words.Words;

/** The fields of what is asked; each part shows those that bear on it. */
final class FiltersView extends VBox {
  private final Map<Ask, Node> fields = new EnumMap<>(Ask.class);

  /** What can be asked. */
  enum Ask {
    LESSON,
    CLOTH,
    OUTCOME,
    MATTERS,
    FACTORS,
    MACHINE,
    P_VALUES
  }

  FiltersView(FiltersViewModel model, Words words) {
    super(4);
    fields.put(
        Ask.LESSON,
        wide(
            new ChoiceField<>(
                words,
                words.say("desk.class.lesson"),
                model.lessons(),
                model.lessonProperty(),
                Choice::name),
            20));
    fields.put(
        Ask.CLOTH,
        wide(
            new ChoiceField<>(
                words,
                words.say("desk.class.cloth"),
                model.cloths(),
                model.clothProperty(),
                Choice::name),
            13));
    fields.put(
        Ask.OUTCOME,
        wide(
            new ChoiceField<>(
                words,
                words.say("desk.class.outcome"),
                FXCollections.observableArrayList(Outcome.values()),
                model.outcomeProperty(),
                each -> words.say("compare.outcome." + each.key())),
            20));
    fields.put(
        Ask.MATTERS,
        wide(
            new NumberField(
                words,
                words.say("desk.class.matters"),
                words.say("desk.class.matters.prompt"),
                model.matters()),
            13));
    FlowPane factors = new FlowPane(16, 4);
    SettingWords settings = new SettingWords(words);
    for (Factor factor : Factor.values()) {
      CheckBox box = new CheckBox(settings.factor(factor));
      box.setSelected(model.tellsApart(factor));
      box.selectedProperty().addListener((from, old, now) -> model.tellApart(factor, now));
      factors.getChildren().add(box);
    }
    fields.put(Ask.FACTORS, new Fold(words.say("desk.class.factors"), factors));
    fields.put(
        Ask.MACHINE, box(words.say("desk.class.within-machine"), model.withinMachineProperty()));
    fields.put(Ask.P_VALUES, box(words.say("desk.class.p-values"), model.pValuesProperty()));
    FlowPane row = new FlowPane();
    row.getStyleClass().add("field-row");
    for (Ask each : List.of(Ask.LESSON, Ask.CLOTH, Ask.OUTCOME, Ask.MATTERS)) {
      row.getChildren().add(fields.get(each));
    }
    FlowPane boxes = new FlowPane(24, 4, fields.get(Ask.MACHINE), fields.get(Ask.P_VALUES));
    getChildren().setAll(row, fields.get(Ask.FACTORS), boxes);
  }

  /** Shows these fields and no others. */
  void show(Set<Ask> asked) {
    setVisible(!asked.isEmpty());
    setManaged(!asked.isEmpty());
    fields.forEach(
        (ask, node) -> {
          node.setVisible(asked.contains(ask));
          node.setManaged(asked.contains(ask));
        });
  }

  private static Node wide(Node field, int ems) {
    field.setStyle("-fx-pref-width: " + ems + "em;");
    return field;
  }

  private static Node box(String says, BooleanProperty on) {
    CheckBox box = new CheckBox(says);
    box.selectedProperty().bindBidirectional(on);
    return box;
  }
}
