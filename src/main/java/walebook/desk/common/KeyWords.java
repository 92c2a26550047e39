package walebook.desk.common;

import java.util.function.UnaryOperator;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** Words for the keys that a box offers; they are picked, never typed. */
public final class KeyWords extends StringConverter<String> {
  private final UnaryOperator<String> says;

  public KeyWords(UnaryOperator<String> says) {
    this.says = says;
  }

  @Override
  public String toString(@Nullable String key) {
    return key == null ? "" : says.apply(key);
  }

  @Override
  public String fromString(String text) {
    throw new UnsupportedOperationException("keys are picked, not typed");
  }
}
