package walebook.desk.common;

import javafx.collections.FXCollections;
import org.jspecify.annotations.Nullable;
import walebook.words.Words;
import walebook.working.Input;

/** The field for one input of a calculation: a number, several numbers, or a choice. */
public final class CheckField {
  private CheckField() {}

  public static FieldBox of(Words words, ChoiceWords names, CheckInput input) {
    String label = names.label(input);
    @Nullable NumberEntry number = input.number();
    if (number != null) {
      return new NumberField(words, label, "", number);
    }
    Input.Kind kind = input.input().kind();
    if (kind == Input.Kind.NUMBERS || kind == Input.Kind.LENGTHS) {
      return new TypedField(words, label, "", input.text());
    }
    return new ChoiceField<>(
        words,
        label,
        FXCollections.observableArrayList(input.input().choices()),
        input.text().text(),
        key -> names.choice(input.input(), key));
  }
}
