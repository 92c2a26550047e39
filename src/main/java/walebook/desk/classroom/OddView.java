package walebook.desk.classroom;

import javafx.beans.Observable;
import javafx.collections.FXCollections;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.act.classroom.CorrectReading;
import walebook.compare.odd.OddFindings;
import walebook.compare.odd.OddReading;
import walebook.desk.common.ChoiceField;
import walebook.desk.common.ColumnTable;
import walebook.desk.common.Texts;
import walebook.desk.common.TypedField;
import walebook.quantity.Show;
import walebook.record.Mark;
import walebook.record.PieceCode;
import walebook.words.Words;

/** Odd values with their reason; one opens to be kept, put right or set aside. */
final class OddView extends VBox {
  private static final int ROWS = 9;

  private final OddViewModel model;
  private final Words words;
  private final VBox list = new VBox(8);
  private final VBox one = new VBox(12);

  OddView(OddViewModel model) {
    super(16);
    this.model = model;
    this.words = model.words();
    one.getStyleClass().add("card");
    model.rows().addListener((Observable change) -> show());
    model.loadedProperty().addListener((from, old, now) -> show());
    model.openProperty().addListener((from, old, now) -> showOne(now));
    model.wrongProperty().addListener((from, old, now) -> showOne(model.openProperty().get()));
    getChildren().setAll(new NarrowingRow(words, model.narrowing()), list);
    show();
  }

  private void show() {
    list.getChildren().clear();
    if (!model.loadedProperty().get()) {
      return;
    }
    if (model.rows().isEmpty()) {
      list.getChildren().add(Texts.text(words.say("desk.class.odd.empty")));
      return;
    }
    ColumnTable<OddReading> table = new ColumnTable<>();
    table.setAccessibleText(words.say("desk.class.odd"));
    table.words(words.say("desk.class.odd.which"), 9, this::which);
    table.words(words.say("desk.class.col.student"), 11, OddReading::who);
    table.words(words.say("desk.class.odd.what"), 10, this::what);
    table.figures(
        words.say("desk.class.odd.value"),
        5,
        OddReading::number,
        each -> Show.fixed(each.number(), 1));
    table.figures(
        words.say("desk.class.odd.middle"),
        5,
        each -> each.median() == null ? Double.NaN : each.median(),
        each -> each.median() == null ? "–" : Show.fixed(each.median(), 1));
    table.words(words.say("desk.class.odd.mark"), 10, this::mark);
    table.words(words.say("desk.class.odd.why"), 30, this::why);
    table.opens(model::open);
    table.getItems().setAll(model.rows());
    table.asHighAs(ROWS);
    list.getChildren().setAll(table, Texts.caption(words.say("desk.class.odd.note")));
  }

  private String which(OddReading of) {
    return of.code().isEmpty() ? String.join(" · ", of.about()) : PieceCode.spoken(of.code());
  }

  private String what(OddReading of) {
    return words.say("compare.value." + of.value().key());
  }

  private String why(OddReading of) {
    return String.join(" ", OddFindings.of(of).stream().map(words::say).toList());
  }

  private String mark(OddReading of) {
    Mark mark = of.mark() == null ? null : of.mark().mark();
    if (mark == null) {
      return words.say("desk.class.odd.open");
    }
    return words.say(
        switch (mark) {
          case KEPT -> "desk.class.odd.kept";
          case MISTYPED -> "desk.class.odd.mistyped";
          case SET_ASIDE -> "desk.class.odd.set-aside";
        });
  }

  private void showOne(@Nullable OddReading of) {
    getChildren().remove(one);
    String wrong = model.wrongProperty().get();
    if (of == null || wrong == null) {
      return;
    }
    one.getChildren()
        .setAll(
            Texts.section(which(of) + " · " + what(of) + " · " + Show.fixed(of.number(), 1)),
            Texts.text(why(of)));
    if (of.mark() != null && !of.mark().reason().isEmpty()) {
      one.getChildren()
          .add(Texts.caption(words.say("desk.class.odd.reason-was", of.mark().reason())));
    }
    one.getChildren().addAll(looking(of), right(of, wrong), aside());
    getChildren().add(1, one);
  }

  private FlowPane looking(OddReading of) {
    Button see =
        button(of.value().isOfCloth() ? "desk.class.odd.see-cloth" : "desk.class.odd.see-piece");
    see.setOnAction(pressed -> model.see());
    Button keep = button("desk.class.odd.keep");
    keep.setOnAction(pressed -> model.keep());
    Button close = button("desk.class.pieces.close");
    close.getStyleClass().add("quiet");
    close.setOnAction(pressed -> model.open(null));
    return new FlowPane(8, 8, see, keep, close);
  }

  private FlowPane right(OddReading of, String wrong) {
    ChoiceField<@Nullable String> field =
        new ChoiceField<>(
            words,
            words.say("desk.class.odd.field"),
            FXCollections.observableArrayList(CorrectReading.fields(of.value())),
            model.wrongProperty(),
            key -> words.say("desk.class.odd.field." + key));
    TypedField typed =
        new TypedField(words, words.say("desk.class.odd.right"), "", model.form().field(wrong));
    Button save = button("desk.class.odd.put-right");
    save.setOnAction(pressed -> model.mistyped());
    return row(field, typed, save);
  }

  private FlowPane aside() {
    TypedField reason =
        new TypedField(words, words.say("desk.class.odd.reason"), "", model.form().field("reason"));
    Button save = button("desk.class.odd.leave-out");
    save.setOnAction(pressed -> model.setAside());
    reason.setStyle("-fx-pref-width: 26em;");
    return row(reason, save);
  }

  private static FlowPane row(Node... nodes) {
    FlowPane row = new FlowPane(nodes);
    row.getStyleClass().add("field-row");
    row.setRowValignment(VPos.BOTTOM);
    return row;
  }

  private Button button(String key) {
    return new Button(words.say(key));
  }
}
