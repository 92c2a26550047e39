package walebook.record;

import java.util.Map;
import java.util.TreeMap;

/**
 * What is typed in a form and not yet saved.
 *
 * @param form which form, such as {@code piece}
 * @param owner whose, such as the student's key and the planned piece's
 * @param typed field name to text, exactly as typed
 */
public record Draft(String form, String owner, Map<String, String> typed) {
  public Draft {
    Check.text("form", form);
    typed = Map.copyOf(new TreeMap<>(typed));
  }
}
