package walebook.desk.lessons;

import java.io.ByteArrayInputStream;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Separator;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import walebook.desk.common.Texts;
import walebook.lesson.Block;
import walebook.lesson.PackFiles;
import walebook.lesson.PackPicture;
import walebook.lesson.Run;

/** Blocks of a lesson's text, one under the other. */
final class BlocksPane extends VBox {
  private final PackFiles files;

  BlocksPane(PackFiles files, List<Block> blocks) {
    super(10);
    this.files = files;
    blocks.forEach(each -> getChildren().add(block(each)));
  }

  private Node block(Block block) {
    if (block instanceof Block.Heading heading) {
      return Texts.text(Run.plain(heading.runs()), "strong");
    }
    if (block instanceof Block.Paragraph paragraph) {
      return flow(paragraph.runs());
    }
    if (block instanceof Block.Items items) {
      return items(items);
    }
    if (block instanceof Block.Picture picture) {
      return picture(picture);
    }
    if (block instanceof Block.Table table) {
      return new WordsTable(table);
    }
    if (block instanceof Block.Quote quote) {
      VBox quoted = new BlocksPane(files, quote.blocks());
      quoted.getStyleClass().add("board-line");
      return quoted;
    }
    if (block instanceof Block.Typed typed) {
      return Texts.text(typed.text(), "typed-text");
    }
    return new Separator();
  }

  private Node items(Block.Items items) {
    VBox list = new VBox(6);
    int number = items.start();
    for (List<Block> item : items.items()) {
      Region mark = Texts.text(items.numbered() ? number + "." : "•", "list-mark");
      mark.setMinWidth(Region.USE_PREF_SIZE);
      VBox content = new BlocksPane(files, item);
      HBox.setHgrow(content, Priority.ALWAYS);
      list.getChildren().add(new HBox(8, mark, content));
      number++;
    }
    return list;
  }

  private Node picture(Block.Picture picture) {
    for (PackPicture each : files.pictures()) {
      if (each.fileName().equals(picture.shownFile())) {
        ImageView view = new ImageView(new Image(new ByteArrayInputStream(each.content())));
        view.setPreserveRatio(true);
        view.setAccessibleText(picture.alt());
        VBox frame = new VBox(6, view, Texts.caption(picture.alt()));
        frame.getStyleClass().add("lesson-picture");
        double own = view.getImage().getWidth();
        view.fitWidthProperty()
            .bind(frame.widthProperty().map(wide -> Math.min(own, wide.doubleValue() - 24)));
        frame.setMinWidth(0);
        return frame;
      }
    }
    return Texts.caption(picture.alt());
  }

  private static Node flow(List<Run> runs) {
    TextFlow flow = new TextFlow();
    for (Run run : runs) {
      Text text = new Text(run.text());
      text.getStyleClass()
          .add(
              switch (run.style()) {
                case PLAIN -> "run-plain";
                case EMPHASIS -> "run-emphasis";
                case STRONG -> "run-strong";
                case TYPED -> "run-typed";
              });
      flow.getChildren().add(text);
    }
    return flow;
  }
}
