package walebook.desk.lessons;

import java.util.HashMap;
import java.util.Map;
import javafx.scene.Node;
import org.jspecify.annotations.Nullable;

/** Which control of the form stands for which field of a pack, and what it is called there. */
final class FieldControls {
  private final Map<String, Node> controls = new HashMap<>();
  private final Map<String, String> names = new HashMap<>();

  void put(String field, Node control, String name) {
    controls.put(field, control);
    names.put(field, name);
  }

  /** The control of a field, or null while it is not shown. */
  @Nullable Node of(String field) {
    return controls.get(field);
  }

  /** What a field is called in the form; its path where it is not shown. */
  String name(String field) {
    return names.getOrDefault(field, field);
  }
}
