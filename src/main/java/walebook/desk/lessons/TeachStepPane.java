package walebook.desk.lessons;

import java.util.List;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import walebook.desk.common.Texts;
import walebook.lesson.Block;
import walebook.lesson.LessonPack;
import walebook.words.Words;

/** A step on the board: its text, which scrolls, beside its pictures, which stay. */
final class TeachStepPane extends HBox {
  /** How much of a page is left standing when it turns, so that nobody loses the line. */
  private static final double PAGE = 0.8;

  private static final double BESIDE = 0.42;
  private static final double ASIDE_PART = 0.34;
  private static final double ALMOST = 0.999;

  private final Words words;
  private final TeachViewModel model;
  private final VBox text = new VBox();
  private final ScrollPane scroll = new ScrollPane(text);
  private final VBox pictures = new VBox();

  TeachStepPane(Words words, TeachViewModel model) {
    this.words = words;
    this.model = model;
    getStyleClass().add("teach-step");
    text.getStyleClass().add("teach-text");
    pictures.getStyleClass().add("teach-pictures");
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    HBox.setHgrow(scroll, Priority.ALWAYS);
    model.placeProperty().addListener((from, old, now) -> show());
    model.largeProperty().addListener((from, old, now) -> show());
    model.asideProperty().addListener((from, old, now) -> show());
    show();
  }

  /** Scrolls on by a page; false when the end stood on the board already. */
  boolean pageOn() {
    return page(1);
  }

  /** Scrolls back by a page; false when the beginning stood on the board already. */
  boolean pageBack() {
    return page(-1);
  }

  /** Scrolls what the speaker says by a part of a page; false while it is hidden. */
  boolean asideBy(int way) {
    if (!(getChildren().get(getChildren().size() - 1) instanceof TeachAside shown)) {
      return false;
    }
    shown.setVvalue(Math.max(0, Math.min(1, shown.getVvalue() + way * ASIDE_PART)));
    return true;
  }

  private boolean page(int way) {
    double hidden = text.getHeight() - scroll.getViewportBounds().getHeight();
    if (model.largeProperty().get() >= 0 || hidden <= 1) {
      return false;
    }
    double now = scroll.getVvalue();
    if (way > 0 ? now >= ALMOST : now <= 1 - ALMOST) {
      return false;
    }
    double by = PAGE * scroll.getViewportBounds().getHeight() / hidden;
    scroll.setVvalue(Math.max(0, Math.min(1, now + way * by)));
    return true;
  }

  private void show() {
    LessonPack pack = model.pack();
    List<Block.Picture> all = model.pictures();
    int large = model.largeProperty().get();
    if (large >= 0 && large < all.size()) {
      TeachPicture picture = new TeachPicture(pack.files(), all.get(large));
      HBox.setHgrow(picture, Priority.ALWAYS);
      getChildren().setAll(picture);
      return;
    }
    text.getChildren()
        .setAll(
            Texts.text(model.step().heading(), "board-title"),
            new BlocksPane(pack.files(), model.text()));
    scroll.setVvalue(0);
    pictures.getChildren().clear();
    for (Block.Picture each : all) {
      TeachPicture picture = new TeachPicture(pack.files(), each);
      picture.setMaxHeight(Region.USE_PREF_SIZE);
      pictures.getChildren().add(picture);
    }
    Region beside = model.asideProperty().get() ? new TeachAside(words, model) : pictures;
    beside.minWidthProperty().bind(widthProperty().multiply(BESIDE));
    beside.prefWidthProperty().bind(beside.minWidthProperty());
    boolean alone = !model.asideProperty().get() && all.isEmpty();
    if (alone) {
      getChildren().setAll(scroll);
    } else {
      getChildren().setAll(scroll, beside);
    }
  }
}
