package walebook.desk.pieces;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.PicturePane;
import walebook.desk.common.WorkingPane;
import walebook.words.Words;

/** What a piece's numbers mean: verdict, gauge and stitch to scale, and how it was worked. */
final class MeaningPane extends VBox {
  private final WorkingPane working;
  private final PicturePane gauge;
  private final PicturePane stitch;

  /**
   * Makes it empty.
   *
   * @param causes stand right below the verdict
   */
  MeaningPane(Words words, CausesPane causes, Node... below) {
    working = new WorkingPane(words);
    gauge = new PicturePane(words);
    stitch = new PicturePane(words);
    getStyleClass().add("meaning");
    getChildren().setAll(working, causes, gauge, stitch);
    getChildren().addAll(below);
  }

  void show(@Nullable Meaning meaning) {
    working.show(meaning == null ? null : meaning.verdict().working());
    gauge.show(meaning == null ? null : meaning.gauge());
    stitch.show(meaning == null ? null : meaning.stitch());
    stitch.setManaged(meaning != null && meaning.stitch() != null);
  }
}
