package walebook.desk.lessons;

import java.util.List;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.collections.FXCollections;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListCell;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.FieldBox;
import walebook.desk.common.FormFields;
import walebook.desk.common.KeyWords;
import walebook.words.Words;

/** Adds a line to a field of lines by choosing it, so that nobody has to know how it is written. */
final class AddLine extends FieldBox {
  /**
   * A choice.
   *
   * @param lines as they are written into the field
   * @param name how one reads in the list
   */
  AddLine(
      Words words,
      String label,
      List<String> lines,
      Function<String, String> name,
      FormFields.Field to) {
    this(words, label, new ComboBox<>(FXCollections.observableArrayList(lines)), name, to);
  }

  private AddLine(
      Words words,
      String label,
      ComboBox<String> box,
      Function<String, String> name,
      FormFields.Field to) {
    super(words, label, box);
    box.setPromptText(words.say("desk.common.choose"));
    box.setConverter(new KeyWords(name::apply));
    box.setButtonCell(new Asks(box.getPromptText(), name));
    box.setOnAction(
        chosen -> {
          String line = box.getValue();
          if (line != null) {
            add(line, to);
            // A box can't be emptied while it tells of its choice.
            Platform.runLater(() -> box.setValue(null));
          }
        });
  }

  /** A box that is emptied again shows nothing by itself, not what it asks. */
  private static final class Asks extends ListCell<String> {
    private final String prompt;
    private final Function<String, String> name;

    Asks(String prompt, Function<String, String> name) {
      this.prompt = prompt;
      this.name = name;
    }

    @Override
    protected void updateItem(@Nullable String line, boolean empty) {
      super.updateItem(line, empty);
      setText(empty || line == null ? prompt : name.apply(line));
    }
  }

  private static void add(String line, FormFields.Field to) {
    String before = to.text().get().strip();
    if (before.lines().noneMatch(each -> each.strip().equals(line))) {
      to.text().set(before.isEmpty() ? line : before + "\n" + line);
    }
  }
}
