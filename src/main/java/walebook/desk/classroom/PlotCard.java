package walebook.desk.classroom;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
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

/** A plot with its title, to be copied as a picture or as a table, or saved as a picture. */
final class PlotCard extends VBox {
  private final Session session;
  private final Consumer<Notice> told;

  PlotCard(Session session, Consumer<Notice> told) {
    super(8);
    this.session = session;
    this.told = told;
    getStyleClass().add("card");
  }

  /**
   * Shows a plot.
   *
   * @param table the numbers behind it, the header first
   * @param others what else stands in the card, below the plot
   */
  void show(String title, String note, Drawing drawing, List<List<String>> table, Node... others) {
    Words words = session.words();
    PicturePane picture = new PicturePane(words, drawing);
    FlowPane actions = new FlowPane(8, 8);
    actions
        .getChildren()
        .setAll(
            quiet(words.say("desk.class.copy-picture"), picture::copy),
            quiet(words.say("desk.class.copy-table"), () -> copy(table)),
            quiet(
                words.say("desk.class.save-picture"),
                () -> new SavePicture(session, told).save(picture.image(), title)));
    getChildren().setAll(Texts.section(title));
    if (!note.isEmpty()) {
      getChildren().add(Texts.caption(note));
    }
    getChildren().add(picture);
    getChildren().addAll(others);
    getChildren().add(actions);
  }

  /** A button that copies a table which has no plot. */
  Button button(List<List<String>> table) {
    return quiet(session.words().say("desk.class.copy-table"), () -> copy(table));
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
