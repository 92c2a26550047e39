package walebook.desk.classroom;

import java.util.List;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import walebook.desk.common.PicturePane;
import walebook.desk.common.Texts;
import walebook.words.Words;

/**
 * One screen of the board: sentences, and a plot in the room that they leave. Where they leave too
 * little, as with the largest letters, the plot has a screen of its own below them.
 */
final class BoardPage extends ScrollPane {
  /** A plot that is lower than this part of the screen can't be read. */
  private static final double LEAST = 0.5;

  /** What is gone on by, so that the last line is seen again. */
  private static final double STEP = 0.85;

  /** How much of the screen a photo is high. */
  private static final double PHOTO = 0.6;

  /** Between photos, px. */
  private static final double GAP = 24;

  private final Lines lines;
  private final BooleanBinding goesOn;

  BoardPage(BoardPages.Page page, Words words) {
    FittedPicture plot =
        page.plot() == null ? null : new FittedPicture(new PicturePane(words, page.plot()));
    lines = new Lines(plot);
    page.says().forEach(each -> lines.getChildren().add(Texts.text(each, "strong")));
    if (plot != null) {
      VBox.setVgrow(plot, Priority.ALWAYS);
      lines.getChildren().add(plot);
    }
    if (!page.photos().isEmpty()) {
      lines.getChildren().add(photos(page.photos()));
    }
    if (!page.note().isEmpty()) {
      lines.getChildren().add(Texts.text(page.note(), "class-board-note"));
    }
    setContent(lines);
    setFitToWidth(true);
    setFitToHeight(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    getStyleClass().add("board-window");
    // Measured anew once it is known how much is seen; not amidst being laid out.
    viewportBoundsProperty()
        .addListener((from, old, now) -> Platform.runLater(lines::requestLayout));
    goesOn =
        Bindings.createBooleanBinding(
            () -> room() > 1, lines.heightProperty(), viewportBoundsProperty());
  }

  /** Beside each other, each over what is said of it. */
  private HBox photos(List<Finding.Photo> photos) {
    HBox strip = new HBox(GAP);
    for (Finding.Photo each : photos) {
      ImageView view = new ImageView(each.image());
      view.setPreserveRatio(true);
      view.fitHeightProperty().bind(viewportBoundsProperty().map(seen -> PHOTO * seen.getHeight()));
      view.fitWidthProperty()
          .bind(
              viewportBoundsProperty()
                  .map(seen -> Math.max(1, seen.getWidth() / photos.size() - 2 * GAP)));
      view.setAccessibleText(each.says());
      strip.getChildren().add(new VBox(GAP / 2, view, Texts.text(each.says())));
    }
    return strip;
  }

  /** True when it is higher than what is seen of it. */
  BooleanBinding goesOn() {
    return goesOn;
  }

  void toTop() {
    setVvalue(0);
  }

  /** Goes on, down or up; false where there is no more. */
  boolean go(boolean down) {
    double was = getVvalue();
    if (room() <= 1 || (down ? was > 1 - 1e-6 : was < 1e-6)) {
      return false;
    }
    double step = STEP * getViewportBounds().getHeight();
    double top = was * room();
    double next = top + (down ? step : -step);
    // A plot is seen whole, not in two halves.
    double plot = lines.plotTop();
    next = down && plot > top + 1 && plot < next ? plot : next;
    setVvalue(Math.max(0, Math.min(1, next / room())));
    return true;
  }

  private double room() {
    return lines.getHeight() - getViewportBounds().getHeight();
  }

  /** What stands on it; the plot grows into the room that is left. */
  private final class Lines extends VBox {
    private final @Nullable FittedPicture plot;

    Lines(@Nullable FittedPicture plot) {
      this.plot = plot;
      getStyleClass().add("class-board-page");
    }

    /** Where the plot begins; at the very top where there is none. */
    double plotTop() {
      return plot == null ? 0 : plot.getBoundsInParent().getMinY();
    }

    @Override
    protected double computeMinHeight(double width) {
      double others = super.computeMinHeight(width);
      if (plot == null) {
        return others;
      }
      double seen = getViewportBounds().getHeight();
      return others + (seen - others >= LEAST * seen ? LEAST * seen : seen);
    }
  }
}
