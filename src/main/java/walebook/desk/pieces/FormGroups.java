package walebook.desk.pieces;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.act.piece.PieceField;
import walebook.desk.common.FieldBox;
import walebook.desk.common.FieldGroup;
import walebook.desk.common.Fold;
import walebook.desk.common.Texts;
import walebook.words.Words;

/** The four groups of the log form in the order of the hands. */
final class FormGroups {
  private final Words words;
  private final FieldViews views;
  private final LogFormViewModel model;
  private final Runnable toCauses;

  /**
   * Makes them.
   *
   * @param toCauses leads to the likely causes of what was seen
   */
  FormGroups(Words words, FieldViews views, LogFormViewModel model, Runnable toCauses) {
    this.toCauses = toCauses;
    this.words = words;
    this.views = views;
    this.model = model;
  }

  /** The settings of the plan as one sentence, with a way to change one. */
  VBox planned() {
    Label says = Texts.text("");
    says.textProperty().bind(model.settingsSaysProperty());
    Button open = new Button(words.say("desk.pieces.change-setting"));
    open.getStyleClass().add("quiet");
    open.setId("change-setting");
    open.setOnAction(pressed -> model.settingsOpenProperty().set(true));
    VBox card = new VBox(Texts.section(words.say("desk.pieces.as-planned")), says, open);
    card.getStyleClass().addAll("card", "as-planned");
    card.visibleProperty().bind(model.settingsOpenProperty().not());
    card.managedProperty().bind(card.visibleProperty());
    return card;
  }

  /** The cloth and the machine, while they are open. */
  VBox settings() {
    VBox open = new VBox(cloth(), machine());
    open.getStyleClass().add("log-form");
    open.visibleProperty().bind(model.settingsOpenProperty());
    open.managedProperty().bind(open.visibleProperty());
    return open;
  }

  private FieldGroup cloth() {
    FieldGroup group = new FieldGroup(words.say("desk.pieces.group.cloth"));
    add(group, PieceField.CLOTH, 17);
    add(group, PieceField.GRAIN, 19);
    add(group, PieceField.LAYERS, 6);
    return group;
  }

  private FieldGroup machine() {
    FieldGroup group = new FieldGroup(words.say("desk.pieces.group.machine"));
    add(group, PieceField.METHOD, 9);
    add(group, PieceField.MACHINE, 16);
    add(group, PieceField.STITCH, 17);
    add(group, PieceField.DIAL_WIDTH, 8);
    add(group, PieceField.DIAL_LENGTH, 8);
    add(group, PieceField.NEEDLE_POINT, 12);
    add(group, PieceField.NEEDLE_NM, 8);
    add(group, PieceField.HEM_METHOD, 18);
    add(group, PieceField.DIFFERENTIAL_FEED, 9);
    FlowPane more = row();
    for (PieceField field :
        List.of(
            PieceField.THREAD, PieceField.PRESSURE, PieceField.TENSION, PieceField.STABILISER)) {
      add(more, field, 12);
    }
    add(more, PieceField.SEWN_WIDTH, 9);
    add(more, PieceField.SEWN_LENGTH, 9);
    add(more, PieceField.OTHER_CHANGE, 18);
    Fold fold = fold("desk.pieces.group.more", more);
    fold.openProperty().bindBidirectional(model.moreOpenProperty());
    return group.below(fold);
  }

  FieldGroup measure() {
    FieldGroup group = new FieldGroup(words.say("desk.pieces.group.measure"));
    add(group, PieceField.GAUGE, 9);
    add(group, PieceField.EDGE_BEFORE, 9);
    add(group, PieceField.EDGE_SEWN, 9);
    add(group, PieceField.EDGE_PRESSED, 9);
    pull(group, PieceField.END, PieceField.END_LENGTH);
    pull(group, PieceField.END_2, PieceField.END_LENGTH_2);
    pull(group, PieceField.END_3, PieceField.END_LENGTH_3);
    FlowPane after = row();
    add(after, PieceField.BROKE, 13);
    add(after, PieceField.RELEASED, 11);
    add(after, PieceField.NEED, 9);
    FlowPane how = row();
    add(how, PieceField.REST, 9);
    add(how, PieceField.FOLD, 11);
    add(how, PieceField.PULL, 13);
    add(how, PieceField.LOAD, 9);
    add(how, PieceField.HOLD, 9);
    add(how, PieceField.MEASURED_BY, 14);
    add(how, PieceField.SEWN_ON, 9);
    add(how, PieceField.MEASURED_ON, 9);
    return group.below(after).below(fold("desk.pieces.group.how", how));
  }

  FieldGroup seen() {
    FieldGroup group = new FieldGroup(words.say("desk.pieces.group.seen"));
    group.below(views.of(PieceField.GRADE));
    group.below(new FaultPicker(words, model.faults()));
    Button causes = new Button(words.say("desk.pieces.to-causes"));
    causes.setId("to-causes");
    causes.getStyleClass().add("quiet");
    causes.visibleProperty().bind(model.causesProperty().map(each -> !each.isEmpty()));
    causes.managedProperty().bind(causes.visibleProperty());
    causes.setOnAction(pressed -> toCauses.run());
    group.below(causes);
    group.below(views.of(PieceField.OUTCOME));
    group.below(views.of(PieceField.REMARK));
    FlowPane last = row();
    add(last, PieceField.MINUTES, 9);
    group.below(last);
    return group.below(new PhotoStrip(words, model.photos()));
  }

  private void pull(FieldGroup group, PieceField end, PieceField length) {
    FlowPane row = row();
    add(row, end, 25);
    add(row, length, 9);
    row.managedProperty().bind(model.field(end).askedProperty());
    row.visibleProperty().bind(row.managedProperty());
    group.below(row);
  }

  private Fold fold(String key, Node content) {
    return new Fold(words.say(key), new VBox(content));
  }

  private static FlowPane row() {
    FlowPane row = new FlowPane();
    row.getStyleClass().add("field-row");
    row.setPrefWrapLength(200);
    return row;
  }

  private void add(FieldGroup group, PieceField field, double ems) {
    group.add(views.of(field), ems);
  }

  private void add(FlowPane row, PieceField field, double ems) {
    FieldBox box = views.of(field);
    box.setStyle("-fx-pref-width: " + ems + "em; -fx-min-width: 8em;");
    row.getChildren().add(box);
  }
}
