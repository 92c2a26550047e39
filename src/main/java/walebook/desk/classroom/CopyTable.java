package walebook.desk.classroom;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;

/** Puts a table on the clipboard, cells parted by tabs, as spreadsheets take it. */
final class CopyTable {
  private CopyTable() {}

  static Button button(String says, Supplier<List<List<String>>> rows) {
    Button button = new Button(says);
    button.getStyleClass().add("quiet");
    button.setOnAction(
        pressed -> {
          ClipboardContent content = new ClipboardContent();
          content.putString(text(rows.get()));
          Clipboard.getSystemClipboard().setContent(content);
        });
    return button;
  }

  static String text(List<List<String>> rows) {
    // Spreadsheets take the typeset minus for a word.
    return rows.stream()
        .map(row -> String.join("\t", row).replace('\u2212', '-'))
        .collect(Collectors.joining("\n"));
  }
}
