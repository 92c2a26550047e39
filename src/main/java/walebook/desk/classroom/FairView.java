package walebook.desk.classroom;

import java.util.EnumSet;
import java.util.List;
import javafx.collections.FXCollections;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.compare.Dot;
import walebook.compare.Factor;
import walebook.compare.FairComparison;
import walebook.compare.Outcome;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.EmptyState;
import walebook.desk.common.Fold;
import walebook.desk.common.Texts;
import walebook.desk.common.TypedField;
import walebook.record.PieceCode;
import walebook.words.Words;

/** Sentences first, then settings raw and adjusted, pairs, best and worst, factor by factor. */
final class FairView extends VBox {
  private final FairViewModel model;
  private final Words words;
  private final FairTables tables;
  private final VBox answer = new VBox(16);

  FairView(FairViewModel model) {
    super(16);
    this.model = model;
    this.words = model.words();
    this.tables = new FairTables(words, model.settings());
    model.shownProperty().addListener((from, old, now) -> show());
    model.pValuesProperty().addListener((from, old, now) -> show());
    getChildren().setAll(question(), answer);
    show();
  }

  private VBox question() {
    NarrowingRow row = new NarrowingRow(words, model.narrowing());
    ChoiceField<Outcome> outcome =
        new ChoiceField<>(
            words,
            words.say("desk.class.fair.outcome"),
            FXCollections.observableArrayList(Outcome.values()),
            model.outcomeProperty(),
            each -> words.say("compare.outcome." + each.key()));
    TypedField matters =
        new TypedField(words, words.say("desk.class.fair.matters"), "", model.matters());
    outcome.setStyle("-fx-pref-width: 20em;");
    matters.setStyle("-fx-pref-width: 20em;");
    row.getChildren().addAll(outcome, matters);
    CheckBox machine = new CheckBox(words.say("desk.class.fair.within-machine"));
    machine.selectedProperty().bindBidirectional(model.withinMachineProperty());
    CheckBox p = new CheckBox(words.say("desk.class.fair.p-values"));
    p.selectedProperty().bindBidirectional(model.pValuesProperty());
    FlowPane factors = new FlowPane(16, 4);
    for (Factor factor : EnumSet.complementOf(EnumSet.of(Factor.STUDENT))) {
      CheckBox box = new CheckBox(model.settings().factor(factor));
      box.setSelected(model.tellsApart(factor));
      box.selectedProperty().addListener((from, old, now) -> model.tellApart(factor, now));
      factors.getChildren().add(box);
    }
    return new VBox(
        4,
        row,
        new FlowPane(16, 4, machine, p),
        new Fold(words.say("desk.class.factors"), factors));
  }

  private void show() {
    answer.getChildren().clear();
    FairViewModel.Shown shown = model.shownProperty().get();
    if (shown == null) {
      return;
    }
    FairComparison found = shown.found().comparison();
    VBox says = new VBox(6);
    says.getStyleClass().add("card");
    shown.says().forEach(each -> says.getChildren().add(Texts.text(each)));
    answer.getChildren().add(says);
    if (found.isEmpty()) {
      answer
          .getChildren()
          .add(
              new EmptyState(
                  words.say("desk.class.empty"),
                  words.say("desk.class.empty.begin"),
                  model::logFirst));
      return;
    }
    answer
        .getChildren()
        .addAll(
            tables.rows(found),
            Texts.caption(words.say("desk.class.fair.note")),
            Texts.caption(words.say("desk.class.fair.aside", found.setAside())),
            CopyTable.button(words.say("desk.class.copy-table"), () -> tables.cells(found)));
    if (!found.pairs().isEmpty()) {
      answer
          .getChildren()
          .addAll(
              Texts.section(words.say("desk.class.fair.pairs")),
              tables.pairs(found, model.pValuesProperty().get()));
    }
    pieces(words.say("desk.class.fair.best"), shown.found().standouts().best());
    pieces(words.say("desk.class.fair.worst"), shown.found().standouts().worst());
    for (FairComparison one : shown.tables().single()) {
      answer
          .getChildren()
          .addAll(
              Texts.section(
                  words.say("desk.class.fair.by", model.settings().factor(one.factors().get(0)))),
              tables.rows(one));
    }
  }

  private void pieces(String title, List<Dot> dots) {
    if (dots.isEmpty()) {
      return;
    }
    FlowPane all = new FlowPane(8, 8);
    for (Dot each : dots) {
      String value = (each.atLeast() ? "≥ " : "") + FairTables.number(each.value());
      Button open = new Button(PieceCode.spoken(each.code()) + "  " + value + "  " + each.who());
      open.getStyleClass().add("piece-link");
      open.setOnAction(pressed -> model.openPiece(each.pieceId()));
      all.getChildren().add(open);
    }
    answer.getChildren().addAll(Texts.section(title), all);
  }
}
