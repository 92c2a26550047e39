package walebook.desk.term;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.act.bring.match.BringField;
import walebook.act.bring.match.ColumnUnit;
import walebook.desk.common.KeyWords;
import walebook.desk.common.Texts;
import walebook.words.Words;

/**
 * One line for each column of the sheet: what stands over it, what it holds, its unit, some of it.
 */
final class BringColumnsPane extends VBox {
  private static final List<String> UNITS =
      List.of("", "mm", "cm", "m", "in", "%", "g", "kg", "s", "min");

  private static final String OVER = "13em";
  private static final String FIELD = "15em";
  private static final String UNIT = "8em";
  private static final String SAMPLES = "26em";

  private final Words words;
  private final BringViewModel model;
  private final VBox lines = new VBox(6);

  BringColumnsPane(Words words, BringViewModel model) {
    super(12);
    this.words = words;
    this.model = model;
    getStyleClass().add("card");
    getChildren()
        .setAll(
            Texts.section(words.say("desk.term.bring.columns")),
            Texts.text(words.say("desk.term.bring.columns-says"), "soft"),
            lines);
    model.inHandProperty().addListener((from, old, now) -> show());
    model.columns().addListener((ListChangeListener<BringColumn>) change -> emptied());
  }

  private void emptied() {
    if (model.columns().isEmpty()) {
      lines.getChildren().clear();
    }
  }

  private void show() {
    lines.getChildren().clear();
    if (model.columns().isEmpty()) {
      return;
    }
    lines
        .getChildren()
        .add(
            line(
                head("desk.term.bring.col.column", OVER),
                head("desk.term.bring.col.holds", FIELD),
                head("desk.term.bring.col.unit", UNIT),
                head("desk.term.bring.col.samples", SAMPLES)));
    for (BringColumn each : model.columns()) {
      Label over = wide(Texts.text(each.letters() + "  " + each.header()), OVER);
      lines.getChildren().add(line(over, field(each), unit(each), samples(each)));
    }
  }

  /** What has no room beside the others goes below them, so that large text is never cut. */
  private static FlowPane line(Node... parts) {
    FlowPane line = new FlowPane(12, 4, parts);
    line.setRowValignment(VPos.CENTER);
    line.setPrefWrapLength(200);
    return line;
  }

  private Label head(String key, String width) {
    return wide(Texts.text(words.say(key), "field-label"), width);
  }

  private static Label wide(Label label, String width) {
    label.setStyle("-fx-pref-width: " + width + ";");
    return label;
  }

  private ComboBox<String> field(BringColumn column) {
    List<String> keys = new ArrayList<>(List.of(""));
    BringField.of(model.whatProperty().get()).forEach(each -> keys.add(each.key()));
    ComboBox<String> box = box(keys, key -> BringPane.fieldName(words, key), column.field(), FIELD);
    box.setAccessibleText(words.say("desk.term.bring.field", column.letters()));
    return box;
  }

  /** Only units that the field can be in are offered. */
  private ComboBox<String> unit(BringColumn column) {
    ComboBox<String> box =
        box(
            UNITS,
            key -> key.isEmpty() ? words.say("desk.term.bring.usual-unit") : key,
            column.unit(),
            UNIT);
    box.setAccessibleText(words.say("desk.term.bring.unit", column.letters()));
    column.field().addListener((from, old, now) -> units(column, box));
    units(column, box);
    return box;
  }

  private void units(BringColumn column, ComboBox<String> box) {
    BringField field = BringField.find(model.whatProperty().get(), column.field().get());
    List<String> fit =
        field == null
            ? List.of("")
            : UNITS.stream().filter(each -> ColumnUnit.fits(field, each)).toList();
    if (!fit.contains(column.unit().get())) {
      column.unit().set("");
    }
    String now = column.unit().get();
    box.getItems().setAll(fit);
    box.setValue(now);
    box.setVisible(fit.size() > 1);
  }

  private ComboBox<String> box(
      List<String> keys, Function<String, String> name, ObjectProperty<String> of, String width) {
    ComboBox<String> box = new ComboBox<>(FXCollections.observableArrayList(keys));
    box.setStyle("-fx-pref-width: " + width + ";");
    box.setConverter(new KeyWords(name::apply));
    box.setValue(of.get());
    box.valueProperty()
        .addListener(
            (from, old, now) -> {
              if (now != null) {
                of.set(now);
              }
            });
    return box;
  }

  private static Label samples(BringColumn column) {
    return wide(Texts.text(String.join("  ·  ", column.samples()), "soft"), SAMPLES);
  }
}
