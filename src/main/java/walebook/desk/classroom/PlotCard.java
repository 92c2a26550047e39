package walebook.desk.classroom;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import walebook.desk.common.Notice;
import walebook.desk.common.PicturePane;
import walebook.desk.common.SavePicture;
import walebook.desk.common.Session;
import walebook.desk.common.Texts;
import walebook.drawing.Drawing;
import walebook.words.Words;

/**
 * A plot with its title, to be copied as a picture or as a table, or saved as a picture. It can
 * show one after the other.
 */
final class PlotCard extends VBox {
  private final Session session;
  private final Consumer<Notice> told;
  private final Label title = Texts.section("");
  private final Label note = Texts.caption("");
  private final PicturePane picture;
  private final FlowPane actions = new FlowPane(8, 8);
  private Supplier<List<List<String>>> numbers = List::of;

  PlotCard(Session session, Consumer<Notice> told) {
    super(8);
    this.session = session;
    this.told = told;
    Words words = session.words();
    picture = new PicturePane(words);
    getStyleClass().add("card");
    actions
        .getChildren()
        .setAll(
            quiet(words.say("desk.class.copy-picture"), this::copyPicture),
            button(() -> numbers.get()),
            quiet(
                words.say("desk.class.save-picture"),
                () -> new SavePicture(session, told).save(picture.image(), title.getText())));
    getChildren().setAll(title, note, picture, actions);
  }

  /**
   * Shows a plot.
   *
   * @param table the numbers behind it, the header first; asked for when they are copied
   */
  void show(String says, String below, Drawing drawing, Supplier<List<List<String>>> table) {
    title.setText(says);
    note.setText(below);
    note.setManaged(!below.isEmpty());
    note.setVisible(!below.isEmpty());
    picture.show(drawing);
    numbers = table;
  }

  /** A button that copies a table which has no plot. */
  Button button(Supplier<List<List<String>>> table) {
    return quiet(session.words().say("desk.class.copy-table"), () -> copy(table.get()));
  }

  private void copyPicture() {
    picture.copy();
    told.accept(new Notice(session.words().say("desk.class.copied"), null));
  }

  private void copy(List<List<String>> table) {
    ClipboardContent content = new ClipboardContent();
    content.putString(new CopiedTable(table).text());
    Clipboard.getSystemClipboard().setContent(content);
    told.accept(new Notice(session.words().say("desk.class.table-copied"), null));
  }

  private static Button quiet(String says, Runnable act) {
    Button button = new Button(says);
    button.getStyleClass().add("quiet");
    button.setOnAction(pressed -> act.run());
    return button;
  }
}
