package walebook.desk.common;

import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.collections.ObservableList;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Tooltip;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import walebook.words.Words;

/**
 * A field for one of several things.
 *
 * @param <T> what is chosen
 */
public final class ChoiceField<T> extends FieldBox {
  private final ComboBox<T> box;

  /**
   * A field over a list of choices.
   *
   * @param chosen bound both ways
   * @param name how each choice reads
   */
  public ChoiceField(
      Words words,
      String label,
      ObservableList<T> choices,
      ObjectProperty<T> chosen,
      Function<T, String> name) {
    this(words, label, new ComboBox<>(choices), chosen, name);
  }

  private ChoiceField(
      Words words,
      String label,
      ComboBox<T> box,
      ObjectProperty<T> chosen,
      Function<T, String> name) {
    super(words, label, box);
    this.box = box;
    box.setConverter(new Naming<>(name));
    box.setPromptText(words.say("desk.common.choose"));
    box.valueProperty().bindBidirectional(chosen);
    box.valueProperty().addListener((from, old, now) -> showWhole(now));
    // A hint is a window of its own, too dear to be made for every field that is shown.
    box.setOnMouseEntered(near -> hint());
    showWhole(box.getValue());
    NextField.onEnter(box, () -> !box.isShowing());
  }

  /** The combo box itself, for focus. */
  public ComboBox<T> box() {
    return box;
  }

  private void showWhole(@Nullable T now) {
    String says = box.getConverter().toString(now);
    showChosen(says);
    if (box.getTooltip() != null) {
      hint();
    }
  }

  private void hint() {
    String says = box.getConverter().toString(box.getValue());
    box.setTooltip(says.isEmpty() ? null : new Tooltip(says));
  }

  private static final class Naming<T> extends StringConverter<T> {
    private final Function<T, String> name;

    Naming(Function<T, String> name) {
      this.name = name;
    }

    @Override
    public String toString(@Nullable T thing) {
      return thing == null ? "" : name.apply(thing);
    }

    @Override
    public T fromString(String text) {
      throw new UnsupportedOperationException("choices are picked, not typed");
    }
  }
}
