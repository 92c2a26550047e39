package walebook.desk.term;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import walebook.act.bring.match.BringField;
import walebook.act.bring.match.ColumnUnit;
import walebook.desk.common.Texts;
import walebook.words.Words;

/**
 * One line for each column of the sheet: what stands over it, what it holds, its unit, some of it.
 */
final class BringColumnsPane extends VBox {
  private static final List<String> UNITS =
      List.of("", "mm", "cm", "m", "in", "%", "g", "kg", "s", "min");

  private final Words words;
  private final BringViewModel model;
  private final GridPane grid = new GridPane();

  BringColumnsPane(Words words, BringViewModel model) {
    super(12);
    this.words = words;
    this.model = model;
    getStyleClass().add("card");
    grid.setHgap(12);
    grid.setVgap(6);
    ColumnConstraints samples = new ColumnConstraints();
    samples.setHgrow(Priority.ALWAYS);
    grid.getColumnConstraints()
        .setAll(new ColumnConstraints(), new ColumnConstraints(), new ColumnConstraints(), samples);
    getChildren()
        .setAll(
            Texts.section(words.say("desk.term.bring.columns")),
            Texts.text(words.say("desk.term.bring.columns-says"), "soft"),
            grid);
    model.inHandProperty().addListener((from, old, now) -> show());
    model.columns().addListener((ListChangeListener<BringColumn>) change -> emptied());
  }

  private void emptied() {
    if (model.columns().isEmpty()) {
      grid.getChildren().clear();
    }
  }

  private void show() {
    grid.getChildren().clear();
    if (model.columns().isEmpty()) {
      return;
    }
    grid.addRow(
        0,
        Texts.text(words.say("desk.term.bring.col.column"), "field-label"),
        Texts.text(words.say("desk.term.bring.col.holds"), "field-label"),
        Texts.text(words.say("desk.term.bring.col.unit"), "field-label"),
        Texts.text(words.say("desk.term.bring.col.samples"), "field-label"));
    int line = 1;
    for (BringColumn each : model.columns()) {
      Label over = Texts.text(each.letters() + "  " + each.header());
      over.setStyle("-fx-pref-width: 14em;");
      grid.addRow(line++, over, field(each), unit(each), samples(each));
    }
  }

  private ComboBox<String> field(BringColumn column) {
    List<String> keys = new ArrayList<>(List.of(""));
    BringField.of(model.whatProperty().get()).forEach(each -> keys.add(each.key()));
    ComboBox<String> box =
        box(keys, key -> BringPane.fieldName(words, key), column.field(), "15em");
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
            "8em");
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
    box.setStyle("-fx-pref-width: " + width + "; -fx-min-width: " + width + ";");
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(@Nullable String key) {
            return key == null ? "" : name.apply(key);
          }

          @Override
          public String fromString(String text) {
            throw new UnsupportedOperationException("fields are picked, not typed");
          }
        });
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
    return Texts.text(String.join("  ·  ", column.samples()), "soft");
  }
}
