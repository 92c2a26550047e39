package walebook.desk.lessons;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.scene.layout.Region;
import walebook.desk.common.PickedField;
import walebook.desk.common.TypedField;
import walebook.record.Keyed;
import walebook.words.Words;

/** Makes the fields of the form in which a pack is written, and knows where each stands. */
final class WriteFields {
  private final Words words;
  private final WritePackViewModel model;
  private final FieldControls controls = new FieldControls();

  WriteFields(Words words, WritePackViewModel model) {
    this.words = words;
    this.model = model;
  }

  FieldControls controls() {
    return controls;
  }

  TypedField typed(String path, String label) {
    return typed(path, words.say(label), words.say(label));
  }

  /**
   * A field that is typed into.
   *
   * @param name what it is called where it stands by itself
   */
  TypedField typed(String path, String label, String name) {
    TypedField field = new TypedField(words, label, "", model.field(path));
    controls.put(path, field.field(), name);
    return field;
  }

  /** A field for one of several keys; an empty one stands for none. */
  PickedField picked(String path, String label, String name, List<String> keys) {
    PickedField field =
        new PickedField(
            words, label, keys, key -> key.isEmpty() ? "" : choice(key), model.field(path));
    keep(path, field, name);
    return field;
  }

  void keep(String path, Region field, String name) {
    controls.put(path, field.getChildrenUnmodifiable().get(1), name);
  }

  RowsGrid grid(
      String title, List<RowsGrid.Column> columns, Function<Integer, String> row, int most) {
    return new RowsGrid(words, words.say(title), model, controls, columns, row, most);
  }

  RowsGrid.Column column(String path, String title, double ems) {
    return RowsGrid.Column.typed(path, words.say(title), ems);
  }

  RowsGrid.Column says(double ems) {
    return column(".says", "desk.lessons.write.says", ems);
  }

  static <T extends Enum<T> & Keyed> List<String> keys(Class<T> kind) {
    List<String> keys = new ArrayList<>(List.of(""));
    for (T each : kind.getEnumConstants()) {
      keys.add(each.key());
    }
    return keys;
  }

  String choice(String key) {
    String says = "common.choice." + key;
    return words.has(says) ? words.say(says) : key;
  }

  String setting(String key) {
    String says = "desk.lessons.setting." + key;
    return words.has(says) ? words.say(says) : key;
  }

  String check(String key) {
    String says = "desk.lessons.check." + key;
    return words.has(says) ? words.say(says) : key;
  }
}
