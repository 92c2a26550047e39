package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import walebook.act.classroom.SettingWords;
import walebook.compare.Factor;
import walebook.compare.Outcome;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.Fold;
import walebook.desk.common.InTurn;
import walebook.desk.common.NumberField;
import walebook.words.Words;

/** The fields of what is asked; each part shows those that bear on it. */
final class FiltersView extends VBox {
  private final FiltersViewModel model;
  private final Words words;
  private final InTurn inTurn;
  private final Map<Ask, Node> fields = new EnumMap<>(Ask.class);
  private final Set<Ask> made = EnumSet.noneOf(Ask.class);
  private final FlowPane row = new FlowPane();
  private final VBox apart = new VBox();
  private final FlowPane boxes = new FlowPane(24, 4);

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

  FiltersView(FiltersViewModel model, Words words, InTurn inTurn) {
    super(4);
    this.model = model;
    this.words = words;
    this.inTurn = inTurn;
    row.getStyleClass().add("field-row");
    getChildren().setAll(row, apart, boxes);
  }

  /**
   * Shows these fields and no others; each is made when it is first asked for, in its turn. Until
   * then its room is kept, so that nothing below jumps.
   */
  void show(Set<Ask> asked) {
    setVisible(!asked.isEmpty());
    setManaged(!asked.isEmpty());
    fields.forEach((ask, node) -> stand(node, asked.contains(ask)));
    List<Runnable> steps = new ArrayList<>();
    for (Ask each : Ask.values()) {
      if (asked.contains(each) && !made.contains(each)) {
        if (!fields.containsKey(each)) {
          put(each, room(each));
        }
        steps.add(() -> make(each));
      }
    }
    inTurn.run(this, steps);
  }

  private void make(Ask ask) {
    made.add(ask);
    put(ask, field(ask));
  }

  private void put(Ask ask, Node field) {
    Node was = fields.put(ask, field);
    Pane into =
        switch (ask) {
          case LESSON, CLOTH, OUTCOME, MATTERS -> row;
          case FACTORS -> apart;
          case MACHINE, P_VALUES -> boxes;
        };
    if (was != null) {
      stand(field, was.isManaged());
      into.getChildren().set(into.getChildren().indexOf(was), field);
      return;
    }
    List<Node> inOrder = fields.values().stream().filter(each -> isIn(into, each, field)).toList();
    into.getChildren().add(inOrder.indexOf(field), field);
  }

  /** As much room as a field will take. */
  private static Node room(Ask ask) {
    Region room = new Region();
    String size =
        switch (ask) {
          case LESSON, OUTCOME -> "-fx-pref-width: 20em; -fx-pref-height: 3.87em;";
          case CLOTH, MATTERS -> "-fx-pref-width: 13em; -fx-pref-height: 3.87em;";
          case FACTORS, MACHINE, P_VALUES -> "-fx-pref-width: 10em; -fx-pref-height: 2.14em;";
        };
    room.setStyle(size);
    return room;
  }

  private static boolean isIn(Pane into, Node each, Node field) {
    return each == field || each.getParent() == into;
  }

  private Node field(Ask ask) {
    return switch (ask) {
      case LESSON ->
          wide(
              new ChoiceField<>(
                  words,
                  words.say("desk.class.lesson"),
                  model.lessons(),
                  model.lessonProperty(),
                  Choice::name),
              20);
      case CLOTH ->
          wide(
              new ChoiceField<>(
                  words,
                  words.say("desk.class.cloth"),
                  model.cloths(),
                  model.clothProperty(),
                  Choice::name),
              13);
      case OUTCOME ->
          wide(
              new ChoiceField<>(
                  words,
                  words.say("desk.class.outcome"),
                  FXCollections.observableArrayList(Outcome.values()),
                  model.outcomeProperty(),
                  each -> words.say("compare.outcome." + each.key())),
              20);
      case MATTERS -> wide(matters(), 13.3);
      case FACTORS -> factors();
      case MACHINE -> box(words.say("desk.class.within-machine"), model.withinMachineProperty());
      case P_VALUES -> box(words.say("desk.class.p-values"), model.pValuesProperty());
    };
  }

  /** The difference that matters, in the unit of what is compared. */
  private NumberField matters() {
    NumberField field = new NumberField(words, "", "", model.matters());
    Consumer<Outcome> call =
        outcome -> {
          boolean grade = outcome == Outcome.GRADE;
          field.rename(words.say("desk.class.matters", words.say(outcome.unit())));
          field
              .field()
              .setPromptText(
                  words.say(
                      grade ? "desk.class.matters.prompt-grade" : "desk.class.matters.prompt"));
        };
    model.outcomeProperty().addListener((from, old, now) -> call.accept(now));
    call.accept(model.outcomeProperty().get());
    return field;
  }

  /** What pieces are told apart by; the boxes are made when they are unfolded. */
  private Node factors() {
    FlowPane factors = new FlowPane(16, 4);
    Fold fold = new Fold(words.say("desk.class.factors"), factors);
    fold.openProperty()
        .addListener(
            (from, old, now) -> {
              if (factors.getChildren().isEmpty()) {
                factors.getChildren().setAll(boxes());
              }
            });
    return fold;
  }

  private List<CheckBox> boxes() {
    SettingWords settings = new SettingWords(words);
    List<CheckBox> all = new ArrayList<>();
    for (Factor factor : Factor.values()) {
      CheckBox box = new CheckBox(settings.factor(factor));
      box.setSelected(model.tellsApart(factor));
      box.selectedProperty().addListener((from, old, now) -> model.tellApart(factor, now));
      all.add(box);
    }
    return all;
  }

  private static void stand(Node node, boolean now) {
    node.setVisible(now);
    node.setManaged(now);
  }

  private static Node wide(Node field, double ems) {
    field.setStyle("-fx-pref-width: " + ems + "em;");
    return field;
  }

  private static Node box(String says, BooleanProperty on) {
    CheckBox box = new CheckBox(says);
    box.selectedProperty().bindBidirectional(on);
    return box;
  }
}
