package walebook.desk.classroom;

import java.util.ArrayList;
import java.util.List;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.IntoView;
import walebook.desk.common.Texts;
import walebook.desk.common.TypedField;
import walebook.words.Words;

/** The list of odd readings, and the marks for the one that is chosen. */
final class OddView extends AskedPart<List<OddViewModel.Row>> {
  private static final int ROWS = 7;

  private final OddViewModel model;
  private final Words words;
  private final VBox list = new VBox(8);
  private final VBox chosen = new VBox(12);

  OddView(OddViewModel model, Around around) {
    super(model, around, FiltersView.Ask.LESSON, FiltersView.Ask.CLOTH);
    this.model = model;
    this.words = model.words();
    chosen.getStyleClass().add("card");
    model.chosenProperty().addListener((from, old, now) -> choose(now));
    model.noticeProperty().addListener((from, old, now) -> around.told().accept(now));
    follow();
    choose(model.chosenProperty().get());
    getChildren().setAll(list, chosen);
  }

  @Override
  String called() {
    return words.say("desk.class.odd");
  }

  @Override
  List<Finding> large(List<OddViewModel.Row> rows) {
    if (rows.isEmpty()) {
      return List.of();
    }
    List<String> says = new ArrayList<>(List.of(counts(rows)));
    // Whose it is is nobody's business but theirs: the code tells them.
    for (OddViewModel.Row each : rows) {
      says.add(words.say("desk.class.odd.board", each.what(), each.value(), each.why().get(0)));
    }
    return large(says, null, "");
  }

  @Override
  void show(@Nullable List<OddViewModel.Row> rows) {
    inTurn(List.of());
    boolean working = rows == null && model.session().schoolClassProperty().get() != null;
    if (working) {
      list.getChildren().clear();
      return;
    }
    if (rows == null || rows.isEmpty()) {
      list.getChildren().setAll(Texts.text(words.say("desk.class.odd.empty")));
      return;
    }
    ColumnTable<OddViewModel.Row> table = table(List.of());
    table.opens(model::choose);
    List<Runnable> steps = new ArrayList<>();
    steps.add(() -> stand(rows, table));
    steps.addAll(table.others(rows));
    inTurn(steps);
  }

  private void stand(List<OddViewModel.Row> rows, Node table) {
    list.getChildren()
        .setAll(
            Texts.text(counts(rows), "says"),
            table,
            Texts.caption(words.say("desk.class.odd.note")));
  }

  private String counts(List<OddViewModel.Row> rows) {
    long marked = rows.stream().filter(each -> each.odd().isLookedAt()).count();
    return words.say("desk.class.odd.says", rows.size() - marked, marked);
  }

  private ColumnTable<OddViewModel.Row> table(List<OddViewModel.Row> rows) {
    ColumnTable<OddViewModel.Row> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.class.odd"));
    table.wrapped(words.say("desk.class.odd.col.what"), 8.5, OddViewModel.Row::what);
    table.wrapped(words.say("desk.class.col.student"), 9, row -> row.odd().who());
    table.wrapped(words.say("desk.class.odd.col.value"), 9.5, OddViewModel.Row::value);
    table.figures(
        words.say("desk.class.odd.col.number"),
        5,
        row -> row.odd().number(),
        OddViewModel.Row::number);
    var why = table.words(words.say("desk.class.odd.col.why"), 20, each -> each.why().get(0));
    table.wrapped(words.say("desk.class.odd.col.mark"), 9, OddViewModel.Row::marked);
    table.takesRest(why, 14);
    table.getItems().setAll(rows);
    table.asHighAs(ROWS);
    return table;
  }

  private void choose(OddViewModel.@Nullable Row row) {
    chosen.setVisible(row != null);
    chosen.setManaged(row != null);
    if (row == null) {
      chosen.getChildren().clear();
      return;
    }
    boolean cloth = row.odd().value().isOfCloth();
    String open = words.say(cloth ? "desk.class.odd.open-cloth" : "desk.class.odd.open");
    chosen
        .getChildren()
        .setAll(
            Texts.section(
                words.say(
                    "desk.class.odd.chosen",
                    row.what(),
                    row.odd().who(),
                    row.value(),
                    row.number())));
    // The first reason stands in the row above.
    row.why().stream().skip(1).forEach(each -> chosen.getChildren().add(Texts.text(each)));
    if (!row.rule().isEmpty()) {
      chosen.getChildren().add(Texts.caption(row.rule()));
    }
    if (!row.marked().isEmpty()) {
      chosen.getChildren().add(Texts.caption(row.marked()));
    }
    FlowPane first =
        new FlowPane(
            8,
            8,
            button(open, model::openChosen),
            button(words.say("desk.class.odd.keep"), model::keep));
    chosen.getChildren().addAll(first, mistyped(), aside());
    IntoView.showWhole(chosen);
  }

  private Node mistyped() {
    ChoiceField<String> which =
        new ChoiceField<>(
            words,
            words.say("desk.class.odd.which"),
            FXCollections.observableArrayList(model.fields()),
            model.fieldProperty(),
            model::fieldName);
    TypedField right =
        new TypedField(words, model.rightName(), "", model.form().field(OddViewModel.RIGHT));
    which.setStyle("-fx-pref-width: 22em;");
    right.setStyle("-fx-pref-width: 12em;");
    Button put = button("", model::mistyped);
    put.textProperty()
        .bind(
            model
                .form()
                .asksProperty()
                .map(
                    asks ->
                        words.say(asks ? "desk.common.save-anyway" : "desk.class.odd.mistype")));
    return row(which, right, put);
  }

  private Node aside() {
    TypedField reason =
        new TypedField(
            words,
            words.say("desk.class.odd.reason"),
            words.say("desk.class.odd.reason.prompt"),
            model.form().field(OddViewModel.REASON));
    reason.setStyle("-fx-pref-width: 24em;");
    return row(reason, button(words.say("desk.class.odd.set-aside"), model::setAside));
  }

  private static Node row(Node... nodes) {
    FlowPane row = new FlowPane(nodes);
    row.getStyleClass().add("field-row");
    row.setRowValignment(javafx.geometry.VPos.BOTTOM);
    return row;
  }

  private static Button button(String says, Runnable act) {
    Button button = new Button(says);
    button.setOnAction(pressed -> act.run());
    return button;
  }
}
