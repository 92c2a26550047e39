package walebook.desk.term;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.compare.assessed.Coverage;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.Segments;
import walebook.desk.common.Texts;
import walebook.record.Criterion;
import walebook.words.Words;

/** What is missing for whom, what is covered, and what the course asks for, one at a time. */
final class AssessPane extends VBox {
  private static final int ROWS = 14;

  private final Words words;
  private final AssessViewModel model;
  private final CriteriaPane criteria;
  private final VBox shown = new VBox(12);

  AssessPane(Words words, AssessViewModel model) {
    super(12);
    this.words = words;
    this.model = model;
    this.criteria = new CriteriaPane(words, model.criteria());
    setMinHeight(USE_PREF_SIZE);
    Label time = Texts.text("", "strong");
    time.textProperty().bind(model.timeProperty());
    time.visibleProperty().bind(time.textProperty().isNotEmpty());
    time.managedProperty().bind(time.visibleProperty());
    model.warningProperty().addListener((from, old, now) -> warn(time, now));
    warn(time, model.warningProperty().get());
    getChildren()
        .setAll(
            time,
            new Segments<>(
                List.of(AssessViewModel.Part.values()), model.partProperty(), this::partName),
            shown);
    model.partProperty().addListener((from, old, now) -> show());
    model.onlyProperty().addListener((from, old, now) -> show());
    model.coverageProperty().addListener((from, old, now) -> show());
    show();
  }

  private static void warn(Label time, boolean now) {
    time.getStyleClass().remove("caution");
    if (now) {
      time.getStyleClass().add("caution");
    }
  }

  private void show() {
    switch (model.partProperty().get()) {
      case MISSING -> shown.getChildren().setAll(missing());
      case COVERAGE -> shown.getChildren().setAll(coverage());
      case CRITERIA -> {
        // Shown already it stays as it is: the focus may be in it.
        if (!shown.getChildren().contains(criteria)) {
          shown.getChildren().setAll(criteria);
        }
      }
    }
  }

  private List<Node> missing() {
    List<Node> nodes = new ArrayList<>();
    var only = model.onlyProperty().get();
    if (only != null) {
      Button all = new Button(words.say("desk.term.assess.everybody"));
      all.setOnAction(pressed -> model.only(null));
      String whose = words.say("desk.term.assess.only", model.called(only));
      nodes.add(new FlowPane(8, 8, Texts.text(whose, "strong"), all));
    }
    ColumnTable<Coverage.Gap> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.term.assess.missing"));
    boolean none = model.coverageProperty().get().criteria().isEmpty();
    table.setPlaceholder(
        Texts.text(
            words.say(none ? "desk.term.assess.no-criteria" : "desk.term.assess.nothing"), "soft"));
    table.wrapped(words.say("desk.term.assess.student"), 13, gap -> model.called(gap.student()));
    table.words(words.say("desk.term.assess.code"), 10, gap -> gap.criterion().code());
    TableColumn<Coverage.Gap, Coverage.Cell> standing =
        cells(words.say("desk.term.assess.standing"), Coverage.Gap::cell);
    table.made(standing, 12);
    table.wrapped(words.say("desk.term.assess.asks"), 36, gap -> gap.criterion().says());
    table.setItems(model.gaps());
    table.asHighAs(ROWS);
    table.opens(model::open);
    nodes.add(table);
    nodes.add(Texts.caption(words.say("desk.term.assess.missing-note")));
    return nodes;
  }

  private List<Node> coverage() {
    Coverage coverage = model.coverageProperty().get();
    ColumnTable<Coverage.Row> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.term.assess.coverage"));
    table.setPlaceholder(Texts.text(words.say("desk.term.assess.no-students"), "soft"));
    table.wrapped(words.say("desk.term.assess.student"), 13, row -> model.called(row.student()));
    table.figures(
        words.say("desk.term.assess.covered"),
        7,
        row -> (double) row.covered(),
        row -> words.say("desk.term.assess.of", row.covered(), coverage.criteria().size()));
    for (int i = 0; i < coverage.criteria().size(); i++) {
      int at = i;
      Criterion criterion = coverage.criteria().get(i);
      TableColumn<Coverage.Row, Coverage.Cell> column =
          cells(criterion.code(), row -> row.cells().get(at));
      table.made(column, 11);
    }
    table.getItems().setAll(coverage.rows());
    table.asHighAs(ROWS);
    table.opens(row -> model.only(row.student()));
    List<Node> nodes = new ArrayList<>();
    if (coverage.criteria().isEmpty()) {
      nodes.add(Texts.text(words.say("desk.term.assess.no-criteria"), "soft"));
    }
    nodes.add(table);
    nodes.add(Texts.caption(words.say("desk.term.assess.coverage-note")));
    for (Criterion each : coverage.criteria()) {
      nodes.add(Texts.text(words.say("desk.term.assess.line", each.code(), each.says()), "soft"));
    }
    return nodes;
  }

  private <T> TableColumn<T, Coverage.Cell> cells(String title, Function<T, Coverage.Cell> cell) {
    TableColumn<T, Coverage.Cell> column = new TableColumn<>(title);
    column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(cell.apply(row.getValue())));
    column.setCellFactory(of -> new StandingCell<>(words));
    column.setComparator(Comparator.comparing(Coverage.Cell::standing));
    return column;
  }

  private String partName(AssessViewModel.Part part) {
    return words.say(
        switch (part) {
          case MISSING -> "desk.term.assess.missing";
          case COVERAGE -> "desk.term.assess.coverage";
          case CRITERIA -> "desk.term.assess.criteria";
        });
  }
}
