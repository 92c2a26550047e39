package walebook.desk.term;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import walebook.act.bring.RowFate;
import walebook.act.bring.Trial;
import walebook.act.bring.match.BringField;
import walebook.act.bring.match.BringWhat;
import walebook.act.bring.match.DayOrder;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.PlaceFrame;
import walebook.desk.common.Segments;
import walebook.desk.common.Texts;
import walebook.record.Student;
import walebook.words.Words;

/** What becomes of each row, how much comes in, and the actions. */
final class BringRowsPane extends VBox {
  private static final int ROWS = 12;

  private final Words words;
  private final BringViewModel model;
  private final BringRowsViewModel rows;

  BringRowsPane(Words words, BringViewModel model) {
    super(16);
    this.words = words;
    this.model = model;
    this.rows = model.rows();
    VBox fates = fates();
    BringPane.shownWith(fates, rows.trialProperty().isNotNull());
    getChildren().setAll(student(), order(), fates);
  }

  /** Tries the rows first, then brings them in. */
  void foot(PlaceFrame frame) {
    Button refused = new Button(words.say("desk.term.bring.refused-rows"));
    refused.setOnAction(pressed -> rows.saveRefused());
    refused
        .disableProperty()
        .bind(
            model
                .workingProperty()
                .or(
                    Bindings.createBooleanBinding(
                        () -> {
                          Trial now = rows.trialProperty().get();
                          return now == null || !now.hasProblems();
                        },
                        rows.trialProperty())));
    Button go = new Button();
    BooleanBinding tried = rows.trialProperty().isNotNull();
    go.textProperty()
        .bind(
            Bindings.createStringBinding(
                () ->
                    rows.trialProperty().get() == null
                        ? words.say("desk.term.bring.go-later")
                        : words.say("desk.term.bring.go", rows.comesIn()),
                rows.trialProperty(),
                rows.goodRowsProperty()));
    go.setOnAction(pressed -> rows.bringIn());
    go.disableProperty()
        .bind(
            model
                .workingProperty()
                .or(
                    Bindings.createBooleanBinding(
                        () -> rows.comesIn() == 0, rows.trialProperty(), rows.goodRowsProperty())));
    Button attempt = new Button();
    attempt
        .textProperty()
        .bind(
            model
                .workingProperty()
                .map(now -> words.say(now ? "desk.term.bring.trying" : "desk.term.bring.try")));
    attempt.setOnAction(pressed -> rows.tryRows());
    attempt.disableProperty().bind(model.workingProperty().or(model.inHandProperty().isNull()));
    BringPane.shownWith(refused, tried);
    frame.primary(go).lesser(attempt).lesser(refused);
  }

  private Node student() {
    ChoiceField<Student> student =
        new ChoiceField<>(
            words,
            words.say("desk.term.bring.student"),
            rows.students(),
            rows.studentProperty(),
            Student::name);
    student.setStyle("-fx-pref-width: 24em; -fx-max-width: 24em;");
    BringPane.shownWith(
        student,
        Bindings.createBooleanBinding(
            () ->
                model.whatProperty().get() == BringWhat.PIECES
                    && model.columns().stream()
                        .noneMatch(each -> each.field().get().equals(BringField.STUDENT)),
            model.whatProperty(),
            model.inHandProperty(),
            rows.trialProperty(),
            model.workingProperty(),
            model.saysProperty()));
    return student;
  }

  private Node order() {
    Segments<DayOrder> order =
        new Segments<>(
            List.of(DayOrder.UNKNOWN, DayOrder.DAY_FIRST, DayOrder.MONTH_FIRST),
            rows.orderProperty(),
            each ->
                words.say(
                    switch (each) {
                      case UNKNOWN -> "desk.term.bring.order-unknown";
                      case DAY_FIRST -> "desk.term.bring.order-day";
                      case MONTH_FIRST -> "desk.term.bring.order-month";
                    }));
    VBox box = new VBox(6, Texts.text(words.say("desk.term.bring.order"), "field-label"), order);
    BringPane.shownWith(box, rows.needsOrderProperty());
    return box;
  }

  private VBox fates() {
    Label counts = Texts.text("", "strong");
    counts.textProperty().bind(rows.trialProperty().map(rows::counts).orElse(""));
    Segments<Boolean> which =
        new Segments<>(
            List.of(false, true),
            two(rows.onlyProblemsProperty()),
            each -> words.say(each ? "desk.term.bring.show-problems" : "desk.term.bring.show-all"));
    Segments<Boolean> howMuch =
        new Segments<>(
            List.of(false, true),
            two(rows.goodRowsProperty()),
            each ->
                words.say(each ? "desk.term.bring.good-rows" : "desk.term.bring.all-or-nothing"));
    CheckBox sure = new CheckBox(words.say("desk.term.bring.sure"));
    sure.selectedProperty().bindBidirectional(rows.sureProperty());
    ColumnTable<RowFate> table = table();
    Label reasons = Texts.text("");
    reasons
        .textProperty()
        .bind(table.getSelectionModel().selectedItemProperty().map(this::lines).orElse(""));
    BringPane.shownWith(reasons, reasons.textProperty().isNotEmpty());
    VBox card =
        new VBox(
            12,
            Texts.section(words.say("desk.term.bring.fates")),
            counts,
            which,
            table,
            reasons,
            Texts.caption(words.say("desk.term.bring.choose-row")),
            Texts.text(words.say("desk.term.bring.how-much"), "field-label"),
            howMuch,
            sure);
    card.getStyleClass().add("card");
    return card;
  }

  private static ObjectProperty<Boolean> two(javafx.beans.property.BooleanProperty of) {
    ObjectProperty<Boolean> chosen = new SimpleObjectProperty<>(of.get());
    chosen.addListener((from, old, now) -> of.set(Boolean.TRUE.equals(now)));
    of.addListener((from, old, now) -> chosen.set(now));
    return chosen;
  }

  private ColumnTable<RowFate> table() {
    Map<String, String> names = BringPane.fateNames(words);
    ColumnTable<RowFate> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.term.bring.fates"));
    table.setPlaceholder(Texts.text(words.say("desk.term.bring.no-rows"), "soft"));
    table.figures(
        words.say("desk.term.bring.col.row"),
        5,
        each -> (double) each.row(),
        each -> String.valueOf(each.row()));
    table.words(
        words.say("desk.term.bring.col.fate"),
        9,
        each -> names.getOrDefault(each.fate().key(), ""));
    table.words(words.say("desk.term.bring.col.about"), 12, RowFate::about);
    table.words(words.say("desk.term.bring.col.why"), 40, this::why);
    table.setItems(rows.shown());
    table.asHighAs(ROWS);
    return table;
  }

  /** The chosen row's reasons in full, one a line. */
  private String lines(RowFate fate) {
    return fate.problems().stream().map(words::say).collect(Collectors.joining("\n"));
  }

  private String why(RowFate fate) {
    return fate.problems().stream().map(words::say).collect(Collectors.joining("; "));
  }
}
